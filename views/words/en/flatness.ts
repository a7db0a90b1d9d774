import type { BandPattern } from '../../../src/domain/flatness.ts'
import type { UnreadableCause } from '../../../src/domain/unreadable-cause.ts'

const choosePattern = 'Choose what the bands look like.'

/** The words of the light-band reading. */
export const flatnessWords = {
  title: 'Light-band reading',
  correctionTitle: 'Correct a light-band reading',
  recorded: 'The reading is recorded. Next: the other face.',
  cautionTitle: 'lamp, solvent, glass',
  caution: [
    'The lamp and its transformer run hot, and an open mercury lamp gives ultraviolet light: don’t look into it, nor into the beam of a laser.',
    'Leave a broken sodium or mercury lamp to those whom the site rules name.',
    'Wipe with solvent away from the lamp and with the air moving. Lower the glass flat, never slide it on a dry face.',
    'The site rules and local codes come first.',
  ],
  cautionLine: 'Caution: hot lamp, ultraviolet and laser light, solvent, glass. Read below first.',
  notChosen: 'not chosen yet',
  change: 'Change',
  face: 'Which face is under the flat?',
  condition: 'As found or as left?',
  conditionDetail: {
    'as-found': 'before any lapping',
    'as-left': 'ready to be judged',
  },
  pattern: 'What do the bands look like?',
  patternHint:
    'Where the flat touches along one side, the pictures have that side at the bottom: the gap opens upwards.',
  patternDetail: {
    straight: 'both ways across: counts as 0',
    convex: 'bulge away from the contact line',
    concave: 'bulge towards the contact line',
    cylinder: 'bent one way, straight across it',
    saddle: 'bent up one way, down the other',
    rings: 'closed rings',
    's-shape': 'bent up, then down',
    'turned-edge': 'hook at the edge only',
    local: 'kink in one place',
    unreadable: 'no bands to read',
  } satisfies Readonly<Record<BandPattern, string>>,
  ringCentre: 'Rings only: does the middle stand high or lie low?',
  ringCentreHint:
    'Lower your eye: rings that move outwards mean high, inwards low. Or press lightly at the edge: if the middle of the rings walks towards your finger, it is high.',
  ringNotKnown: 'Not found out',
  unreadableAdvice:
    'Clean and dry the face and the flat, let both come to one temperature, and read again. You may record the face as unreadable; that is never a pass.',
  cause: 'Why can’t it be read?',
  causeHint: 'Recorded with the reading, and printed. What to do about it stands beside each.',
  causeAdvice: {
    matte:
      'A matte face scatters the light. Polish it for the reading and matte it again afterwards, or measure it another way.',
    dirty: 'Clean face and flat, blow the dust off, and lower the flat again.',
    wet: 'Dry both. Liquid in the gap makes bands of another height, so counting them would be wrong.',
    'gap-too-wide':
      'Something holds the flat off: look for dust or a burr. Press lightly until bands appear.',
    other: 'Write what you see into the note below.',
  } satisfies Readonly<Record<UnreadableCause, string>>,
  unreadableBecause: (cause: string) => `Why it could not be read: ${cause.toLowerCase()}.`,
  countAlong: (directionDeg: string) => `How many bands along ${directionDeg}°?`,
  countHint:
    'Lay a straight line through both ends of one band and count the other bands it cuts, to the quarter. Rings: count from the middle to the edge. S-shape: add its two bends. Edge or spot: count the hook or the kink.',
  secondHint:
    'Turn the flat a quarter turn and count again. Leave it empty if you read one way only.',
  countLabel: (directionDeg: string) => `Bands along ${directionDeg}°`,
  steps: {
    lessBand: 'One band less',
    lessQuarter: 'A quarter band less',
    moreQuarter: 'A quarter band more',
    moreBand: 'One band more',
  },
  bowTitle: 'Measured with a scale instead: bow and spacing',
  bowHint: 'The count is then the bow over the spacing. Leave the count above empty.',
  bow: 'Bow of one band',
  spacing: 'From one band to the next',
  moreTitle: 'How it was read',
  lamp: 'Lamp',
  flat: 'Optical flat',
  angle: 'Viewing angle from straight above',
  angleHint: 'Empty or 0 is straight above. Looking at a slant shows too few bands.',
  soak: 'Side by side before reading',
  soakHint: 'How long face and flat lay together to come to one temperature. Empty: not recorded.',
  temperature: 'Temperature at the bench',
  temperatureHint: 'Empty: not recorded.',
  note: 'Note',
  budget: {
    title: 'For the uncertainty',
    hint: 'What you leave empty is left out of the budget, and the result says so. The next form begins with what you state here.',
    halfWidth: 'How finely could you read the bands?',
    halfWidthHint:
      'To plus or minus so much of a band. A quarter is usual (common practice, no source); a tenth is about the best that an eye does.',
    halfWidths: [
      { value: '0.1', label: 'A tenth' },
      { value: '0.25', label: 'A quarter (usual)' },
      { value: '0.5', label: 'Half a band' },
    ],
    halfWidthOther: 'Or another half width',
    repeats: 'The same direction counted again',
    repeatsHint:
      'Two counts or more, such as 2,0 2,25 2. They say how far your counts scatter. The result stays the count above; enter their mean there to use it.',
    carried: (bands: string, count: number) =>
      `The reading that you correct came with a known scatter of its counts: standard deviation ${bands} bands, ${count === 1 ? 'one count' : `mean of ${count} counts`}. It is kept, unless you count the same direction again for the uncertainty.`,
    angleLimit: 'Your eye was never further from straight above than',
    angleLimitHint: 'From twice, five or ten times the width of the flat: 14°, 6° or 3°.',
    flatTolerance: 'Largest error of the optical flat',
    flatToleranceHint: 'Empty: as its papers say.',
    bowUnit: { deltaK: 'K', thicknessMm: 'mm', diameterMm: 'mm', expansionUmPerMK: 'µm/(m·K)' },
    thermal: {
      legend: 'The ring: warmer on one side than on the other',
      hint: 'A ring straight off the lap or out of the hand bows. State how large the difference through it may still have been.',
      deltaK: 'Difference through the ring, at most',
      thicknessMm: 'Thickness of the ring',
      diameterMm: 'Outer diameter',
      expansionUmPerMK: 'Expansion',
      partHint: {
        deltaK: undefined,
        thicknessMm: undefined,
        diameterMm: 'Empty: as recorded for the face.',
        expansionUmPerMK:
          'Empty: from memory, by material. Silicon carbide 4, tungsten carbide 5, carbon 5, alumina 7.',
      },
    },
    flatThermal: {
      legend: 'The optical flat: the same',
      hint: 'Hands and a hot lamp warm the glass from one side.',
      deltaK: 'Difference through the flat, at most',
      thicknessMm: 'Thickness of the flat',
      diameterMm: 'Diameter of the flat',
      expansionUmPerMK: 'Expansion of the flat',
      partHint: {
        deltaK: undefined,
        thicknessMm: undefined,
        diameterMm: undefined,
        expansionUmPerMK: 'Fused silica 0.55, borosilicate 3.3 (from memory).',
      },
    },
  },
  submitNext: 'Record, then the other face',
  answerTitle: 'Flatness',
  ask: {
    lamp: 'Choose the lamp below: a band has no size without it.',
    pattern: choosePattern,
    count: 'Enter the count to see the flatness.',
    second: 'A saddle needs both directions.',
  },
  askFace: 'Choose the face to see the verdict.',
  bandsOf: (bands: string, heightUm: string) => `${bands} bands of ${heightUm} µm`,
  form: 'Form',
  lampUsed: 'Lamp',
  directions: (read: number, required: number) =>
    `${read} of ${required} directions read. The hand-over asks for ${required}.`,
  faults: {
    'faceId empty': 'Choose the face.',
    'condition empty': 'Choose as found or as left.',
    'pattern empty': choosePattern,
    'lampInstrumentId empty': 'Choose the lamp.',
    'opticalFlatInstrumentId empty': 'Choose the optical flat.',
    'bands empty': 'Enter the count, such as 1.25, or choose “Unreadable”.',
    'bands below': 'A count is 0 or more.',
    'readings too-few': 'A saddle is the sum of two directions: enter both counts.',
    'readings empty': 'Enter the count.',
    'repeats too-few': 'Enter two counts or more, or none.',
    'readerSpread not-known':
      'Fewer than two people have read this face in this condition since it was last lapped: there is no spread to take. Take the tick away.',
    'readerSpread one-of-two':
      'Take either the counts made again or the spread of the readers, not both.',
    'repeats above': 'Enter at most 24 counts.',
    'deltaK empty': 'Enter the difference in temperature, or clear what stands beside it.',
    'thicknessMm empty': 'Enter the thickness: a thin ring bows more.',
    'diameterMm empty': 'Enter the diameter.',
    'expansionUmPerMK empty': 'Enter the expansion of the material.',
    'expansionPerK empty': 'Enter the expansion of the material.',
  } as Readonly<Record<string, string>>,
  straightFault: 'Straight bands count as 0. Leave this empty, or choose the pattern that you see.',
} as const
