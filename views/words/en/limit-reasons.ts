import type { NotAppliedReason } from '../../../src/domain/explain-limit.ts'

/** Why a limit applies to a result, and why the others do not. */
export const limitReasonsWords = {
  title: 'Which limits apply, and why',
  link: 'Which limits apply, and why',
  lead: 'Of the limits that match, the most specific one applies: the one that states most, or, of as many, the narrower one. What is not known of the seal does not match.',
  ofFace: (face: string) => `Limits of the face: ${face}`,
  ofMachine: 'Limits of the machine and of the seal as a whole',
  case: 'Known of it',
  caseLabel: {
    material: 'Material',
    diameterOfFace: 'Face diameter',
    diameterOfShaft: 'Shaft diameter',
    pressure: 'Sealed pressure',
    speed: 'Shaft speed',
    service: 'Service',
  },
  notKnown: 'not known',
  perMin: (speed: string) => `${speed} per min`,
  boreNote:
    'The chamber bore is stated with each measured value; a limit per mm of it is multiplied there.',
  noneApplies: 'No limit applies: what is measured is kept, and not judged.',
  because: (conditions: string) => `It holds for: ${conditions}.`,
  sizeNotKnown: 'The size that it is multiplied by is not known here.',
  timesSize: (each: string) => `${each}, multiplied out.`,
  othersOf: (count: number) =>
    count === 1 ? '1 other limit did not apply' : `${count} other limits did not apply`,
  reason: {
    'material-differs': 'another material',
    'material-not-known': 'the material is not known',
    'component-differs': 'the other face',
    'component-not-known': 'which face it is, is not known',
    'service-differs': 'another service',
    'service-not-known': 'the service was not stated',
    'diameter-outside': 'another diameter',
    'diameter-not-known': 'the diameter is not known',
    'pressure-outside': 'another pressure',
    'pressure-not-known': 'the sealed pressure was not stated',
    'speed-outside': 'another speed of the shaft',
    'speed-not-known': 'the speed of the shaft was not stated',
    'less-specific': 'it matches too, and is less specific',
    tied: 'it matches as well, and neither is more specific: the set can’t be approved so',
  } satisfies Readonly<Record<NotAppliedReason, string>>,
  unlimited: 'The set has no limits for',
} as const
