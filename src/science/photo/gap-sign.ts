/** What a person saw of the gap: where it grows, or how a ring pattern's centre lies. */
export type WedgeSeen =
  | { readonly opensTowardsDeg: number }
  | { readonly centre: 'closer' | 'further' }

/**
 * Decides the one sign that a picture of bands leaves open.
 *
 * @param fit tiltX, tiltY: slope of the fitted gap, bands per outer radius, y up; outwards: rise of
 *   its ring means from the inner to the outer edge, bands
 * @param wedge what was seen; absent where nobody could tell
 * @returns 1 when the fitted gap is the real one, -1 when it is upside down; 0 when it can not be
 *   told, also where what was seen lies nearly along the bands (within 12 degrees)
 * Source: bands keep their gap, so they move towards the larger gap when the gap is made smaller.
 * @example gapSign({ tiltX: -2, tiltY: 0, outwards: 0.3 }, { opensTowardsDeg: 10 }) // -1
 */
export function gapSign(
  fit: { readonly tiltX: number; readonly tiltY: number; readonly outwards: number },
  wedge: WedgeSeen | undefined,
): 1 | -1 | 0 {
  if (wedge === undefined) return 0
  if ('centre' in wedge) {
    const real = wedge.centre === 'closer' ? 1 : -1
    // A tenth of a band across the land is no ring pattern.
    if (Math.abs(fit.outwards) < 0.1) return 0
    return fit.outwards > 0 === real > 0 ? 1 : -1
  }
  const angle = (wedge.opensTowardsDeg * Math.PI) / 180
  const tilt = Math.hypot(fit.tiltX, fit.tiltY)
  const along = fit.tiltX * Math.cos(angle) + fit.tiltY * Math.sin(angle)
  if (!(Math.abs(along) > Math.sin((12 * Math.PI) / 180) * tilt)) return 0
  return along > 0 ? 1 : -1
}
