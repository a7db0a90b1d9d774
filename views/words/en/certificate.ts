import { asSentence } from './as-sentence.ts'

/** Words of the certificate. Where a figure goes into a sentence, the sentence is a function. */
export const certificateWords = {
  language: 'en',
  title: 'Test certificate',
  subtitle: 'What was measured and tested on a mechanical face seal',
  documentTitle: (number: string, revision: number) =>
    `Test certificate ${number}, revision ${revision}`,
  documentSubject: (serial: string) => `Mechanical face seal ${serial}`,
  invented: 'INVENTED DATA: this certificate shows a made-up workshop and proves nothing',
  markAlternative: 'Mark of Ringproof: the ring of a lapped face with three light bands',
  number: (number: string) => `Certificate ${number}`,
  revision: (revision: number) => `Revision ${revision}`,
  issued: (day: string) => `Issued ${day}`,
  runningHead: (number: string, revision: number, serial: string) =>
    `Test certificate ${number}, revision ${revision} · seal ${serial}`,
  footer: (number: string, revision: number, workshop: string) =>
    `${number}, revision ${revision} · ${workshop}`,
  page: 'Page {page} of {pages}',
  end: (number: string, revision: number) => `End of certificate ${number}, revision ${revision}`,
  replaces: (revision: number, reason: string) =>
    `This revision replaces revision ${revision}, which is no longer valid. Reason: ${asSentence(reason)}`,

  summary: {
    verdict: {
      pass: 'Meets its limits',
      fail: 'Does not meet its limits',
      open: 'Released, not judged in full',
      'conditional-pass': 'Meets its limits, on condition',
      'conditional-fail': 'Does not meet its limits',
      undecidable: 'Not decided',
      conceded: 'Accepted by concession',
      'conceded-open': 'Accepted by concession, not judged in full',
    },
    sentence: {
      pass: 'Every result that counts is accepted by the agreed rule against its limit: each lapped face as left, the static air test, and whatever else was measured and has a limit.',
      fail: 'At least one result that counts is not accepted by the agreed rule against the limit named in this certificate.',
      open: 'At least one face, test or other result that counts has no value, no limit to judge it by, or was measured in a way that a limit is not written for: see “not judged” below. The others are accepted by the agreed rule.',
      'conditional-pass':
        'Every result that counts keeps its limit; at least one by less than its expanded uncertainty.',
      'conditional-fail':
        'At least one result that counts is beyond its limit, by less than its expanded uncertainty.',
      undecidable:
        'At least one result that counts could not be decided: its uncertainty is too large, or not known.',
      conceded:
        'At least one result that counts is not accepted by the agreed rule, or could not be decided. The customer accepts it by the concession named in this certificate.',
      'conceded-open':
        'At least one result that counts is not accepted by the agreed rule, or could not be decided; the customer accepts it by the concession named in this certificate. At least one other has nothing to be judged by: see “not judged” below.',
    },
    seal: 'Seal',
    drawing: 'Drawing',
    position: 'Position',
    workOrder: 'Work order',
    customer: 'Customer',
    customerOrder: 'Order',
    releasedBy: 'Released by',
    issued: 'Issued',
    verifyHow: (url: string) =>
      `Check this certificate: scan the code, or open ${url} and compare what it shows.`,
    verifyAlternative: (url: string) => `QR code that leads to ${url}`,
  },

  notMeasured: 'not measured',
  notStated: 'not stated',
  drawingRevision: (drawing: string, revision: string) => `${drawing}, revision ${revision}`,
  withUnit: (figure: string, unit: string) => `${figure} ${unit}`,
  mm: 'mm',
  kPa: 'kPa',
  celsius: '°C',
  perMinute: 'r/min',

  item: {
    heading: 'What was tested',
    serial: 'Serial number',
    arrangement: 'Arrangement',
    arrangements: {
      single: 'single seal',
      dual: 'dual seal',
      'cartridge-single': 'single cartridge seal',
      'cartridge-dual': 'dual cartridge seal',
    },
    drawing: 'Drawing',
    shaft: 'Shaft diameter',
    size: 'Size',
    position: 'Position †',
    equipment: 'Equipment †',
    service: 'Service fluid †',
    removal: 'Reason for removal †',
    lastFluid: 'Last fluid †',
    decontamination: 'Decontamination †',
    decontaminationStates: {
      'stated-clean': 'stated clean on receipt',
      'not-needed': 'not needed',
      'not-stated': 'not stated',
    },
    pressure: 'Sealed pressure, gauge †',
    temperature: 'Service temperature †',
    speed: 'Shaft speed †',
    customer: 'Customer',
    address: 'Address',
    contact: 'Contact',
    customerOrder: "Customer's order †",
    received: 'Received',
    performed: 'Tested',
    place: 'Place of work',
    days: (first: string, last: string) => (first === last ? first : `${first} to ${last}`),
    placeOf: (workshop: string, address: string) => `${workshop}, ${address}`,
    stated:
      '† As stated by the customer, not checked by the workshop. Where such a statement is wrong, results and verdicts that rest on it can lose their validity, and the workshop does not answer for it.',
    components: 'Components',
    componentColumns: ['Component', 'Material', 'Outer / inner diameter', 'Nose height'],
    componentKinds: {
      'rotating-face': 'Rotating face',
      'rotating-secondary': 'Secondary seal of the rotating face',
      spring: 'Spring',
      'stationary-seat': 'Stationary seat',
      'stationary-secondary': 'Secondary seal of the stationary seat',
    },
    materials: {
      'carbon-graphite': 'carbon-graphite',
      'silicon-carbide-sintered': 'silicon carbide, sintered',
      'silicon-carbide-reaction-bonded': 'silicon carbide, reaction-bonded',
      'tungsten-carbide': 'tungsten carbide',
      alumina: 'alumina',
      'cobalt-chromium-hardfacing': 'cobalt-chromium hardfacing',
      'nickel-iron': 'nickel iron',
      other: 'other material',
    },
    diameters: (outer: string, inner: string) => `${outer} / ${inner} mm`,
    nose: (height: string, minimum: string) => `${height} mm, minimum ${minimum} mm`,
  },

  results: {
    heading: 'Results and limits',
    limitSet: (name: string, version: number, day: string) =>
      `Limits: ${name}, version ${version}, dated ${day}. As found: before any work. As left: as the seal goes back.`,
    flatness: 'Flatness of the faces',
    flatnessColumns: ['Face', 'As found', 'As left', 'Limit, basis and source'],
    asFound: 'as found',
    asLeft: 'as left',
    verdict: {
      pass: 'Pass',
      'conditional-pass': 'Conditional pass',
      'conditional-fail': 'Conditional fail',
      fail: 'Fail',
      undecidable: 'Not decided',
      open: 'Not judged',
    },
    verdictWithReason: (verdict: string, reason: string) => `${verdict}: ${reason}`,
    reasons: {
      'within-limit': 'within the limit',
      'beyond-limit': 'beyond the limit',
      unreadable: 'the face could not be read',
      'no-limit': 'no limit in this set',
      'volume-too-large': 'the volume is larger than the limit allows for',
      'hold-too-short': 'the hold was shorter than the limit asks for',
      'pressure-too-low': 'started below the pressure the limit is written for',
      'not-above-air': 'the hold did not begin above the pressure of the air around',
      'gas-came-in': 'more gas came in than may leave',
      'within-guard': 'within the limit, by less than the guard band asks for',
      'beyond-within-guard': 'beyond the limit, by less than the uncertainty',
      'not-proven': 'neither conformity nor the opposite is proven',
      'uncertainty-too-large': 'the uncertainty is too large against the limit',
      'no-uncertainty': 'the uncertainty is not known',
      'incomplete-budget': 'how far off an instrument may be is not known',
      'size-not-known': 'the size that the limit is given for is not stated',
    },
    um: (um: string) => `${um} µm`,
    uin: (uin: string) => `${uin} µin`,
    bands: (bands: string, lamp: string) => `${bands} ${lamp} bands`,
    form: (form: string) => `form: ${form}`,
    uncertainty: (expanded: string, factor: number) => `U = ${expanded} µm (k = ${factor})`,
    noUncertainty: 'U not evaluated',
    unreadable: 'unreadable',
    atMost: (upper: string, unit: string) => `at most ${upper} ${unit}`,
    atLeast: (lower: string, unit: string) => `at least ${lower} ${unit}`,
    perMm: {
      bore: 'µm per mm of chamber bore',
      shaft: 'µm per mm of shaft diameter',
      face: 'µm per mm of face diameter',
    },
    asWritten: (text: string) => `written as: ${text}`,
    source: (basis: string, source: string) => `${basis}: ${source}`,
    atMostBoth: (upper: string, unit: string, other: string) =>
      `at most ${upper} ${unit} (${other})`,
    flow: (mlPerMin: string) => `${mlPerMin} mL/min`,
    noBar: 'not compared',
    basis: {
      standard: 'Standard',
      published: 'Published',
      'house rule': 'House rule',
      'common practice, no source': 'Common practice, no source',
      'from memory': 'From memory',
    },
    noLimit: 'no limit stated',
    barLimit: (upper: string) => `limit ${upper}`,
    barAlternative: (value: string, limit: string) => `${value} against a limit of ${limit}`,
    pictureAlternative: (pattern: string) => `Drawn picture of the band pattern: ${pattern}`,
    forms: {
      flat: 'flat',
      convex: 'convex',
      concave: 'concave',
      saddle: 'saddle',
      cylinder: 'cylinder',
      twisted: 'twisted',
      edge: 'turned edge',
      local: 'local spot',
      undetermined: 'hill or hollow not found out',
      unreadable: 'unreadable',
    } as Readonly<Record<string, string>>,
    faceSize: (outer: string, inner: string) => `Ø ${outer} / ${inner} mm`,
    faceSizeUnknown: 'diameters not measured',
    static: 'Static air test',
    noStatic: 'No static air test was made: not measured.',
    staticColumns: ['Result', 'Measured', 'Against the limit', 'Limit, basis and source'],
    sections: {
      whole: 'whole seal',
      inboard: 'inboard section',
      outboard: 'outboard section',
      gland: 'gland',
    },
    measured: 'Finish, heights and run-out',
    measuredColumns: ['What and where', 'As found', 'As left', 'Limit, basis and source'],
    plusMinus: (factor: string) => `± U, k = ${factor}`,
    here: (limit: string) => `here: ${limit}`,
    staticOvertaken: 'Earlier static air tests, which do not count',
    superseded: 'overtaken by a later test of the same section',
    drop: 'Pressure drop',
    leak: 'Leak rate',
    leakAt: (celsius: string) => `as air at ${celsius} °C and 101.325 kPa`,
    paM3PerS: 'Pa·m³/s',
    within: (duration: string) => `in a hold of at least ${duration}`,
    volumeAtMost: (volume: string) => `volume at most ${volume} L`,
    startAtLeast: (kPaGauge: string) => `started at ${kPaGauge} kPa gauge or above`,
    minutes: (min: number) => `${min} min`,
    minutesSeconds: (min: number, s: number) => `${min} min ${s} s`,
    seconds: (s: number) => `${s} s`,
  },

  conditions: {
    heading: 'How the results came about',
    readings: 'Light-band readings',
    readingColumns: ['Face and date', 'What was seen', 'Lamp, flat and view', 'Conditions, by'],
    directions: (list: string) => `counted: ${list}`,
    direction: (deg: number, bands: string) => `${bands} at ${deg}°`,
    pattern: (pattern: string) => `pattern: ${pattern}`,
    patterns: {
      straight: 'straight bands',
      convex: 'bands bulging away from the contact',
      concave: 'bands bulging towards the contact',
      cylinder: 'curved one way, straight across',
      saddle: 'curved opposite ways',
      rings: 'closed rings',
      's-shape': 'S-shaped bands',
      'turned-edge': 'bands hooked at the edge',
      local: 'bands kinked at one place',
      unreadable: 'no readable bands',
      'whole-face': 'the whole face',
    },
    ringCentre: { high: 'centre high', low: 'centre low' },
    result: (um: string, uin: string, bands: string) => `${um} µm, ${uin} µin, ${bands} bands`,
    lamp: (lamp: string, number: string) => `${lamp} lamp ${number}`,
    lamps: {
      helium: 'helium',
      sodium: 'sodium',
      'sodium-d1': 'sodium D1',
      'sodium-d2': 'sodium D2',
      'mercury-green': 'mercury green',
      'mercury-blue': 'mercury blue',
      'cadmium-red': 'cadmium red',
      'helium-neon-red': 'helium-neon red',
      'helium-neon-green': 'helium-neon green',
      'green-led-520': 'green LED 520 nm',
      'green-led-525': 'green LED 525 nm',
      'green-led-530': 'green LED 530 nm',
      white: 'white',
    },
    otherLamp: (nm: string) => `${nm} nm`,
    bandHeight: (nm: string, um: string) => `λ ${nm} nm, ${um} µm a band`,
    flat: (number: string) => `optical flat ${number}`,
    viewing: (deg: string) => `viewed at ${deg}° from the normal`,
    soak: (min: string) => `soaked ${min} min`,
    soakUnknown: 'soak time not recorded',
    temperature: (celsius: string) => `${celsius} °C`,
    temperatureUnknown: 'temperature not recorded',
    by: (name: string) => `by ${name}`,
    note: (text: string) => `Note: ${text}`,
    values: 'Values read with an instrument',
    valueColumns: ['What and date', 'As read, and the result', 'Instrument', 'Set-up, by'],
    readAs: (readings: string, unit: string) => `${readings} ${unit}`,
    readingsNotKept: 'single readings: see the record',
    lengthUnits: {
      um: 'µm',
      mm: 'mm',
      in: 'in',
      uin: 'µin',
      graduations: 'graduations',
    },
    cutOff: (mm: string) => `cut-off ${mm} mm`,
    cutOffUnknown: 'cut-off not recorded',
    traceUnknown: 'direction of the trace not recorded',
    traces: {
      'across-lay': 'traced across the lay',
      'along-lay': 'traced along the lay',
      radial: 'traced radially',
      around: 'traced around the face',
      'no-lay': 'face without a lay',
    },
    tip: (um: string) => `stylus of ${um} µm radius`,
    lever: (deg: string) => `lever at ${deg}° to the surface`,
    warmth: (k: string) => `within ${k} K of 20 °C`,
    setting: (um: string) => `set on a standard good to u = ${um} µm`,
    bore: (mm: string) => `chamber bore ${mm} mm`,
    tests: 'Static air tests',
    testColumns: ['Section and start', 'Pressures', 'Temperatures and times', 'Set-up, by'],
    pressureStep: (start: string, end: string) => `${start} to ${end} kPa absolute`,
    gauge: (kPa: string) => `start ${kPa} kPa gauge`,
    barometer: (kPa: string) => `barometer ${kPa} kPa`,
    barometerTaken: (kPa: string) => `barometer taken as ${kPa} kPa (standard atmosphere)`,
    typed: (start: string, end: string, unit: string, reference: string) =>
      `as read: ${start} to ${end} ${unit} ${reference}`,
    references: { gauge: 'gauge', absolute: 'absolute' },
    temperatures: (start: string, end: string) => `${start} to ${end} °C`,
    uncompensated: (rate: string) => `leak ${rate} Pa·m³/s if temperatures are left out`,
    held: (s: string, duration: string) => `held ${s} s (${duration})`,
    stabilised: (s: string, duration: string) => `stabilised ${s} s (${duration}) before`,
    stabilisedUnknown: 'stabilisation not recorded',
    volume: (litres: string) => `volume ${litres} L`,
    expanded: (litres: string, known: string) => `volume ${litres} L, by expansion from ${known} L`,
    leakPlace: (place: string) => `leak: ${place.toLowerCase()}`,
    leakNotLookedFor: 'place of the leak not looked for',
    medium: 'medium: air',
    gaugeNumber: (number: string) => `gauge ${number}`,
    thermometer: (number: string) => `thermometer ${number}`,
    noThermometer: 'no thermometer recorded',
    beside: 'counted beside the reading of the whole face',
    overtaken: 'overtaken by a later reading',
    recorded: (day: string) => `recorded ${day}`,
    noCount: 'nothing counted',
  },

  instruments: {
    heading: 'Instruments',
    columns: ['Instrument', 'Calibration certificate', 'Calibration due', 'On the day of use'],
    kinds: {
      lamp: 'monochromatic lamp',
      'optical-flat': 'optical flat',
      'pressure-gauge': 'pressure gauge',
      thermometer: 'thermometer',
      'dial-indicator': 'dial indicator',
      'lever-indicator': 'lever indicator',
      micrometer: 'micrometer',
      profilometer: 'profilometer',
      'pressure-transducer': 'pressure transducer',
      'flow-meter': 'flow meter',
      balance: 'balance',
      volume: 'known volume',
      'test-rig': 'test rig',
    },
    numbered: (number: string, kind: string) => `${number}, ${kind}`,
    nameAndSerial: (name: string, serial: string) =>
      serial === '' ? name : `${name}, serial ${serial}`,
    noCertificate: 'no certificate recorded',
    noDue: 'no date recorded',
    status: {
      'in-calibration': 'in calibration',
      overdue: 'calibration overdue',
      'never-calibrated': 'no calibration on record',
      'left-beyond': 'left beyond its tolerance by its calibration',
      withdrawn: 'withdrawn from use',
    },
    usedOn: (days: string) => `used ${days}`,
    overdue: (numbers: string) =>
      `Not in calibration on the day of use: ${numbers}. The results that rest on it are to be read with that in mind.`,
    acknowledged: (name: string, text: string) => `${name} acknowledged this on release: “${text}”`,
    notAcknowledged: (numbers: string) =>
      `No acknowledgement was recorded on release, and no exception beside the use: ${numbers}.`,
    exception: (fault: string) => `by exception: ${fault}`,
    allowed: (name: string, at: string, reason: string) => `allowed by ${name}, ${at}: “${reason}”`,
    remark: (name: string, text: string) => `Remark of ${name} on release: “${text}”`,
  },

  methods: {
    heading: 'Methods',
    flatnessCounted: (methods: string) =>
      `Flatness by line count (${methods}): light bands were counted by eye under a monochromatic lamp through an optical flat laid on the face. One band is a height of λ / (2 cos θ), with λ the wavelength of the lamp in air and θ the angle of view from the normal. Opposite curvatures of a saddle are added; of any other pattern the larger count holds. The result is the height from the lowest to the highest place that the bands show. Source: two-beam interference in an air gap.`,
    flatnessWhole: {
      'flatness/photo': (method: string) =>
        `Flatness of the whole face from a photograph (${method}): the light of the bands over the whole land was fitted by one smooth surface; dark bands lie where the gap is half a band more than a whole number. The surface is given without its least-squares plane. Photographs that give no honest figure are refused. Source: two-beam interference in an air gap; the method was tried on computed pictures alone, no source for its limits.`,
      'flatness/marked': (method: string) =>
        `Flatness of the whole face from marked bands (${method}): places along the bands were marked by hand on a photograph, each with the order of its band, and one smooth surface was fitted to them. Its uncertainty follows from trials on computed faces, no source.`,
      'flatness/line-grid': (method: string) =>
        `Flatness of the whole face by a grid of lines (${method}): even straight lines were laid over the photograph until they followed the bands; the largest departures of a band from its line, one each way, were added. Common practice, no source.`,
      'flatness/combined': (method: string) =>
        `Flatness of the whole face combined from several readings (${method}): the surfaces were turned onto each other and averaged by weight.`,
    } as Readonly<Record<string, (method: string) => string>>,
    flatnessBands:
      'Wavelengths in air are from a published table of spectral lines; those of the sodium D1 and D2 lines are from memory, those of LED lamps nominal (common practice, no source).',
    static: (methods: string, celsius: string) =>
      `Static air test (${methods}): air was shut in the volume stated; absolute pressure p and absolute temperature T were read at the start (1) and at the end (2) of the time t. Leak rate = (V · T₀ / t) · (p₁ / T₁ − p₂ / T₂), given as air at T₀ = ${celsius} °C; positive: air leaves. The pressure drop is start less end, as read. Source: ideal gas law in a rigid volume, compare 40 CFR 1065.644.`,
    measured: {
      roughness: (methods: string) =>
        `Surface finish (${methods}): a stylus instrument traced the face; Ra is the mean of the traces, in µm. Definition of Ra: ISO 21920-2, from memory. It is asked for across the lay (common practice, no source); which way each was traced stands beside it.`,
      height: (methods: string) =>
        `Heights (${methods}): read with the instrument named beside the result; the mean of the readings, corrected for nothing. Common practice, no source.`,
      dial: (methods: string) =>
        `Run-out, play and parallelism (${methods}): the largest less the smallest reading of an indicator over the way that was swept, or between two end positions; of a lever indicator multiplied by the cosine of its angle where that was stated. Common practice, no source.`,
    },
    sixteen:
      '16 % rule: ISO 4288, from memory; it is told of the single traces, and what is judged is their mean.',
    cutOffs: (mm: readonly string[], tipsUm: readonly string[]) =>
      [
        mm.length === 0
          ? 'The cut-off was not recorded: without it Ra compares with other values of Ra only roughly.'
          : `Cut-off as recorded: ${mm.join(' mm, ')} mm.`,
        tipsUm.length === 0
          ? 'The radius of the stylus was not recorded.'
          : `Radius of the stylus as recorded: ${tipsUm.join(' µm, ')} µm.`,
      ].join(' '),
    deviations:
      'Additions to, deviations or exclusions from the methods: none but those in the notes printed with the results. Sampling: none, the seal itself was tested. Results from outside providers: none.',
    uncertainty:
      'Uncertainty: U is the expanded uncertainty, k times the standard uncertainty of the budget that was kept with the result; k is Student’s t for about 95 % at the effective degrees of freedom of the budget, and never below 2 (JCGM 100:2008). Value and U are rounded together, U to two digits. The budgets, and what each leaves out, stand at the end of this certificate. Readings are not corrected for the error of an instrument: where it is known, or a largest one is permitted, it is a line of the budget. A count is taken to be good to a quarter of a band either way unless stated otherwise (common practice, no source). Where no U is printed, none could be evaluated.',
    ruleHeading: 'Decision rule',
  },

  corrections: {
    heading: 'Corrected records',
    none: 'No record behind this certificate was corrected.',
    intro:
      'Nothing measured is overwritten. These records were replaced; the values in this certificate are the corrected ones.',
    flatness: (face: string, condition: string) => `${face}, ${condition}`,
    static: (section: string) => `Static air test, ${section}`,
    item: (parts: {
      readonly subject: string
      readonly was: string
      readonly became: string
      readonly by: string
      readonly at: string
      readonly reason: string
    }) =>
      `${parts.subject}: ${parts.was} became ${parts.became}; by ${parts.by}, ${parts.at}. Reason: ${parts.reason}`,
    um: (um: string) => `${um} µm`,
    leak: (rate: string) => `${rate} Pa·m³/s`,
    unreadable: 'unreadable',
  },

  limitsOfTests: {
    heading: 'What these tests do not show',
    items: [
      'A static air test is not a running leak test: it says nothing about leakage with liquid, at speed, hot, or at the pressure of service.',
      'Counted bands show taper and dish of a face. They are nearly blind to lobes around the ring, which can leak.',
      'Flatness was read on the part as it lay. Clamping, shrinking or bonding it afterwards can change it.',
      'No life, leak rate in service or fitness for a duty is certified, nor the material of any part.',
    ],
    machineNotRead: 'The machine, its shaft and the seal chamber were not tested.',
    machineRead:
      'Of the machine, its shaft and the seal chamber only that was measured which stands among the results, at rest, and as it stood on that day.',
  },

  cautions: {
    heading: 'Cautions for handling and fitting',
    intro:
      'They are reminders. The rules of the site, local codes and the judgement of licensed people come first.',
    items: [
      'Before any work on the machine: stop, isolate, lock and tag the drive and the process, release pressure and stored heat, drain, and prove that no energy is left.',
      'Keep the faces covered until they are fitted. Do not touch, slide or lay down a lapped face, and lift the seal so that the faces never carry its weight.',
      'Shut-in gas stores energy: where a gas test is repeated, keep the volume small, raise the pressure in steps behind a shield with a relief valve, tighten nothing under pressure, and vent before opening.',
      'Dual seals and bellows can hold back liquid and pressure: vent them, and treat residues as the last fluid.',
      'Before the first start: guards on, clips and setting devices out, turn by hand, no dry running.',
    ],
  },

  statements: {
    heading: 'Statements',
    sealAlone:
      'The results concern only the seal named in this certificate, in the condition in which it was tested.',
    sealAndMachine:
      'The results concern only the seal named in this certificate, and the machine at the position named, in the condition in which they were tested.',
    inFull:
      'This certificate is to be reproduced in full only, unless the workshop agrees in writing.',
    independent:
      'Released by a person who recorded no reading or test of this seal and did not hand it over.',
    notIndependent: 'The person who released this seal also recorded work or results on it.',
  },

  signatures: {
    heading: 'Who tested, who released',
    tested: 'Tested by',
    handedOver: 'Handed over for release by',
    released: 'Reviewed and released by',
    inspector: 'Inspector',
    department: (department: string) => `Department: ${department}`,
    did: {
      flatness: 'light bands',
      'static-test': 'static air test',
      'measured-value': 'measured values',
      'lap-cycle': 'lapping',
      'wear-track': 'worn tracks',
      'spring-check': 'springs',
      assembly: 'assembly',
    },
    act: (act: string, days: string) => `${act}: ${days}`,
    notHandedOver: 'no hand-over recorded',
    byPassword:
      'Confirmed with the personal password in the workshop’s record; issued without a handwritten signature.',
    note: (text: string) => `Note on hand-over: ${text}`,
  },
} as const
