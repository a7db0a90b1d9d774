import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'

/** Where the axis of a part lies from the axis that it was swept about. */
export interface AxisOffset {
  readonly offsetUm: number
  /** Towards which angle the axis of the part lies off. */
  readonly directionDeg: number
  /** Towards which angle the part has to move to be true. */
  readonly moveTowardsDeg: number
}

/**
 * Gives where the axis of a swept part lies, and which way it has to move to run true.
 *
 * outside surface: the part lies off towards its highest reading; inside surface: a bore comes
 * nearest to the axis where it reads highest, so that its own axis lies off the other way
 *
 * @param input eccentricityUm: 0 or more; directionDeg: of the highest reading of the first wave;
 *   surface: 'outside' or 'inside' the part
 * @returns um and degrees from 0 to below 360, in the angles of the readings
 * @throws RangeError outside these ranges
 * Validity: the needle rises as the surface comes nearer to the indicator. Offset small against the
 *   radius.
 * Source: geometry.
 * @example axisOffset({ eccentricityUm: 60, directionDeg: 30, surface: 'inside' }
 *   ).moveTowardsDeg // 30
 */
export function axisOffset(input: {
  readonly eccentricityUm: number
  readonly directionDeg: number
  readonly surface: 'outside' | 'inside'
}): AxisOffset {
  const { eccentricityUm, directionDeg, surface } = input
  requireRange('axisOffset', 'eccentricityUm', eccentricityUm, { from: 0, to: 1e9 })
  const high = requireFinite('axisOffset', 'directionDeg', directionDeg)
  const turned = (deg: number) => ((deg % 360) + 360) % 360
  const off = surface === 'outside' ? high : high + 180
  return {
    offsetUm: eccentricityUm,
    directionDeg: turned(off),
    moveTowardsDeg: turned(off + 180),
  }
}
