import type { AuditAct } from '../../../src/domain/audit-act.ts'
import type { Characteristic } from '../../../src/domain/characteristic.ts'
import type {
  FlatnessReading,
  ReadingCondition,
  RecordedPattern,
} from '../../../src/domain/flatness.ts'
import type { CalibrationStatus, InstrumentKind } from '../../../src/domain/instrument.ts'
import type { Judged, JudgedReason } from '../../../src/domain/judged.ts'
import type { LimitBasis } from '../../../src/domain/limit-set.ts'
import type { Decision } from '../../../src/domain/release.ts'
import type {
  Arrangement,
  ComponentKind,
  FaceKind,
  FaceMaterial,
} from '../../../src/domain/seal.ts'
import type { Service } from '../../../src/domain/service.ts'
import type { Stage } from '../../../src/domain/stage.ts'
import type {
  PressureReference,
  PressureUnit,
  TestSection,
} from '../../../src/domain/static-test.ts'
import type { UnreadableCause } from '../../../src/domain/unreadable-cause.ts'
import type { DecontaminationState } from '../../../src/domain/work-order.ts'
import type { OverallVerdict } from '../../../src/domain/worst-verdict.ts'
import type { LampId } from '../../../src/science/optics/lamps.ts'
import type { FlatnessForm } from '../../../src/science/surface/flatness-pattern.ts'
import type { Distribution } from '../../../src/science/uncertainty/distributions.ts'

type Words<Id extends string> = Readonly<Record<Id, string>>

