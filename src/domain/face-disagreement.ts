import type { AnnularSurface } from '../science/surface/annular-surface.ts'
import { differenceMap } from '../science/surface/difference-map.ts'
import { peakAndValley } from '../science/surface/peak-and-valley.ts'
import { usualCoverageFactor } from '../science/uncertainty/coverage-factor.ts'

/** A part of a combination, laid on the others; um. */
export type DisagreeingPart = {
  readonly surface: AnnularSurface
  readonly flatnessUm: number
  /** Standard, of its picture alone, above 0. */
  readonly pictureUm: number
  readonly weight: number
}

const mapSize = { ringCount: 17, angleCount: 180 } as const

/**
 * How much more the parts of a combination differ than their uncertainties let expect: above 1
 * they differ more.
 *
 * ratio = sqrt(sum of (d / u)^2 / (n - 1)), the larger of two: d the deviation of a figure from
 * the weighted mean, u its standard uncertainty; d the peak to valley of a surface less the mean
 * surface, u its expanded one, since a peak to valley of noise is never 0
 *
 * @param parts two or more
 * @param mean surface that the parts were combined to
 * @returns 0 where all are the same
 * Source: R. T. Birge, Phys. Rev. 40, 207 (1932), from memory, for figures; that of surfaces is our
 *   own, so that forms which differ at equal flatness count too.
 */
export function faceDisagreement(parts: readonly DisagreeingPart[], mean: AnnularSurface): number {
  const ratio = (squares: readonly number[]) =>
    Math.sqrt(squares.reduce((a, b) => a + b, 0) / (parts.length - 1))
  const meanUm = parts.reduce((sum, one) => sum + one.weight * one.flatnessUm, 0)
  const figures = parts.map((one) => ((one.flatnessUm - meanUm) / one.pictureUm) ** 2)
  const surfaces = parts.map(({ surface, pictureUm }) => {
    const { peakToValley } = peakAndValley(differenceMap(surface, mean, mapSize))
    return (peakToValley / (usualCoverageFactor * pictureUm)) ** 2
  })
  return Math.max(ratio(figures), ratio(surfaces))
}
