import { requireRange } from '../check/require-range.ts'
import type { AnnularSurface } from './annular-surface.ts'
import { areaWeights } from './area-weights.ts'
import { surfaceMap } from './surface-map.ts'
import { withoutPlane } from './without-plane.ts'

/** How a second surface has to be turned to lie on the first. */
export interface SurfaceAlignment {
  /** To be given to turnSurface with the second, from 0 to below 360. */
  readonly turnDeg: number
  /** Whether the second is also upside down: its sign has to be changed. */
  readonly isOpposite: boolean
  /** Correlation of both by area, 1 for the same surface. */
  readonly likeness: number
  /** The best correlation more than 20 degrees away: near likeness, and the turn is a guess. */
  readonly rivalLikeness: number
}

const size = { ringCount: 9, angleCount: 360 } as const
const rivalFromDeg = 20

/** Heights weighed by area and scaled to a sum of squares of 1. */
function standardised(surface: AnnularSurface): number[][] {
  const { heights, radii } = withoutPlane(surfaceMap(surface, size)).map
  const weights = areaWeights(radii)
  const weighted = heights.map((row, i) => row.map((h) => h * Math.sqrt(weights[i] as number)))
  const square = weighted.flat().reduce((sum, h) => sum + h * h, 0)
  requireRange('alignSurfaces', 'height of a surface', square, {
    from: Number.MIN_VALUE,
    to: Number.MAX_VALUE,
  })
  return weighted.map((row) => row.map((h) => h / Math.sqrt(square)))
}

/**
 * Finds how a second reading of the same face was turned against the first.
 *
 * most over the turn of the correlation of both maps, degree by degree, then by a parabola
 *
 * @param first, second: as they are stored, in any units; neither of them a plane
 * @param options areSignsKnown: false where one of them may be upside down
 * @returns turn, sign and how alike they are
 * @throws RangeError for a surface without height
 * Validity: of faces that show where they are: a dish alone looks the same at any turn, a saddle
 *   at two; rivalLikeness tells.
 * Source: correlation; common practice, no source.
 * @example alignSurfaces({ radiusRatio: 0.5, level: 1, coefficients: [0, 0, 1, 0, 0, 0, 3, 0],
 *   seenFrom: 0.5, seenTo: 1 }, { radiusRatio: 0.5, level: 1, coefficients: [0, 0, 1, 0, 0, 0, -3,
 *   0], seenFrom: 0.5, seenTo: 1 }, { areSignsKnown: true }).likeness // 1.0000
 */
export function alignSurfaces(
  first: AnnularSurface,
  second: AnnularSurface,
  options: { readonly areSignsKnown: boolean },
): SurfaceAlignment {
  const [one, other] = [standardised(first), standardised(second)]
  const count = size.angleCount
  const correlations = Array.from({ length: count }, (_, turn) =>
    one.reduce((sum, row, i) => {
      const its = other[i] as readonly number[]
      return sum + row.reduce((a, h, j) => a + h * (its[(j - turn + count) % count] as number), 0)
    }, 0),
  )
  const signs = options.areSignsKnown ? [1] : [1, -1]
  const candidates = signs.flatMap((sign) =>
    correlations.map((one1, turn) => ({ sign, turn, value: sign * one1 })),
  )
  const best = candidates.reduce((a, b) => (b.value > a.value + 1e-12 ? b : a))
  const at = (turn: number) => best.sign * (correlations[(turn + count) % count] as number)
  const [before, here, after] = [at(best.turn - 1), best.value, at(best.turn + 1)]
  const bend = before - 2 * here + after
  const part = bend < 0 ? (before - after) / (2 * bend) : 0
  const far = candidates.filter(({ sign, turn }) => {
    const apart = Math.abs(turn - best.turn)
    return sign !== best.sign || Math.min(apart, count - apart) > rivalFromDeg
  })
  return {
    turnDeg: (best.turn + part + 360) % 360,
    isOpposite: best.sign < 0,
    likeness: here,
    rivalLikeness: Math.max(...far.map(({ value }) => value)),
  }
}
