import type { WithinUnit } from '../../../src/domain/limit-entry.ts'
import type { PerMmOf } from '../../../src/domain/limit-set.ts'
import type { LimitPressureUnit } from '../../../src/domain/pressure-units.ts'

/** The form of a limit set and of each limit in it. */
export const limitFormsWords = {
  newTitle: 'New limit set',
  newLead:
    'Proposed limits, each with what it is founded on. Look through each of them and change it to what your workshop holds to. It begins as a draft: an inspector who did not write it approves it.',
  nextTitle: (name: string) => `New version of ${name}`,
  nextLead: (version: number, day: string) =>
    `It is stored as version ${version}, written ${day}, and begins as a draft. Until an inspector has approved it, the version in force goes on; work orders that stand keep theirs.`,
  name: 'Name',
  nameHint: 'Such as the duty it is for.',
  noteLabel: 'Note',
  noteHint: 'What changed, and why.',
  directions: 'Directions a face is read in',
  directionsHint:
    'Before hand-over, every face must be read in so many (common practice, no source).',
  share: 'Uncertainty may take up at most',
  shareHint:
    'Share of a limit, in per cent; beyond it a set-up can’t decide. Empty: one third (common practice, no source).',
  sharePercent: '% of a limit',
  limitsTitle: 'Limits',
  limit: (index: number, what: string) => `${index}. ${what}`,
  another: 'Another limit',
  characteristic: 'What is limited',
  choose: 'Choose',
  limitPart: 'The limit',
  conditionsPart: 'What it holds for',
  conditionsHint:
    'Leave empty what does not matter: the limit that states most comes before the others. Material and face are for what belongs to a face; there the diameter is that of the face, else that of the shaft.',
  holdPart: 'Pressure drop only',
  holdHint:
    'Under a lower start pressure the same gap leaks less, and in a larger volume the same leak shows less. Empty start or volume: any.',
  sizes: (over: string, upTo: string) =>
    [over === '' ? '' : `over ${over}`, upTo === '' ? '' : `up to ${upTo}`, 'mm']
      .filter((part) => part !== '')
      .join(' '),
  foundedPart: 'What it is founded on',
  material: 'Face material',
  anyMaterial: 'any material',
  component: 'Which face',
  anyComponent: 'either face',
  service: 'Service',
  anyService: 'any service',
  diameterOver: 'Diameter over',
  diameterUpTo: 'Diameter up to',
  pressureOver: 'Sealed pressure over',
  pressureUpTo: 'Sealed pressure up to',
  pressureUnit: 'Unit of that pressure',
  perMin: 'per min',
  speedOver: 'Shaft speed over',
  speedUpTo: 'Shaft speed up to',
  lower: 'At least',
  upper: 'At most',
  unit: 'Unit',
  perMmOf: 'Where per mm: of what',
  within: 'In a hold of at least',
  withinUnit: 'Unit of that time',
  volume: 'In a volume of at most',
  startAtLeast: 'Started at, or above',
  startUnit: 'Unit of that pressure',
  asWritten: 'As written',
  asWrittenHint: 'In the words of its source; printed on the certificate.',
  basis: 'Basis',
  source: 'Source',
  sourceHint: 'Publication; or, where there is none, what it goes back to.',
  edition: 'Edition',
  clause: 'Clause',
  optionalHint: 'Where it has one.',
  leaveOut: 'Leave this limit out',
  more: 'One more limit',
  submit: 'Store the draft',
  submitNext: 'Store the new version as a draft',
  perMmSizes: {
    bore: 'Chamber bore',
    shaft: 'Shaft diameter',
    face: 'Face diameter',
  } satisfies Readonly<Record<PerMmOf, string>>,
  withinUnits: { s: 's', min: 'min' } satisfies Readonly<Record<WithinUnit, string>>,
  startUnits: {
    kPa: 'kPa gauge',
    bar: 'bar gauge',
    psi: 'psi gauge',
  } satisfies Readonly<Record<LimitPressureUnit, string>>,
} as const

const ofFacesOnly =
  'Only what belongs to a face has this: flatness, roughness, height, parallelism.'
const turnedRange = 'The lower end of the range must lie below its upper end.'
const startUnit = 'Choose the unit of the start pressure.'
const ofDropsOnly = (what: string) => `Only a pressure drop has a ${what}.`

/** Better than the general sentences, by `field kind`. */
export const limitSetSentences: Readonly<Record<string, string>> = {
  'name empty': 'Name the set.',
  'name taken': 'There is a set of this name already: make a new version of that one.',
  'limits too-few': 'A set has at least one limit.',
  'limits above': 'A set has at most 40 limits.',
  'characteristic empty': 'Choose what is limited.',
  'characteristic not-a-choice': 'Choose what is limited.',
  'faceMaterial not-here': ofFacesOnly,
  'faceMaterial not-a-choice': 'Choose a material of the list.',
  'componentKind not-here': ofFacesOnly,
  'componentKind not-a-choice': 'Choose one of the two faces.',
  'service not-a-choice': 'Choose a service of the list.',
  'diameterOverMm lower-not-below': turnedRange,
  'pressureOver lower-not-below': turnedRange,
  'speedOverPerMin lower-not-below': turnedRange,
  'pressureUnit empty': 'Choose the unit of the sealed pressure.',
  'pressureUnit not-a-choice': 'Choose the unit of the sealed pressure.',
  'lower lower-not-below': 'What is at least must be below what is at most.',
  'upper limit-needed': 'Enter what it is at most, at least, or both.',
  'unit empty': 'Choose the unit of the limit.',
  'unit not-a-choice': 'Choose a unit of what is limited.',
  'perMmOf empty': 'A limit per mm needs the size it is multiplied by.',
  'perMmOf not-a-choice': 'Choose a size that goes with what is limited.',
  'perMmOf not-here': 'Only a limit with a unit per mm has a size it is multiplied by.',
  'within empty': 'A drop needs the time it is held for.',
  'within not-here': ofDropsOnly('time'),
  'withinUnit empty': 'Choose the unit of the time.',
  'withinUnit not-a-choice': 'Choose the unit of the time.',
  'withinUnit not-here': ofDropsOnly('time'),
  'volumeAtMostL not-here': ofDropsOnly('volume'),
  'startAtLeast empty': 'Enter the pressure, or leave out its unit.',
  'startAtLeast not-here': ofDropsOnly('start pressure'),
  'startUnit empty': startUnit,
  'startUnit not-a-choice': startUnit,
  'startUnit not-here': ofDropsOnly('start pressure'),
  'asWritten empty': 'Write the limit as its source does.',
  'basis empty': 'Choose how well it is founded.',
  'basis not-a-choice': 'Choose how well it is founded.',
  'source empty': 'Say where it comes from. Where there is no source, say what it goes back to.',
  'inForceFrom not-later': 'Choose today or a later day.',
  'retiredFrom not-later': 'Choose today or a later day.',
  'reason empty': 'Say why it is retired.',
}
