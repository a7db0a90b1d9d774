import { requireRange } from '../check/require-range.ts'

const widths = { from: 0.01, to: 1000 } as const

/**
 * Gives how far the narrow face moved sideways as it wore its track, in um, from the widths.
 *
 * movement = track - nose, u^2 = u(track)^2 + u(nose)^2
 *
 * @param input trackWidthMm, noseWidthMm: from 0.01 to 1000; trackStandardUncertaintyMm,
 *   noseStandardUncertaintyMm: 0 or more, absent where not known
 * @returns um; below 0 for a track narrower than the nose, which is no movement: the face was
 *   distorted or not fully closed
 * @throws RangeError outside these ranges
 * Validity: total movement: twice the eccentricity, and with it vibration and play in service; the
 *   edges of an old track may come from more than one run.
 * Source: a supply house's page on wear tracks; 4.20 mm track and 3.95 mm nose are 0.25 mm.
 * @example wornTrackMovement({ trackWidthMm: 4.2, noseWidthMm: 3.95 }).movementUm // 250.0
 */
export function wornTrackMovement(input: {
  readonly trackWidthMm: number
  readonly noseWidthMm: number
  readonly trackStandardUncertaintyMm?: number | undefined
  readonly noseStandardUncertaintyMm?: number | undefined
}): { readonly movementUm: number; readonly standardUncertaintyUm: number | null } {
  const { trackWidthMm, noseWidthMm } = input
  const { trackStandardUncertaintyMm: track, noseStandardUncertaintyMm: nose } = input
  const name = 'wornTrackMovement'
  requireRange(name, 'trackWidthMm', trackWidthMm, widths)
  requireRange(name, 'noseWidthMm', noseWidthMm, widths)
  for (const one of [track, nose]) {
    if (one !== undefined) requireRange(name, 'standard uncertainty', one, { from: 0, to: 100 })
  }
  return {
    movementUm: (trackWidthMm - noseWidthMm) * 1000,
    standardUncertaintyUm:
      track === undefined || nose === undefined ? null : Math.hypot(track, nose) * 1000,
  }
}
