export const characteristics = ['flatness', 'static-drop', 'static-leak-rate'] as const
export type Characteristic = (typeof characteristics)[number]

/** How well a limit is founded; printed beside it wherever it is used. */
export const limitBases = [
  'standard',
  'published',
  'house rule',
  'common practice, no source',
  'from memory',
] as const
export type LimitBasis = (typeof limitBases)[number]

/**
 * One limit. `upper` is in the unit of its characteristic: flatness µm, static-drop kPa within
 * `withinS` for a volume of at most `volumeAtMostL` and a start at `startAtLeastKPaGauge` or above,
 * static-leak-rate Pa·m³/s at 20 °C.
 * `asWritten` keeps the limit as its source writes it (`3 helium light bands`).
 */
export type Limit = {
  readonly id: number
  readonly limitSetId: number
  readonly characteristic: Characteristic
  /** Null: for every face. Otherwise the material it is for. */
  readonly faceMaterial: string | null
  readonly upper: number
  readonly asWritten: string
  readonly withinS: number | null
  readonly volumeAtMostL: number | null
  /** The test pressure that a drop is written for; null: any. */
  readonly startAtLeastKPaGauge: number | null
  readonly basis: LimitBasis
  readonly source: string
}

export type LimitSet = {
  readonly id: number
  readonly name: string
  readonly version: number
  readonly datedOn: string
  readonly note: string
  /** How many directions a face must be read in before hand-over (common practice, no source). */
  readonly directionsRequiredCount: number
  readonly limits: readonly Limit[]
}

export type NewLimit = Omit<Limit, 'id' | 'limitSetId'>
export type NewLimitSet = Omit<LimitSet, 'id' | 'limits'> & { readonly limits: readonly NewLimit[] }
