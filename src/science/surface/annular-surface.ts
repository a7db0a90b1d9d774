/**
 * A surface over a ring, stored compactly: height = sum of coefficients x terms, without the plane
 * and the mean height. In units of the caller (bands, um), + is material high.
 */
export interface AnnularSurface {
  /** Inner over outer radius. */
  readonly radiusRatio: number
  /** Which terms: those of annularTerms(level), the first two (the plane) with 0. */
  readonly level: number
  readonly coefficients: readonly number[]
  /** Radii between which it was seen, outer radius 1; beyond them it goes on straight. */
  readonly seenFrom: number
  readonly seenTo: number
}
