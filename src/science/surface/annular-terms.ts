import { requireWhole } from '../check/require-whole.ts'

/** One term of a surface over a ring: a Legendre polynomial along the radius, a wave around it. */
export interface AnnularTerm {
  /** Waves around the ring. */
  readonly angularOrder: number
  /** Degree along the radius; 0 with one wave around stands for the plane (x or y). */
  readonly radialOrder: number
  readonly isSine: boolean
}

/** How many degrees along the radius belong to 0, 1, 2 … waves around, coarse to fine. */
const radialCounts: readonly (readonly number[])[] = [
  [2, 1, 1, 1],
  [3, 2, 2, 1, 1],
  [6, 3, 3, 2, 2, 1, 1],
  [6, 4, 4, 3, 3, 2, 2, 1, 1],
]

/**
 * Gives the terms of a surface over a ring, coarse (level 1) to fine (level 4). The first two are
 * always the plane, x and y; a constant height is not among them. Each level begins with the terms
 * of the level below, so coefficients are lifted by adding zeros.
 *
 * @param level whole, from 1 to 4
 * @returns 8, 15, 30 and 46 terms
 * @throws RangeError outside this range
 * Source: choice of orders after V. N. Mahajan, J. Opt. Soc. Am. 71, 75 (1981) for the kind of
 *   polynomial; the counts were chosen on synthetic faces, common practice, no source.
 * @example annularTerms(4).length // 46
 */
export function annularTerms(level: number): readonly AnnularTerm[] {
  requireWhole('annularTerms', 'level', level, { from: 1, to: 4 })
  const terms: AnnularTerm[] = [
    { angularOrder: 1, radialOrder: 0, isSine: false },
    { angularOrder: 1, radialOrder: 0, isSine: true },
  ]
  radialCounts.slice(0, level).forEach((counts, at) => {
    const held = radialCounts[at - 1] ?? [0, 1]
    counts.forEach((count, angularOrder) => {
      for (let i = held[angularOrder] ?? 0; i < count; i++) {
        if (angularOrder === 0) terms.push({ angularOrder, radialOrder: i + 1, isSine: false })
        else {
          terms.push({ angularOrder, radialOrder: i, isSine: false })
          terms.push({ angularOrder, radialOrder: i, isSine: true })
        }
      }
    })
  })
  return terms
}
