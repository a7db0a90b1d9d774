/**
 * Whether two readings of one place differ by more than twice the uncertainty of their difference,
 * 2 sqrt 2 u: JCGM 100:2008, equation (10), with a coverage factor of 2.
 */
export function isDriftLarge(driftUm: number, readingStandardUncertaintyUm: number): boolean {
  return Math.abs(driftUm) > 2 * Math.SQRT2 * readingStandardUncertaintyUm
}
