import { requireFinite } from '../check/require-finite.ts'
import { exactFactors } from './exact-factors.ts'

/**
 * Converts micrometres to microinches.
 *
 * uin = um / 0.0254
 *
 * @param um length in um, any finite number
 * @returns microinches
 * @throws RangeError when um is not finite
 * Source: 1 in = 0.0254 m exactly (International yard and pound agreement, 1959).
 * @example umToUin(0.29378) // 11.566
 */
export function umToUin(um: number): number {
  requireFinite('umToUin', 'um', um)
  return um / exactFactors.inch.value
}
