import type { SurveyCharacteristic } from './characteristic.ts'
import type { ReadingCondition } from './flatness.ts'
import type { LengthUnit } from './measured-value.ts'
import type { SurveyResult } from './survey-result.ts'

/** How a survey is read: round a circle, round a face, between two ends, or at several planes. */
export const surveyKinds = ['radial', 'face', 'two-ends', 'planes'] as const
export type SurveyKind = (typeof surveyKinds)[number]

export const surveyKindOf: Readonly<Record<SurveyCharacteristic, SurveyKind>> = {
  'shaft-run-out': 'radial',
  'sleeve-run-out': 'radial',
  'register-concentricity': 'radial',
  'chamber-face-squareness': 'face',
  'seat-face-squareness': 'face',
  'end-play': 'two-ends',
  'radial-lift': 'two-ends',
  'shaft-straightness': 'planes',
}

/** Where the part lay or stood while it was read. */
export const surveyPlaces = ['machine', 'between-centres', 'vee-blocks'] as const
export type SurveyPlace = (typeof surveyPlaces)[number]

/** `part`: it turned under a standing indicator; `indicator`: the shaft carried it round. */
export const turnedParts = ['part', 'indicator', 'both'] as const
export type TurnedPart = (typeof turnedParts)[number]

/** Which side of the part the tip ran on. */
export const sweptSurfaces = ['outside', 'inside', 'face'] as const
export type SweptSurface = (typeof sweptSurfaces)[number]

/** A register is round: it is swept outside, a spigot, or inside, a bore. */
export const registerSides = ['inside', 'outside'] as const

export const contactPoints = ['ball', 'flat', 'roller', 'point'] as const
export type ContactPoint = (typeof contactPoints)[number]

/** Which way the axial float was held while a face was swept. */
export const floatHolds = ['towards-seal', 'towards-drive', 'not-held'] as const
export type FloatHold = (typeof floatHolds)[number]

/** What was set up before the first reading; null where it was not stated. */
export type SurveySetUp = {
  /** Null where a program did not say. */
  readonly place: SurveyPlace | null
  readonly turned: TurnedPart
  readonly surface: SweptSurface
  readonly contact: ContactPoint | null
  readonly leverAngleDeg: number | null
  readonly sweptDiameterMm: number | null
  readonly sealMeanDiameterMm: number | null
  /** Bore of the chamber, for limits per millimetre of it. */
  readonly sizeMm: number | null
  /** Positions of one turn in the order they are read, 0 at the mark, as the part or tip turns. */
  readonly anglesDeg: readonly number[]
  /** Whether angles rise clockwise, seen from the seal towards the drive. */
  readonly isClockwise: boolean
  /** Turns, or repeats of a two-ends survey. */
  readonly turnsCount: number
  /** Whether each turn ends with a closing reading at its first position. */
  readonly isClosed: boolean
  /** Along the shaft, for a survey at planes; empty for the others. */
  readonly planesMm: readonly number[]
  readonly floatHeld: FloatHold
  /** Number of the lock-out, tag or permit; '' on a bench. */
  readonly lockOutReference: string
  readonly unit: LengthUnit
  /** What the bracket sags by when it hangs below, read on a true mandrel; null: no correction. */
  readonly sagUm: number | null
  /** The position at which the bracket stands on top. */
  readonly topAngleDeg: number | null
  readonly instrumentId: number
  /** Of a second indicator, opposite the first, that separates the float from the face. */
  readonly secondInstrumentId: number | null
}

/** A survey as it was begun; its readings come one by one, and whoever comes next goes on. */
export type DialSurvey = {
  readonly id: number
  readonly workOrderId: number
  readonly characteristic: SurveyCharacteristic
  readonly condition: ReadingCondition
  readonly setUp: SurveySetUp
  readonly note: string
  /** The measured value that this survey is to replace, and why. */
  readonly replacesId: number | null
  readonly reason: string
  readonly startedById: number
  readonly startedByName: string
  readonly startedAt: string
}

/** Where a reading belongs: a position of a turn at a plane, or one of two ends of a repeat. */
export type SurveySpot = {
  /** From 0; 0 where the survey has no planes. */
  readonly planeIndex: number
  /** From 0. */
  readonly turnIndex: number
  /** Place in `anglesDeg`; its length means the closing reading. 0 at rest, 1 moved: two ends. */
  readonly positionIndex: number
  readonly indicator: 'first' | 'second'
}

/** One reading; a later one of the same spot takes its place, and both stay. */
export type SurveyReading = SurveySpot & {
  readonly id: number
  readonly um: number
  readonly typed: string
  readonly recordedById: number
  readonly recordedByName: string
  readonly recordedAt: string
}

/** How a survey ended: as a measured value with what its readings say, or not at all. */
export type SurveyEnd = {
  readonly outcome: 'recorded' | 'given-up'
  readonly measuredValueId: number | null
  readonly result: SurveyResult | null
  /** Why it was given up; '' for a recorded one. */
  readonly reason: string
  readonly byId: number
  readonly byName: string
  readonly at: string
}

/** A survey with everything read so far, overtaken readings too, oldest first. */
export type SurveyRecord = DialSurvey & {
  readonly readings: readonly SurveyReading[]
  /** Null while it is open. */
  readonly end: SurveyEnd | null
}

export const surveyBounds = {
  positionCount: { min: 3, max: 72 },
  turnsCount: { min: 1, max: 12 },
  planeCount: { min: 3, max: 20 },
  planeMm: { min: 0, max: 50_000 },
  angleDeg: { min: 0, max: 359.999 },
  diameterMm: { min: 1, max: 5000 },
  leverAngleDeg: { min: 0, max: 60 },
  sagUm: { min: -5000, max: 5000 },
  readingUm: { min: -100_000, max: 100_000 },
  lockOutLength: 60,
} as const
