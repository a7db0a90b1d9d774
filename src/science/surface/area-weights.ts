import { requireRange } from '../check/require-range.ts'
import { requireWhole } from '../check/require-whole.ts'

/**
 * Gives the share of a ring's area that each of its circles stands for: the strip between the
 * middles to its neighbours, the edges half a strip each.
 *
 * share = (b^2 - a^2) / (outer^2 - inner^2), a and b the borders of the strip
 *
 * @param radii two or more, rising, the first above 0: inner edge to outer edge, any unit
 * @returns shares that add up to 1
 * @throws RangeError with fewer than two radii, or when they do not rise
 * Source: area of a ring; common practice, no source.
 * @example areaWeights([1, 3])[0] // 0.375
 */
export function areaWeights(radii: readonly number[]): number[] {
  const name = 'areaWeights'
  requireWhole(name, 'count of radii', radii.length, { from: 2, to: 10_000 })
  radii.forEach((r, i) => {
    const above = radii[i - 1] ?? 0
    requireRange(name, `radii[${i}]`, r, { from: above + Number.MIN_VALUE, to: 1e9 })
    if (r === above) throw new RangeError(`${name} requires rising radii, got ${r} twice`)
  })
  const at = (i: number) => radii[Math.min(Math.max(i, 0), radii.length - 1)] as number
  const area = at(radii.length) ** 2 - at(0) ** 2
  return radii.map((r, i) => {
    const from = (at(i - 1) + r) / 2
    const to = (r + at(i + 1)) / 2
    return (to * to - from * from) / area
  })
}
