import { requireRange } from '../check/require-range.ts'

/**
 * Gives the order of the light band that is seen over an air gap: how many half wavelengths the
 * light goes further for it.
 *
 * order = 2 gap cos(viewingAngle) / wavelength
 *
 * @param input gapUm: of air between flat and face, from 0 to 1000; wavelengthNm: in air, from 200
 *   to 2000; viewingAngleDeg: from the normal, 0 to 80 (0 when absent)
 * @returns light bands from contact, with their fraction; a whole number is the middle of a dark one
 * @throws RangeError outside these ranges
 * Validity: a distant eye and light that is coherent over the gap.
 * Source: two-beam interference in an air gap, as bandHeightUm.
 * @example bandOrder({ gapUm: 0.5875618, wavelengthNm: 587.5618 }) // 2.0000
 */
export function bandOrder(input: {
  readonly gapUm: number
  readonly wavelengthNm: number
  readonly viewingAngleDeg?: number
}): number {
  const { gapUm, wavelengthNm, viewingAngleDeg = 0 } = input
  requireRange('bandOrder', 'gapUm', gapUm, { from: 0, to: 1000 })
  requireRange('bandOrder', 'wavelengthNm', wavelengthNm, { from: 200, to: 2000 })
  requireRange('bandOrder', 'viewingAngleDeg', viewingAngleDeg, { from: 0, to: 80 })
  return (2000 * gapUm * Math.cos((viewingAngleDeg * Math.PI) / 180)) / wavelengthNm
}
