import { requireFinite } from '../check/require-finite.ts'

/** Nearer than this, two angles are one position: far below what anybody sets by hand. */
const sameDeg = 1e-6

/**
 * Gives the positions of a turn that differ, from 0 to below 360, rising.
 *
 * @param anglesDeg any finite angles; 360 is the same position as 0
 * @returns degrees
 * @throws RangeError for an angle that is not finite
 * Source: a turn is 360 degrees: definition.
 * @example distinctAngles([0, 90, 360, -90]).length // 3
 */
export function distinctAngles(anglesDeg: readonly number[]): number[] {
  const turned = anglesDeg
    .map((one) => (((requireFinite('distinctAngles', 'angleDeg', one) % 360) + 360) % 360) % 360)
    .map((one) => (360 - one < sameDeg ? 0 : one))
    .sort((a, b) => a - b)
  return turned.filter((one, i) => i === 0 || one - (turned[i - 1] as number) >= sameDeg)
}
