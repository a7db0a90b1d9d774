import type { Characteristic } from './characteristic.ts'
import type { ComponentKind } from './seal.ts'
import type { Service } from './service.ts'

/** How well a limit is founded; printed beside it wherever it is used. */
export const limitBases = [
  'standard',
  'published',
  'house rule',
  'common practice, no source',
  'from memory',
] as const
export type LimitBasis = (typeof limitBases)[number]

/** What a limit given per millimetre is multiplied by. */
export const perMmSizes = ['bore', 'shaft', 'face'] as const
export type PerMmOf = (typeof perMmSizes)[number]

/**
 * What a limit holds for; null: whatever it may be. Diameters are those of the face for what
 * belongs to a face, of the shaft for the rest; `over` is outside the range, `upTo` inside it.
 */
export type LimitConditions = {
  readonly faceMaterial: string | null
  readonly componentKind: ComponentKind | null
  readonly service: Service | null
  readonly diameterOverMm: number | null
  readonly diameterUpToMm: number | null
  readonly pressureOverKPa: number | null
  readonly pressureUpToKPa: number | null
  /** Of the shaft. */
  readonly speedOverPerMin: number | null
  readonly speedUpToPerMin: number | null
}

/**
 * One limit. `lower` and `upper` are in the stored unit of the characteristic (static-drop: kPa
 * within `withinS` for a volume of at most `volumeAtMostL` and a start at `startAtLeastKPaGauge` or
 * above), or per millimetre of `perMmOf`. What was typed is kept beside it; `asWritten` keeps the
 * limit as its source writes it (`3 helium light bands`).
 */
export type Limit = LimitConditions & {
  readonly id: number
  readonly limitSetId: number
  readonly characteristic: Characteristic
  readonly lower: number | null
  readonly upper: number | null
  readonly perMmOf: PerMmOf | null
  /** '' where nothing was typed: there is no such limit, or it is older than this. */
  readonly typedLower: string
  readonly typedUpper: string
  readonly typedUnit: string
  readonly asWritten: string
  readonly withinS: number | null
  readonly volumeAtMostL: number | null
  /** The test pressure that a drop is written for; null: any. */
  readonly startAtLeastKPaGauge: number | null
  readonly basis: LimitBasis
  readonly source: string
  readonly edition: string
  readonly clause: string
}

/** Approved: in force from a day. Retired: no longer offered from a day. */
export type LimitSetStep = {
  readonly step: 'approved' | 'retired'
  readonly effectiveOn: string
  readonly reason: string
  /** Null where a set was in use before approvals were kept. */
  readonly byId: number | null
  readonly byName: string
  readonly at: string
}

export type LimitSet = {
  readonly id: number
  readonly name: string
  readonly version: number
  readonly datedOn: string
  readonly note: string
  /** How many directions a face must be read in before hand-over (common practice, no source). */
  readonly directionsRequiredCount: number
  /** The share of a limit beyond which the uncertainty leaves a set-up unable to decide. */
  readonly uncertaintyShareAtMost: number
  readonly writtenById: number | null
  readonly writtenByName: string
  readonly limits: readonly Limit[]
  /** At most one of each kind; none: a draft. */
  readonly steps: readonly LimitSetStep[]
}

export type NewLimit = Omit<Limit, 'id' | 'limitSetId'>
export type NewLimitSet = Omit<LimitSet, 'id' | 'limits' | 'steps'> & {
  readonly limits: readonly NewLimit[]
}
