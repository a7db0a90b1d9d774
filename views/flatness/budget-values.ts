/** A temperature difference through a ring or a flat, as typed. */
export type BowValues = {
  readonly deltaK: string
  readonly thicknessMm: string
  readonly diameterMm: string
  readonly expansionUmPerMK: string
}

/** What is stated for the uncertainty, as typed. */
export type BudgetValues = {
  /** One of the choices; `readingHalfWidthOther` goes before it. */
  readonly readingHalfWidthBands: string
  readonly readingHalfWidthOther: string
  /** Counts of one direction again, in one line. */
  readonly repeats: string
  /** `yes` where the spread of several readers is taken. */
  readonly readerSpread: string
  readonly viewingAngleLimitDeg: string
  readonly opticalFlatToleranceUm: string
  readonly thermal: BowValues
  readonly flatThermal: BowValues
}
