import { requireRange } from '../check/require-range.ts'
import { bandHeightUm } from './band-height-um.ts'

/**
 * Gives how many light bands of one lamp a height is.
 *
 * bands = height / (wavelength / (2 cos viewingAngle))
 *
 * @param input heightUm: from 0 to 1000; wavelengthNm: wavelength in air, from 200 to 2000;
 *   viewingAngleDeg: from the normal, from 0 to 80 (0 when absent)
 * @returns light bands, with their fraction
 * @throws RangeError outside these ranges
 * Validity: as bandHeightUm. The count belongs to the lamp: 0.90 um is 3.06 bands under helium
 *   and 2.84 under red helium-neon.
 * Source: as bandHeightUm.
 * @example heightToBands({ heightUm: 0.9, wavelengthNm: 587.5618 }) // 3.06
 */
export function heightToBands(input: {
  readonly heightUm: number
  readonly wavelengthNm: number
  readonly viewingAngleDeg?: number | undefined
}): number {
  requireRange('heightToBands', 'heightUm', input.heightUm, { from: 0, to: 1000 })
  return input.heightUm / bandHeightUm(input)
}
