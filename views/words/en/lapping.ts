import type { NoseStanding } from '../../../src/domain/face-lapping.ts'
import type { FaceState } from '../../../src/domain/face-state.ts'
import type { Abrasive, LapPurpose, PlateForm } from '../../../src/domain/lap-cycle.ts'

const times = (count: number, one: string, more: string) => `${count} ${count === 1 ? one : more}`

/** The words of the lapping log: its form, its table, and what is said of it elsewhere. */
export const lappingWords = {
  title: 'Lap cycle',
  correctionTitle: 'Correct a lap cycle',
  act: 'Lap cycle',
  cautionTitle: 'turning plate, slurry, dust and weight',
  caution: [
    'Keep hands, sleeves and cloths clear of a turning plate. Stop it before rings or weights are set on or taken off.',
    'Oils and solvents can burn and their vapours harm: air, gloves, no flame. Collect slurry and wipes as waste by their class.',
    'Dust and dried slurry of carbon, ceramics and hard metal are not to be breathed or eaten, and carbon dust conducts. Work wet, with extraction; never blow it off.',
    'Lift plates and weights with a hoist or in twos. Faces never carry the load.',
    'Site rules, safety data sheets and local codes come first.',
  ],
  face: 'Which face?',
  purpose: 'What is it for?',
  purposes: {
    lap: { label: 'Lapping', detail: 'takes off stock' },
    polish: { label: 'Polishing', detail: 'so that bands can be read' },
    matt: { label: 'Matting', detail: 'after the flatness was read' },
  } satisfies Record<LapPurpose, { label: string; detail: string }>,
  /** In which order a face was read and matted. */
  finish: {
    flatness: {
      polished: (readAt: string, mattedAt: string) =>
        `Flatness was read on the polished face (${readAt}); it was matted afterwards (${mattedAt}).`,
      lapped: (readAt: string, mattedAt: string) =>
        `Flatness was read on the lapped face (${readAt}), no polishing is in the log; it was matted afterwards (${mattedAt}).`,
      matted: (readAt: string, mattedAt: string) =>
        `Flatness was read on a face that was matted already (${readAt}); it was matted again afterwards (${mattedAt}).`,
      unknown: (readAt: string, mattedAt: string) =>
        `Flatness was read (${readAt}) before the face was matted (${mattedAt}).`,
    } satisfies Record<FaceState | 'unknown', (readAt: string, mattedAt: string) => string>,
    flatnessAfter: (readAt: string, mattedAt: string) =>
      `Flatness was read on the matted face (matted ${mattedAt}, read ${readAt}): it scatters the light, and bands on it are hard to read.`,
    flatnessReshaped: (readAt: string, mattedAt: string) =>
      `Flatness was read (${readAt}), then the face was lapped or polished again and matted (${mattedAt}): flatness was not read since.`,
    noFlatness: (mattedAt: string) =>
      `The face was matted (${mattedAt}); its flatness as left was not read.`,
    roughness: (ra: string, readAt: string) =>
      `Finish Ra ${ra} µm was read on the matted face (${readAt}).`,
    roughnessBefore: (ra: string, readAt: string) =>
      `Finish Ra ${ra} µm was read before that (${readAt}): it says nothing of the matted face.`,
    mattedAfter: (mattedAt: string) => `matted afterwards (${mattedAt})`,
    noRoughness: 'Its finish was not read since.',
  },
  plateQuestion: 'On which plate?',
  plate: 'Plate',
  plateHint: 'As the workshop calls it.',
  otherPlate: 'Another plate',
  plateForm: 'Form of the plate before',
  plateFormHint: 'As straight edge or gauge showed it last.',
  plateForms: {
    flat: 'Flat',
    convex: 'Convex',
    concave: 'Concave',
  } satisfies Record<PlateForm, string>,
  notLooked: 'Not looked at',
  abrasive: 'Abrasive',
  abrasives: {
    'diamond-charged': 'Diamond, charged plate',
    'diamond-loose': 'Diamond, loose',
    'silicon-carbide-loose': 'Silicon carbide, loose',
    'alumina-loose': 'Alumina, loose',
    'boron-carbide-loose': 'Boron carbide, loose',
    sheet: 'Abrasive sheet',
    other: 'Something else',
  } satisfies Record<Abrasive, string>,
  notSaid: 'Not said',
  grit: 'Grit',
  gritHint: 'As on its label, in µm or mesh.',
  heightQuestion: 'How high, and how much came off?',
  emptyHint:
    'Write down what is known. Empty means not known, 0 means none. Planned stock alone, before lapping, is enough for the warning.',
  figures: {
    heightBeforeMm: {
      label: 'Height before',
      hint: 'Of the nose, or of the ring where it has none.',
      unit: 'mm',
    },
    heightAfterMm: { label: 'Height after', hint: 'Read at the same places.', unit: 'mm' },
    plannedStockUm: {
      label: 'Stock planned',
      hint: 'Usual for one relap: carbon 5 to 25 µm, a hard ring 10 to 50 µm (common practice, no source).',
      unit: 'µm',
    },
    stockUm: {
      label: 'Stock removed',
      hint: 'Left empty where both heights are read: their difference counts.',
      unit: 'µm',
    },
    durationMin: { label: 'Time on the plate', hint: '', unit: 'min' },
    loadKg: { label: 'Load on the ring', hint: 'Mass of weights and holder.', unit: 'kg' },
    plateSagUm: {
      label: 'Plate out of flat by',
      hint: 'Its middle against its rim.',
      unit: 'µm',
    },
    plateDiameterMm: { label: 'over a diameter of', hint: '', unit: 'mm' },
  },
  moreTitle: 'Time, load, plate, new ring, note',
  newRing: 'This ring is new',
  newRingHint: 'What was lapped before was another ring: heights and counts begin anew.',
  note: 'Note',
  answer: 'What is left of the face',
  answerTitle: 'Height after this cycle',
  ask: {
    face: 'Choose the face to see what is left of it.',
    height: 'Enter a height, or read the face height before, to see what is left.',
  },
  standing: {
    kept: 'Above the minimum',
    below: 'Below the minimum',
    unknown: 'Not held against a minimum',
  } satisfies Record<NoseStanding, string>,
  /** Short, beside a large figure. */
  left: {
    kept: 'Enough left',
    below: 'Too low',
    unknown: 'No minimum',
  } satisfies Record<NoseStanding, string>,
  wouldFall: 'Would be too low',
  minimum: (mm: string) => `Smallest allowed ${mm} mm`,
  noMinimum: 'The seal’s record states no smallest height for this face.',
  noHeight: 'height not recorded',
  atMost: (mm: string) => `at most ${mm}`,
  expectedBy: {
    planned: (um: string) => `Expected: ${um} µm planned`,
    mean: (um: string, count: number) =>
      `Expected: ${um} µm, mean of ${times(count, 'cycle', 'cycles')} of this ring`,
  },
  atMostHint: (count: number) =>
    `${times(count, 'cycle', 'cycles')} before ${count === 1 ? 'does' : 'do'} not say what came off: the face is at most this high. Read the height.`,
  warningTitle: {
    now: 'this cycle takes the face below its minimum',
    next: 'the next cycle would take the face below its minimum',
  },
  warning: {
    expected: (after: string, minimum: string) =>
      `About ${after} mm would be left, and ${minimum} mm are the smallest allowed. Don’t lap it before an inspector has said what is to be done; another ring may be needed.`,
    entered: (after: string, minimum: string) =>
      `${after} mm are left, and ${minimum} mm are the smallest allowed. Read the height again, and ask an inspector what is to be done.`,
    next: (after: string, minimum: string) =>
      `About ${after} mm would be left, and ${minimum} mm are the smallest allowed.`,
  },
  looseOnCarbonTitle: 'loose grains on carbon',
  looseOnCarbon:
    'Loose grains embed in carbon and then cut the hard face (a training note on lapping).',
  sag: {
    convex: (um: string) => `This plate leaves the ring convex by about ${um} µm.`,
    concave: (um: string) => `This plate leaves the ring concave by about ${um} µm.`,
    why: 'Over its whole outer diameter, for a plate of spherical form.',
  },
  facts: {
    removed: 'Comes off',
    number: 'Cycle of this order',
    relaps: 'Relapped, with this order',
    before: 'Before it',
  },
  relaps: (count: number) => (count === 0 ? 'not yet' : count === 1 ? 'once' : `${count} times`),
  cycleNumber: (number: number) => `No. ${number}`,
  without: 'Heights of the log stand without uncertainty.',

  sectionTitle: 'Lapping log',
  none: 'No lap cycle yet',
  columns: {
    cycle: 'Cycle',
    plate: 'Plate',
    height: 'Height, mm',
    removed: 'Removed',
    left: 'Left',
    recorded: 'Recorded',
  },
  heights: (before: string, after: string) => `${before} to ${after}`,
  notRead: 'not read',
  reckoned: 'reckoned',
  asRead: 'read',
  removed: (um: string) => `${um} µm`,
  planned: (um: string) => `planned ${um} µm`,
  removedUnknown: 'not known',
  aboveMinimum: (mm: string) => `${mm} mm above the minimum`,
  belowMinimum: (mm: string) => `${mm} mm below the minimum`,
  duration: (min: string) => `${min} min`,
  load: (kg: string) => `${kg} kg`,
  plateIs: (form: string, sag: string) => `plate ${form}${sag}`,
  sagOver: (um: string, over: string) => `, ${um} µm${over}`,
  over: (mm: string) => ` over ${mm} mm`,
  isNewRing: 'new ring',
  correct: (face: string, number: number) => `${face}, cycle ${number}`,

  lines: {
    cycles: (here: number, earlier: number) =>
      `${times(here, 'cycle', 'cycles')} in this order${earlier === 0 ? '' : `, ${earlier} in earlier ones`}`,
    relaps: (count: number) =>
      count === 0 ? 'no relap yet' : count === 1 ? 'relapped once' : `relapped ${count} times`,
    newRing: 'a new ring',
    heights: (before: string, after: string, how: string) =>
      `Height ${before} to ${after} mm (${how})`,
    height: (mm: string, how: string) => `Height ${mm} mm (${how})`,
    removed: (um: string) => `${um} µm removed`,
    removedUnknown: 'stock removed not known in full',
    minimum: (mm: string) => `smallest allowed ${mm} mm`,
    noMinimum: 'no smallest height stated',
    corrected: (name: string, at: string, reason: string) =>
      `Corrected by ${name} on ${at}: ${reason}`,
  },
  afterCycle: (number: number) => `after lap cycle ${number}`,

  certificate: {
    heading: 'Lapping of the faces',
    columns: ['Face', 'Lapped', 'Height', 'Against the minimum'],
    note: 'From the lapping log. Heights are as noted there, without uncertainty, and are not judged by the limit set.',
  },

  faults: {
    'componentId empty': 'Choose the face that is lapped.',
    'componentId not-known': 'This is not a face of the seal. Choose one of its faces.',
    'plate empty': 'Say on which plate it is lapped.',
    'plateForm empty': 'Say whether the plate is convex or concave: how far is given below.',
    'plateSagUm not-here': 'A flat plate is not out of flat. Leave this empty, or choose its form.',
  } as Readonly<Record<string, string>>,
} as const
