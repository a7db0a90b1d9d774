import { requireRange } from '../check/require-range.ts'
import { requireWhole } from '../check/require-whole.ts'
import type { AnnularSurface } from './annular-surface.ts'
import { annularTerms } from './annular-terms.ts'

/**
 * Combines surfaces of one face, already turned to the same position, into their weighted mean.
 *
 * coefficient = sum of weight x coefficient / sum of weights
 *
 * @param surfaces one or more; their ratios of radii within 0.02 of the first
 * @param weights one each, above 0 and up to 1e12; 1 / u^2 gives the best mean
 * @returns a surface of the finest level among them, seen where all were seen
 * @throws RangeError outside these ranges
 * Source: weighted mean; common practice, no source.
 * @example combineSurfaces([{ radiusRatio: 0.5, level: 1, coefficients: [0, 0, 3, 0, 0, 0, 0, 0],
 *   seenFrom: 0.5, seenTo: 1 }, { radiusRatio: 0.5, level: 1, coefficients: [0, 0, 1, 0, 0, 0, 0,
 *   0], seenFrom: 0.5, seenTo: 1 }], [3, 1]).coefficients[2] // 2.5
 */
export function combineSurfaces(
  surfaces: readonly AnnularSurface[],
  weights: readonly number[],
): AnnularSurface {
  const name = 'combineSurfaces'
  requireWhole(name, 'count of surfaces', surfaces.length, { from: 1, to: 1000 })
  requireWhole(name, 'count of weights', weights.length, {
    from: surfaces.length,
    to: surfaces.length,
  })
  for (const weight of weights) {
    requireRange(name, 'weight', weight, { from: Number.MIN_VALUE, to: 1e12 })
  }
  const first = surfaces[0] as AnnularSurface
  for (const { radiusRatio, level, coefficients } of surfaces) {
    const apart = Math.abs(radiusRatio - first.radiusRatio)
    requireRange(name, 'difference of radiusRatio', apart, { from: 0, to: 0.02 })
    const count = annularTerms(level).length
    requireWhole(name, 'count of coefficients', coefficients.length, { from: count, to: count })
  }
  const total = weights.reduce((a, b) => a + b, 0)
  const mean = (of: (surface: AnnularSurface) => number) =>
    surfaces.reduce((sum, one, i) => sum + ((weights[i] as number) * of(one)) / total, 0)
  const level = Math.max(...surfaces.map((one) => one.level))
  return {
    radiusRatio: mean((one) => one.radiusRatio),
    level,
    // Each level begins with the terms of the one below.
    coefficients: annularTerms(level).map((_, k) => mean((one) => one.coefficients[k] ?? 0)),
    seenFrom: Math.max(...surfaces.map((one) => one.seenFrom)),
    seenTo: Math.min(...surfaces.map((one) => one.seenTo)),
  }
}
