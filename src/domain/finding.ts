import type { StripPart } from './strip-part.ts'

/** What can be seen on a part, in the words of the trade; pictures and words stand in views. */
export const findingTerms = [
  // of a face
  'even-track',
  'wide-track',
  'narrow-track',
  'patchy-track',
  'high-spots',
  'partial-contact',
  'heavy-outer-contact',
  'heavy-inner-contact',
  'heat-checks',
  'blisters',
  'chipped-edge',
  'grooves',
  'pitting',
  'coking',
  'cracked',
  // of a secondary seal
  'swollen',
  'hardened',
  'compression-set',
  'extruded',
  'nibbled',
  'cut',
  'fretting',
  // of a spring
  'clogged',
  'broken',
  'set-short',
  'worn-coils',
  // of hardware, and of everything
  'worn-drive',
  'set-screw-marks',
  'corroded',
  'deposits',
  'rubbed',
  'missing-part',
  'nothing-found',
] as const
export type FindingTerm = (typeof findingTerms)[number]

export const severities = ['slight', 'marked', 'severe'] as const
export type Severity = (typeof severities)[number]

/** Where on a ring it lies, across its width. */
export const radialPlaces = ['outer-edge', 'middle', 'inner-edge', 'whole-width'] as const
export type RadialPlace = (typeof radialPlaces)[number]

/** Why it may have come about: an opinion, kept apart from what was seen. */
export const suspectedCauses = [
  'not-said',
  'dry-running',
  'flashing',
  'misalignment',
  'shaft-run-out',
  'vibration',
  'over-pressure',
  'distortion',
  'abrasives',
  'chemical-attack',
  'overheating',
  'hang-up',
  'fatigue',
  'fitting',
  'handling',
  'ordinary-wear',
  'other',
] as const
export type SuspectedCause = (typeof suspectedCauses)[number]

export type NewFinding = {
  readonly workOrderId: number
  readonly part: StripPart
  readonly term: FindingTerm
  /** Null for `nothing-found`. */
  readonly severity: Severity | null
  /** On a clock face, mark at 12, seen towards the part: from hour to hour, 0 to 12; null: all. */
  readonly fromHour: number | null
  readonly toHour: number | null
  readonly radialPlace: RadialPlace | null
  readonly isBeforeCleaning: boolean
  /** What was seen, in the technician's words; '' where the term says it all. */
  readonly observation: string
  readonly suspectedCause: SuspectedCause
  readonly causeNote: string
  /** SHA-256 of a stored photograph; null: none. */
  readonly photoSha256: string | null
  readonly replacesId: number | null
  readonly reason: string
}

export type Finding = NewFinding & {
  readonly id: number
  readonly recordedById: number
  readonly recordedByName: string
  readonly recordedAt: string
  readonly replacedById: number | null
}

export const findingBounds = {
  hour: { min: 0, max: 12 },
  textLength: 500,
} as const
