import type { InstrumentUse } from './instrument.ts'
import type { TypedMm } from './wear-track.ts'

export type TypedN = { readonly n: number; readonly typed: string }

/** A spring, or one of several alike, read on the bench. */
export type NewSpringCheck = {
  readonly workOrderId: number
  readonly condition: 'as-found' | 'as-left'
  /** How many such springs press on the face together. */
  readonly springsCount: number
  readonly freeLength: TypedMm
  /** Of a new one, by its drawing; null: not stated. */
  readonly newLength: TypedMm | null
  /** Loads of one spring at lengths; none: the rate is stated or not known. */
  readonly loads: readonly { readonly length: TypedMm; readonly load: TypedN }[]
  /** Of one spring, where no loads were read; null otherwise. */
  readonly statedRateNPerMm: number | null
  readonly workingLength: TypedMm
  /** Length with coils closed, or the shortest that the seal allows. */
  readonly solidLength: TypedMm | null
  /** What the lengths were read with; null: a rule, or not said. */
  readonly instrumentId: number | null
  readonly note: string
  readonly replacesId: number | null
  readonly reason: string
}

export type SpringCheck = NewSpringCheck & {
  readonly id: number
  /** Of one spring; null where there is neither load nor rate. */
  readonly rateNPerMm: number | null
  /** Of all springs together at the working length. */
  readonly workingLoadN: number | null
  readonly facePressureMPa: number | null
  /** From the working length to the solid one. */
  readonly remainingTravelMm: number | null
  /** Change of the load of all springs for a mm of end play, or of height lapped off. */
  readonly loadPerMmN: number | null
  /** How much shorter it is than a new one. */
  readonly setMm: number | null
  /** Of the working load; null where nothing of it is known. */
  readonly expandedUncertaintyN: number | null
  readonly coverageFactor: number | null
  readonly instrument: InstrumentUse | null
  readonly method: string
  readonly recordedById: number
  readonly recordedByName: string
  readonly recordedAt: string
  readonly replacedById: number | null
}

export const springCheckBounds = {
  loadCount: { min: 0, max: 20 },
} as const
