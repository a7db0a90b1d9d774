/**
 * A coordinate rounded to two decimals, never "-0": long decimals double the size of a page and
 * show nothing.
 *
 * @param valuePx coordinate, px, finite
 * @returns the coordinate, px
 * @throws RangeError when the value is not finite
 * @example roundPx(12.34567) // 12.35
 */
export function roundPx(valuePx: number): number {
  if (!Number.isFinite(valuePx)) {
    throw new RangeError(`roundPx requires valuePx from -Infinity to Infinity, got ${valuePx}`)
  }
  return Math.round(valuePx * 100) / 100 + 0
}
