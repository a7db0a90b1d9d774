import { requireRange } from '../check/require-range.ts'

/**
 * Gives the change of the air gap from one light band to the next, in um.
 *
 * band height = wavelength / (2 cos viewingAngle)
 *
 * @param input wavelengthNm: wavelength in air, from 200 to 2000;
 *   viewingAngleDeg: angle of view from the normal of the flat, from 0 to 80 (0 when absent)
 * @returns um per band
 * @throws RangeError outside these ranges
 * Validity: an air gap. Water or oil in the gap divides the height by its refractive index, so
 *   faces are read dry. A plane flat does not change the angle in the gap.
 * Source: two-beam interference in a thin film; factor 1/cos theta checked against the table of
 *   correction factors from 0 to 60 degrees.
 * @example bandHeightUm({ wavelengthNm: 587.5618, viewingAngleDeg: 30 }) // 0.3392
 */
export function bandHeightUm(input: {
  readonly wavelengthNm: number
  readonly viewingAngleDeg?: number | undefined
}): number {
  const { wavelengthNm, viewingAngleDeg = 0 } = input
  requireRange('bandHeightUm', 'wavelengthNm', wavelengthNm, { from: 200, to: 2000 })
  requireRange('bandHeightUm', 'viewingAngleDeg', viewingAngleDeg, { from: 0, to: 80 })
  return wavelengthNm / 1000 / (2 * Math.cos((viewingAngleDeg * Math.PI) / 180))
}
