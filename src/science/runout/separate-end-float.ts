import { requireFinite } from '../check/require-finite.ts'
import { requireWhole } from '../check/require-whole.ts'
import type { DialPoint } from './dial-point.ts'
import { totalIndicatorReadingUm } from './total-indicator-reading-um.ts'

/** What two indicators opposite each other read at one position. */
export interface OppositePair {
  /** Of the first; the second stands 180 degrees on. */
  readonly angleDeg: number
  readonly firstUm: number
  readonly secondUm: number
}

/**
 * Separates the tilt of a face from the axial float of the shaft, by two indicators opposite each
 * other: float moves both needles alike, tilt moves them against each other.
 *
 * face = (first - second) / 2, float = (first + second) / 2
 *
 * @param pairs two or more
 * @returns face: readings free of float, zeroed about their middle; floatRangeUm: what the shaft
 *   floated through at these positions, and with it the even waves of the face (its ovality)
 * @throws RangeError with fewer pairs, or a reading that is not finite
 * Validity: both tips on one diameter. Waves of even order, such as a face bent in two, are alike on
 *   both sides and go into the float: only odd ones, the tilt first, stay in the face.
 * Source: common practice, no source; the algebra is exact.
 * @example separateEndFloat([{ angleDeg: 0, firstUm: 25, secondUm: 5 }, { angleDeg: 180,
 *   firstUm: -10, secondUm: 10 }]).floatRangeUm // 15
 */
export function separateEndFloat(pairs: readonly OppositePair[]): {
  readonly face: readonly DialPoint[]
  readonly floatRangeUm: number
} {
  const name = 'separateEndFloat'
  requireWhole(name, 'count of pairs', pairs.length, { from: 2, to: 100_000 })
  for (const { angleDeg, firstUm, secondUm } of pairs) {
    for (const value of [angleDeg, firstUm, secondUm]) requireFinite(name, 'reading', value)
  }
  return {
    face: pairs.map(({ angleDeg, firstUm, secondUm }) => ({
      angleDeg,
      valueUm: (firstUm - secondUm) / 2,
    })),
    floatRangeUm: totalIndicatorReadingUm(pairs.map((one) => (one.firstUm + one.secondUm) / 2)),
  }
}
