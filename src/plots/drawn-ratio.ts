/** Up to here a land is drawn as wide as it is; a narrower one would show no lines. */
const narrowest = 0.62

/**
 * Ratio of bore to rim at which a land is drawn: a narrow one is stretched across, so that there
 * is room for its lines. Who shows it says so where this is not the ratio itself.
 *
 * @param radiusRatio inner over outer radius, above 0 and below 1
 * @returns the ratio drawn, at most 0.62
 * @throws RangeError outside this range
 * @example drawnRatio(0.9) // 0.62
 */
export function drawnRatio(radiusRatio: number): number {
  if (!(radiusRatio > 0 && radiusRatio < 1)) {
    throw new RangeError(`drawnRatio requires radiusRatio from 0 to 1, got ${radiusRatio}`)
  }
  return Math.min(radiusRatio, narrowest)
}
