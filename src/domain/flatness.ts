import { type FlatnessPattern, flatnessPatterns } from '../science/surface/flatness-pattern.ts'
import type { FlatnessBudgetInput } from './flatness-budget-input.ts'
import type { FlatnessSees } from './flatness-sees.ts'
import type { InstrumentUse } from './instrument.ts'
import type { FaceKind } from './seal.ts'
import type { Uncertainty } from './uncertainty.ts'
import type { UnreadableCause } from './unreadable-cause.ts'
import type { WholeFace, wholeFacePattern } from './whole-face.ts'

/** What a technician can pick under the lamp; each is computed or, unreadable, recorded as such. */
export const bandPatterns = flatnessPatterns
export type BandPattern = FlatnessPattern

/** What stands in a record: a pattern that was picked, or that none was asked for. */
export type RecordedPattern = BandPattern | typeof wholeFacePattern

export const readingConditions = ['as-found', 'as-left'] as const
export type ReadingCondition = (typeof readingConditions)[number]

/** A count on one direction across the face, with the text as typed. */
export type DirectionReading = {
  readonly directionDeg: number
  readonly bands: number
  readonly bandsTyped: string
}

/** What the technician records; everything else is computed from it. */
export type NewFlatnessReading = {
  readonly workOrderId: number
  readonly componentId: number
  readonly condition: ReadingCondition
  readonly lampInstrumentId: number
  readonly flatInstrumentId: number
  readonly pattern: BandPattern
  /** Rings only: which way the middle stands; null where it was not found out. */
  readonly ringCentre: 'high' | 'low' | null
  /** Unreadable faces only; null where it was not stated. */
  readonly unreadableCause: UnreadableCause | null
  readonly directions: readonly DirectionReading[]
  readonly viewingAngleDeg: number
  readonly soakMin: number | null
  readonly temperatureC: number | null
  /** Null in records older than budgets. */
  readonly budgetInput: FlatnessBudgetInput | null
  readonly note: string
  /** A correction names what it replaces and why. */
  readonly replacesId: number | null
  readonly reason: string
}

/**
 * A reading as it stands in the record. An unreadable face has an outcome and no figures:
 * it is recorded, and is never a pass.
 */
export type FlatnessReading = Omit<NewFlatnessReading, 'pattern'> & {
  readonly id: number
  readonly pattern: RecordedPattern
  /** Of a reading of the whole face; null for counted bands. */
  readonly wholeFace: WholeFace | null
  readonly faceKind: FaceKind
  readonly wavelengthNm: number
  readonly bandHeightUm: number
  readonly bands: number | null
  readonly flatnessUm: number | null
  readonly form: string
  readonly standardUncertaintyUm: number | null
  /** Null for an unreadable face, and in records older than budgets. */
  readonly uncertainty: Uncertainty | null
  readonly method: string
  /** Follows from the method: a line count is never mixed with a whole-surface figure. */
  readonly sees: FlatnessSees
  readonly lamp: InstrumentUse
  readonly flat: InstrumentUse
  readonly recordedById: number
  readonly recordedByName: string
  readonly recordedAt: string
  /** The reading that took this one's place, if one did. */
  readonly replacedById: number | null
}

/** A reading of bands that were counted. */
export type CountedReading = FlatnessReading & {
  readonly pattern: BandPattern
  readonly wholeFace: null
}

export const flatnessBounds = {
  directionDeg: { min: 0, max: 360 },
  bands: { min: 0, max: 99.75 },
  viewingAngleDeg: { min: 0, max: 80 },
  soakMin: { min: 0, max: 2880 },
  /** What no confirmation can make possible. */
  temperatureC: { min: -273.15, max: 3000 },
  directionCount: { min: 1, max: 8 },
} as const
