/** A temperature difference through a ring or a flat that bows it. */
export type BowInput = {
  readonly deltaK: number
  readonly expansionPerK: number
  readonly diameterMm: number
  readonly thicknessMm: number
}

/** What only the reader knows about how bands were counted; null where it was not stated. */
export type FlatnessBudgetInput = {
  /** How finely the bands were read; null: a quarter of a band (common practice, no source). */
  readonly readingHalfWidthBands: number | null
  /** Counts of the same direction again, as typed and as read; empty where it was read once. */
  readonly repeats: readonly { readonly bands: number; readonly typed: string }[]
  /** Known beforehand or handed in by a program; degreesOfFreedom null: well known. */
  readonly repeatability: {
    readonly standardDeviationBands: number
    readonly count: number
    readonly degreesOfFreedom: number | null
  } | null
  /** How far from the normal the eye may have been. */
  readonly viewingAngleLimitDeg: number | null
  readonly thermal: BowInput | null
  readonly flatThermal: BowInput | null
  /** Of the optical flat, where the reading states another than the instrument's. */
  readonly opticalFlatToleranceUm: number | null
}

export const noFlatnessBudgetInput: FlatnessBudgetInput = {
  readingHalfWidthBands: null,
  repeats: [],
  repeatability: null,
  viewingAngleLimitDeg: null,
  thermal: null,
  flatThermal: null,
  opticalFlatToleranceUm: null,
}
