import { requireRange } from '../check/require-range.ts'
import { bandHeightUm } from './band-height-um.ts'

/**
 * Gives the height that a number of light bands stands for, in um.
 *
 * height = bands x wavelength / (2 cos viewingAngle)
 *
 * @param input bands: count, from 0 to 1000, fractions allowed; wavelengthNm: wavelength in air,
 *   from 200 to 2000; viewingAngleDeg: from the normal, from 0 to 80 (0 when absent)
 * @returns um
 * @throws RangeError outside these ranges
 * Validity: as bandHeightUm.
 * Source: as bandHeightUm.
 * @example bandsToHeightUm({ bands: 3, wavelengthNm: 587.5618 }) // 0.8813
 */
export function bandsToHeightUm(input: {
  readonly bands: number
  readonly wavelengthNm: number
  readonly viewingAngleDeg?: number | undefined
}): number {
  requireRange('bandsToHeightUm', 'bands', input.bands, { from: 0, to: 1000 })
  return input.bands * bandHeightUm(input)
}
