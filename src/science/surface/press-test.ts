import { requireWhole } from '../check/require-whole.ts'
import { annularBasis } from './annular-basis.ts'
import { annularTerms } from './annular-terms.ts'
import { areaWeights } from './area-weights.ts'

/** A gap as it was fitted: its sign may be wrong, its constant is known but for whole bands. */
export interface FittedGap {
  readonly radiusRatio: number
  readonly level: number
  /** The constant, then the coefficients of annularTerms(level), plane first; in bands. */
  readonly gap: ArrayLike<number>
  /**
   * Bands seen for one band of the gap as it is given, 1 when absent: the cosine of the angle of
   * view for a gap of normal view. The constant is not known but for whole bands as they were seen.
   */
  readonly axisRatio?: number
}

/** What a press showed. */
export interface PressTest {
  /** 1: the first gap is the real one; -1: it is upside down; 0: it can not be told. */
  readonly sign: 1 | -1 | 0
  /** How far the gap of the first photograph changed, in its bands; half a band seen at most. */
  readonly movedBands: number
}

/** Less is lost in the errors of the fit; more could be a whole band less the other way. */
const leastBands = 0.08
const mostBands = 0.42

const circles = 17
const rays = 60

/** Mean over the land by area, in bands as they were seen. */
function meanSeen({ radiusRatio, level, gap, axisRatio = 1 }: FittedGap): number {
  const terms = annularTerms(level)
  requireWhole('pressTest', 'length of gap', gap.length, {
    from: terms.length + 1,
    to: terms.length + 1,
  })
  const radii = Array.from({ length: circles }, (_, i) => {
    return radiusRatio + ((1 - radiusRatio) * i) / (circles - 1)
  })
  const weights = areaWeights(radii)
  const mean = radii.reduce((sum, r, i) => {
    const angles = Array.from({ length: rays }, (_, j) => (2 * Math.PI * j) / rays)
    const xs = angles.map((angle) => r * Math.cos(angle))
    const ys = angles.map((angle) => r * Math.sin(angle))
    const basis = annularBasis({ terms, radiusRatio, xs, ys })
    const ring = basis.reduce((a, v, k) => a + v * (gap[1 + (k % terms.length)] as number), 0)
    return sum + ((weights[i] as number) * ring) / rays
  }, gap[0] as number)
  return mean * axisRatio
}

/**
 * Decides the sign of a surface from two photographs, the second taken while the flat was pressed
 * lightly: pressing can only make the gap smaller.
 *
 * both with the same side open (their planes' product above 0);
 * moved = mean(second - first), wrapped to -0.5 … 0.5 band as seen; sign = -1 where moved > 0
 *
 * @param first, second: gaps fitted to both photographs of the part in one position
 * @returns the sign that belongs to the first; 0 for less than 0.08 or more than 0.42 band, or for
 *   planes that lie square to each other
 * @throws RangeError when a gap has not as many coefficients as its level
 * Validity: for a press of less than half a band, the camera left where it was: a gap of ten bands,
 *   seen at nine degrees instead of eight, changes by 0.03 band.
 * Source: bands keep their gap; limits after trials on synthetic pairs.
 * @example pressTest({ radiusRatio: 0.8, level: 1, gap: [5, 4, 0, 0, 0, 0, 0, 0, 0] },
 *   { radiusRatio: 0.8, level: 1, gap: [4.75, 4, 0, 0, 0, 0, 0, 0, 0] }).sign // 1
 */
export function pressTest(first: FittedGap, second: FittedGap): PressTest {
  const of = (gap: ArrayLike<number>, k: number) => gap[k] as number
  const [a, b] = [first.gap, second.gap]
  const product = of(a, 1) * of(b, 1) + of(a, 2) * of(b, 2)
  const sizes = Math.hypot(of(a, 1), of(a, 2)) * Math.hypot(of(b, 1), of(b, 2))
  const side = product < 0 ? -1 : 1
  const change = side * meanSeen(second) - meanSeen(first)
  const movedBands = (change - Math.round(change)) / (first.axisRatio ?? 1)
  const size = Math.abs(movedBands)
  const isOpen = !(Math.abs(product) > 0.5 * sizes)
  if (isOpen || size < leastBands || size > mostBands) return { sign: 0, movedBands }
  return { sign: movedBands > 0 ? -1 : 1, movedBands }
}