/** What the ids of the records are called on pages, the same at every desk. */
export const tradeWords = {
  stage: {
    received: 'Received',
    stripped: 'Stripped',
    lapping: 'Lapping',
    testing: 'Testing',
    'handed-over': 'Handed over',
    released: 'Released',
    dispatched: 'Dispatched',
    refused: 'Refused',
    withdrawn: 'Withdrawn',
  } satisfies Words<Stage>,
  componentKind: {
    'rotating-face': 'Rotating face',
    'rotating-secondary': 'Secondary seal of the rotating face',
    spring: 'Spring',
    'stationary-seat': 'Stationary seat',
    'stationary-secondary': 'Secondary seal of the stationary seat',
  } satisfies Words<ComponentKind>,
  faceKind: {
    'rotating-face': 'Rotating face',
    'stationary-seat': 'Stationary seat',
  } satisfies Words<FaceKind>,
  faceMaterial: {
    'carbon-graphite': 'Carbon-graphite',
    'silicon-carbide-sintered': 'Silicon carbide, sintered',
    'silicon-carbide-reaction-bonded': 'Silicon carbide, reaction-bonded',
    'tungsten-carbide': 'Tungsten carbide',
    alumina: 'Alumina',
    'cobalt-chromium-hardfacing': 'Cobalt-chromium hardfacing',
    'nickel-iron': 'Nickel iron',
    other: 'Other',
  } satisfies Words<FaceMaterial>,
  arrangement: {
    single: 'Single',
    dual: 'Dual',
    'cartridge-single': 'Single cartridge',
    'cartridge-dual': 'Dual cartridge',
  } satisfies Words<Arrangement>,
  decontamination: {
    'stated-clean': 'Stated clean',
    'not-needed': 'Not needed',
    'not-stated': 'Not stated: in quarantine',
  } satisfies Words<DecontaminationState>,
  service: {
    'general-liquid': 'General liquid',
    'light-hydrocarbon': 'Light hydrocarbon',
    slurry: 'Slurry',
    'dry-gas': 'Dry gas',
    'drive-train': 'Drive train',
    'not-stated': 'Not stated',
  } satisfies Words<Service>,
  pattern: {
    straight: 'Straight',
    convex: 'Bent, convex',
    concave: 'Bent, concave',
    cylinder: 'Cylinder',
    saddle: 'Saddle',
    rings: 'Rings',
    's-shape': 'S-shape',
    'turned-edge': 'Turned edge',
    local: 'Local spot',
    unreadable: 'Unreadable',
    'whole-face': 'Whole face',
  } satisfies Words<RecordedPattern>,
  form: {
    flat: 'Flat',
    convex: 'Convex',
    concave: 'Concave',
    saddle: 'Saddle',
    cylinder: 'Cylinder',
    twisted: 'Twisted',
    edge: 'Turned edge',
    local: 'Local spot',
    undetermined: 'Hill or hollow not found out',
    unreadable: 'Unreadable',
  } satisfies Words<FlatnessForm | 'unreadable'>,
  ringCentre: {
    high: 'Middle stands high',
    low: 'Middle lies low',
  } satisfies Words<NonNullable<FlatnessReading['ringCentre']>>,
  unreadableCause: {
    matte: 'Face too matte',
    dirty: 'Dirt or dust',
    wet: 'Wet',
    'gap-too-wide': 'Gap too wide',
    other: 'Something else',
  } satisfies Words<UnreadableCause>,
  condition: {
    'as-found': 'As found',
    'as-left': 'As left',
  } satisfies Words<ReadingCondition>,
  section: {
    whole: 'Whole seal',
    inboard: 'Inboard',
    outboard: 'Outboard',
    gland: 'Gland',
  } satisfies Words<TestSection>,
  pressureUnit: {
    kPa: 'kPa',
    bar: 'bar',
    mbar: 'mbar',
    psi: 'psi',
    MPa: 'MPa',
  } satisfies Words<PressureUnit>,
  pressureReference: {
    gauge: 'Gauge (above the air around)',
    absolute: 'Absolute',
  } satisfies Words<PressureReference>,
  characteristic: {
    flatness: 'Flatness',
    roughness: 'Roughness Ra',
    'face-height': 'Face height',
    'face-parallelism': 'Parallelism of the two sides',
    'shaft-run-out': 'Shaft run-out',
    'sleeve-run-out': 'Sleeve run-out',
    'shaft-straightness': 'Shaft straightness',
    'radial-lift': 'Radial lift',
    'end-play': 'End play',
    'chamber-face-squareness': 'Squareness of the chamber face',
    'seat-face-squareness': 'Squareness of the seat face',
    'register-concentricity': 'Concentricity of the register',
    'static-drop': 'Pressure drop',
    'static-leak-rate': 'Leak rate',
    'liquid-leak-mass': 'Liquid leakage, by mass',
    'liquid-leak-volume': 'Liquid leakage, by volume',
    'vapour-concentration': 'Vapour concentration',
  } satisfies Words<Characteristic>,
  limitBasis: {
    standard: 'Standard',
    published: 'Published',
    'house rule': 'House rule',
    'common practice, no source': 'Common practice, no source',
    'from memory': 'From memory',
  } satisfies Words<LimitBasis>,
  instrumentKind: {
    lamp: 'Lamp',
    'optical-flat': 'Optical flat',
    'dial-indicator': 'Dial indicator',
    'lever-indicator': 'Lever indicator',
    micrometer: 'Micrometer',
    profilometer: 'Profilometer',
    'pressure-gauge': 'Pressure gauge',
    'pressure-transducer': 'Pressure transducer',
    thermometer: 'Thermometer',
    'flow-meter': 'Flow meter',
    balance: 'Balance',
    volume: 'Known volume',
    'test-rig': 'Test rig',
  } satisfies Words<InstrumentKind>,
  calibrationStatus: {
    'in-calibration': 'In calibration',
    overdue: 'Calibration overdue',
    'never-calibrated': 'No calibration on record',
    'left-beyond': 'Left beyond its tolerance by its calibration',
    withdrawn: 'Withdrawn from use',
  } satisfies Words<CalibrationStatus>,
  verdict: {
    pass: 'Pass',
    'conditional-pass': 'Conditional pass',
    'conditional-fail': 'Conditional fail',
    fail: 'Fail',
    undecidable: 'This set-up cannot decide',
    open: 'Not judged',
  } satisfies Words<Judged['verdict']>,
  /** Over several results: where one is open, the others may still be judged. */
  overall: {
    pass: 'Pass',
    'conditional-pass': 'Conditional pass',
    'conditional-fail': 'Conditional fail',
    fail: 'Fail',
    undecidable: 'Not decided',
    open: 'Not judged in full',
    conceded: 'Accepted by concession',
    'conceded-open': 'Accepted by concession, not judged in full',
  } satisfies Words<OverallVerdict>,
  why: {
    'within-limit': 'Within the limit.',
    'beyond-limit': 'Beyond the limit.',
    'within-guard': 'Within the limit, by less than the guard band asks for.',
    'beyond-within-guard': 'Beyond the limit, by less than the uncertainty.',
    'not-proven':
      'Too near the limit: with this uncertainty neither conformity nor the opposite is proven.',
    'uncertainty-too-large':
      'The uncertainty takes up too much of the limit: this set-up cannot decide.',
    'no-uncertainty': 'The agreed rule needs the uncertainty of the result, and it is not known.',
    'incomplete-budget':
      'The agreed rule needs the whole uncertainty, and how far off an instrument may be is not known.',
    'size-not-known': 'The limit is given per millimetre of a size that was not stated.',
    unreadable: 'No bands could be read; that is never a pass.',
    'no-limit': 'The limit set has no limit for this.',
    'volume-too-large':
      'The volume is larger than the limit is written for: the same leak shows a smaller drop.',
    'hold-too-short':
      'The hold was shorter than the limit is written for: the leak had less time to show.',
    'pressure-too-low':
      'The hold started below the pressure the limit is written for: the same gap leaks less.',
    'not-above-air':
      'The hold did not begin above the pressure of the air around: no gas could leave.',
    'gas-came-in':
      'More gas came in than may leave: check valve, gauge and temperatures, and test again.',
  } satisfies Words<JudgedReason>,
  decision: {
    released: 'Released',
    refused: 'Refused',
  } satisfies Words<Decision['outcome']>,
  auditAct: {
    'add-customer': 'added a customer',
    'add-equipment': 'added a position',
    'add-seal': 'recorded a seal',
    'add-limit-set': 'stored a limit set',
    'approve-limit-set': 'approved a limit set',
    'retire-limit-set': 'retired a limit set',
    'add-instrument': 'added an instrument',
    'add-calibration': 'added a calibration',
    'withdraw-instrument': 'withdrew an instrument from use',
    'amend-instrument': 'amended the numbers of an instrument',
    'set-instrument-holder': 'handed on an instrument',
    'add-instrument-file': 'added a photo or file of an instrument',
    'answer-doubt': 'said whether a record in doubt stands',
    'add-work-order': 'received a seal',
    'change-stage': 'moved the order',
    'state-decontamination': 'stated whether the seal is clean',
    'add-flatness-reading': 'recorded a flatness reading',
    'correct-flatness-reading': 'corrected a flatness reading',
    'add-static-test': 'recorded a static test',
    'correct-static-test': 'corrected a static test',
    'add-measured-value': 'recorded a measured value',
    'correct-measured-value': 'corrected a measured value',
    'add-face-photo': 'kept a photograph of a face',
    'start-survey': 'began a survey',
    'add-survey-reading': 'read a position of a survey',
    'end-survey': 'ended a survey',
    'add-lap-cycle': 'recorded a lap cycle',
    'correct-lap-cycle': 'corrected a lap cycle',
    'agree-rule': 'agreed on a decision rule',
    'ask-use-exception': 'asked for an exception for an instrument',
    'answer-use-exception': 'answered about an exception for an instrument',
    'hand-over': 'handed over',
    'add-concession': 'recorded a concession',
    refuse: 'refused',
    release: 'released',
    'issue-certificate': 'issued a certificate',
    'add-user': 'added a person',
    'set-password': 'set a password',
    'set-active': 'gave or ended access',
    'sign-in': 'signed in',
    'sign-out': 'signed out',
    'add-token': 'made an access token',
    'revoke-token': 'revoked an access token',
  } satisfies Words<AuditAct>,
  distribution: {
    normal: 'normal',
    rectangular: 'rectangular',
    triangular: 'triangular',
    'u-shaped': 'U-shaped',
    t: 'Student’s t',
  } satisfies Words<Distribution>,
  lamp: {
    helium: 'Helium',
    sodium: 'Sodium',
    'sodium-d1': 'Sodium, D1 line',
    'sodium-d2': 'Sodium, D2 line',
    'mercury-green': 'Mercury, green line',
    'mercury-blue': 'Mercury, blue line',
    'cadmium-red': 'Cadmium, red line',
    'helium-neon-red': 'Helium-neon laser, red',
    'helium-neon-green': 'Helium-neon laser, green',
    'green-led-520': 'Green LED, 520 nm',
    'green-led-525': 'Green LED, 525 nm',
    'green-led-530': 'Green LED, 530 nm',
    white: 'White light',
  } satisfies Words<LampId>,
  unit: {
    um: 'µm',
    uin: 'µin',
    kPa: 'kPa',
    paM3PerS: 'Pa·m³/s',
    mlPerMin: 'mL/min',
    gPerH: 'g/h',
    mlPerH: 'mL/h',
    mlPerM3: 'mL/m³',
    mm: 'mm',
    in: 'in',
    graduations: 'graduations',
    nm: 'nm',
    c: '°C',
    deg: '°',
    l: 'L',
    s: 's',
    min: 'min',
    perMin: 'r/min',
    bands: 'bands',
  },
} as const

/** The word for an id that the store keeps as plain text; the id itself where it has no word. */
export function tradeWord(words: Readonly<Record<string, string>>, id: string): string {
  return Object.hasOwn(words, id) ? (words[id] ?? id) : id
}
