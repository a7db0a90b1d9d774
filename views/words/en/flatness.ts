import type { BandPattern } from '../../../src/domain/flatness.ts'

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
  quarantineTitle: 'seal in quarantine',
  quarantine:
    'Nobody has stated that this seal is free of its last fluid. Ask before you handle it.',
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
  uncertainty: 'Standard uncertainty',
  directions: (read: number, required: number) =>
    `${read} of ${required} directions read. The hand-over asks for ${required}.`,
  sees: 'A count along lines sees how the face is bowed, and little of waves around it.',
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
  } as Readonly<Record<string, string>>,
  straightFault: 'Straight bands count as 0. Leave this empty, or choose the pattern that you see.',
} as const
