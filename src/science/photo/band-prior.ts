import type { AnnularTerm } from '../surface/annular-terms.ts'
import { quadraticCount } from './quadratic-at.ts'

/**
 * Gives how far the coefficients of a model of bands are expected to lie from their means.
 *
 * sd(gap) = 2.5 / (1 + 0.18 m^2 + 0.5 p^2), free for the plane; sd(background) =
 * 0.15 / (1 + 0.5 m^2 + p^2); sd(swing) = 0.25 B for its slopes; sd(k) = 0.1
 *
 * @param terms terms of the surface, as annularTerms gives them
 * @param options backgroundCount: how many coefficients the background has, the constant included;
 *   swing: B, relative to the mean light
 * @returns 1 / sd^2 in the order gap, background, swing, k
 * Source: chosen on synthetic photographs, no published source.
 * @example bandPrior([], { backgroundCount: 1, swing: 0.4 })[8] // 100
 */
export function bandPrior(
  terms: readonly AnnularTerm[],
  options: { readonly backgroundCount: number; readonly swing: number },
): Float64Array {
  const precision = (sd: number) => 1 / (sd * sd)
  const gap = terms.map(({ angularOrder: m, radialOrder: p }) =>
    m === 1 && p === 0 ? 0 : precision(2.5 / (1 + 0.18 * m * m + 0.5 * p * p)),
  )
  const background = terms
    .slice(0, options.backgroundCount - 1)
    .map(({ angularOrder: m, radialOrder: p }) => precision(0.15 / (1 + 0.5 * m * m + p * p)))
  const swing = Array.from({ length: quadraticCount }, (_, k) =>
    k === 0 ? precision(options.swing) : precision(0.25 * options.swing),
  )
  return Float64Array.from([0, ...gap, precision(0.15), ...background, ...swing, precision(0.1)])
}
