import type { MeasuredCharacteristic } from '../../../src/domain/characteristic.ts'
import type { MeasuredFamily } from '../../../src/domain/measured-family.ts'
import type { TraceDirection } from '../../../src/domain/measured-value.ts'

/** The words of what is read as one figure: finish, heights, run-out and fits. */
export const measuredValuesWords = {
  title: {
    roughness: 'Finish',
    height: 'Face height',
    dial: 'Run-out and fits',
  } satisfies Record<MeasuredFamily, string>,
  correctionTitle: {
    roughness: 'Correct the finish',
    height: 'Correct a face height',
    dial: 'Correct a run-out or fit',
  } satisfies Record<MeasuredFamily, string>,
  cautionTitle: 'a machine that can start',
  caution: [
    'Lock out and tag out drive and process, and check that nothing moves, before an indicator goes on. Work by the permit; its number can stand in the note.',
    'Turn the shaft by hand only, with hands and sleeves clear of coupling and keys. Lift and push it with a lever that can’t slip.',
    'The site rules and local codes come first.',
  ],
  what: 'What was measured?',
  whatDetail: {
    roughness: 'across the lay',
    'face-height': 'nose or ring',
    'face-parallelism': 'largest less smallest height',
    'shaft-run-out': 'where the seal sits, full turn',
    'sleeve-run-out': 'on the fitted sleeve, full turn',
    'shaft-straightness': 'largest along the shaft',
    'radial-lift': 'pushed up and let down',
    'end-play': 'pushed to and fro',
    'chamber-face-squareness': 'swept on the face, full turn',
    'seat-face-squareness': 'swept on the seat as fitted, full turn',
    'register-concentricity': 'swept in the register, full turn',
  } satisfies Record<MeasuredCharacteristic, string>,
  face: 'Which face?',
  condition: 'When was it measured?',
  conditionDetail: { 'as-found': 'as it came in', 'as-left': 'as it leaves' },
  readTitle: {
    roughness: 'What does it read?',
    height: 'What does it read?',
    dial: 'How far does the needle move?',
  } satisfies Record<MeasuredFamily, string>,
  readHint: {
    roughness:
      'Ra. Traced off the running band where the face allows it: a stylus marks soft carbon.',
    height: 'The height itself, or for parallelism the largest less the smallest.',
    dial: 'Full movement of the indicator, the largest reading less the smallest. It has no sign.',
  } satisfies Record<MeasuredFamily, string>,
  reading: (number: number) => (number === 1 ? 'Reading' : `Reading ${number}`),
  unit: 'Read in',
  unitHint: 'A graduation is that of the instrument’s record.',
  bore: 'Bore of the chamber',
  boreHint: 'For a limit that is given per millimetre of it. Empty: not measured.',
  againTitle: 'Read it again',
  againHint:
    'The result is the mean of all readings, and their scatter goes into the uncertainty. Lift off and set up anew each time.',
  traceAgainTitle: 'More traces',
  traceAgainHint:
    'Each at another place of the face, in the order in which they were traced, the first where it looks roughest. The result is their mean; their scatter goes into the uncertainty, and the largest is told beside it.',
  moreTitle: 'How it was read',
  instrument: 'Instrument',
  budget: {
    leverAngleDeg: {
      label: 'Angle of the lever',
      hint: 'Between lever and surface, of a lever indicator that read a movement. The reading is reduced by its cosine.',
      unit: '°',
    },
    cutOffMm: {
      label: 'Cut-off',
      hint: '0.25 mm for Ra up to 0.1 µm and 0.8 mm above it are usual (ISO 4288, from memory); a narrow face may allow only 0.08 mm.',
      unit: 'mm',
    },
    evaluationLengthMm: {
      label: 'Evaluation length',
      hint: 'Over which Ra was taken: five cut-offs are usual (ISO 4288, from memory). Empty: not recorded.',
      unit: 'mm',
    },
    tipRadiusUm: {
      label: 'Radius of the stylus',
      hint: '2 µm, or 5 µm on coarser faces, is usual (ISO 3274, from memory). Empty: not recorded.',
      unit: 'µm',
    },
    settingStandardUncertaintyUm: {
      label: 'Standard uncertainty of what it was set on',
      hint: 'Of a height: the gauge block or setting ring, from its certificate. For parallelism it falls out.',
      unit: 'µm',
    },
    temperatureHalfWidthK: {
      label: 'Temperature within ± of 20 °C',
      hint: 'Of the ring, for a height. Empty: left out of the budget.',
      unit: 'K',
    },
  },
  trace: 'Direction of the trace',
  traceHint: 'Ra is stated across the lay; a lapped face has none, so say which way it ran.',
  traceNotSaid: 'Not recorded',
  traces: {
    'across-lay': 'Across the lay',
    'along-lay': 'Along the lay',
    radial: 'Radial',
    around: 'Around the face',
    'no-lay': 'Any: the face has no lay',
  } satisfies Record<TraceDirection, string>,
  note: 'Note',
  answerTitle: 'Result',
  answer: 'Answer of the measurement',
  ask: {
    characteristic: 'Choose what was measured to see the result.',
    reading: 'Enter the reading to see the result and its uncertainty.',
    instrument: 'Choose the instrument: its accuracy belongs to the result.',
  },
  askFace: 'Choose the face: its material decides which limit holds.',
  meanLabel: 'Mean of',
  meanOf: (count: number) => `${count} readings`,

  sectionTitle: 'Finish, heights, run-out and fits',
  none: 'Nothing measured yet',
  columns: {
    what: 'Measured',
    verdict: 'Verdict',
    result: 'Result',
    limit: 'Limit',
    read: 'Read',
    recorded: 'Recorded',
  },
  act: {
    roughness: 'Finish',
    height: 'Face height',
    dial: 'Run-out and fits',
  } satisfies Record<MeasuredFamily, string>,
  readAs: (typed: string, unit: string) => `${typed} ${unit}`,

  faults: {
    'characteristic empty': 'Choose what was measured.',
    'characteristic not-a-choice': 'Choose what was measured.',
    'componentId empty': 'Choose the face that was measured.',
    'componentId not-known': 'This is not a face of the seal. Choose one of its faces.',
    'condition empty': 'Say whether it was measured as it came in or as it leaves.',
    'instrumentId empty': 'Choose the instrument that it was read with.',
    'value empty': 'Enter the reading.',
    'readings empty': 'Enter the reading.',
    'unit empty': 'Choose what the instrument reads in.',
    'evaluationLengthMm below': 'Enter a length from the cut-off up; five cut-offs are usual.',
    'leverAngleDeg not-here':
      'Only a lever indicator that reads a movement has an angle. Leave this empty.',
    'settingStandardUncertaintyUm not-here':
      'It falls out of a difference. Leave this empty for parallelism.',
    'temperatureHalfWidthK not-here':
      'It falls out of a difference. Leave this empty for parallelism.',
  } as Readonly<Record<string, string>>,
} as const
