import { requireFinite } from '../check/require-finite.ts'
import { exactFactors } from './exact-factors.ts'

/**
 * Converts microinches to micrometres.
 *
 * um = uin x 0.0254
 *
 * @param uin length in microinches, any finite number
 * @returns um
 * @throws RangeError when uin is not finite
 * Source: 1 in = 0.0254 m exactly (International yard and pound agreement, 1959).
 * @example uinToUm(34.8) // 0.8839
 */
export function uinToUm(uin: number): number {
  requireFinite('uinToUm', 'uin', uin)
  return uin * exactFactors.inch.value
}
