import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'

type Place = { readonly amountUm: number; readonly clockDeg: number }

/**
 * Gives how far to turn a sleeve on its shaft so that what it adds works against what the shaft brings.
 *
 * own = sleeve - shaft (as vectors); best: own opposite to shaft, | |shaft| - |own| |
 *
 * @param of axes of the shaft and of the fitted sleeve from the axis of turning, um and degrees
 *   clockwise in the same marks; amountUm from 0 to 1e6
 * @returns turnDeg from 0 to below 360 clockwise; the offset of the sleeve's axis that remains, um
 * Validity: the sleeve keeps its own offset wherever it is turned: it is the bore that lies off, not
 *   a burr under it; a keyed sleeve can't be turned.
 * @throws RangeError outside these ranges
 * Source: geometry, offsets added as vectors; exact.
 * @example sleeveOnShaft({ shaft: { amountUm: 10, clockDeg: 0 }, sleeve: { amountUm: 22, clockDeg: 0 }
 *   }).offsetUm // 2.000
 */
export function sleeveOnShaft(of: { readonly shaft: Place; readonly sleeve: Place }): {
  readonly turnDeg: number
  readonly offsetUm: number
} {
  const [shaft, sleeve] = [vector(of.shaft), vector(of.sleeve)]
  const own = { x: sleeve.x - shaft.x, y: sleeve.y - shaft.y }
  const degOf = (one: { x: number; y: number }) => (Math.atan2(one.y, one.x) * 180) / Math.PI
  const turnDeg = (((degOf(shaft) + 180 - degOf(own)) % 360) + 360) % 360
  return { turnDeg, offsetUm: Math.abs(of.shaft.amountUm - Math.hypot(own.x, own.y)) }
}

function vector({ amountUm, clockDeg }: Place) {
  requireRange('sleeveOnShaft', 'amountUm', amountUm, { from: 0, to: 1e6 })
  requireFinite('sleeveOnShaft', 'clockDeg', clockDeg)
  const angle = (clockDeg * Math.PI) / 180
  return { x: amountUm * Math.cos(angle), y: amountUm * Math.sin(angle) }
}
