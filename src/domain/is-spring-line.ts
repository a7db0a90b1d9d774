import type { SpringLoad } from '../science/spring/spring-rate.ts'
import { springBounds } from './spring-bounds.ts'

/**
 * Whether two or more loads at lengths make the line of a spring: the load rises as it shortens, by a
 * rate that a spring may have, and comes to nothing at a length that one may have.
 */
export function isSpringLine(loads: readonly SpringLoad[]): boolean {
  const mean = (of: (one: SpringLoad) => number) =>
    loads.reduce((sum, one) => sum + of(one), 0) / loads.length
  const lengthMm = mean((one) => one.lengthMm)
  const loadN = mean((one) => one.loadN)
  const spread = mean((one) => (one.lengthMm - lengthMm) ** 2)
  if (!(spread > 0)) return false
  const rateNPerMm = mean((one) => (lengthMm - one.lengthMm) * (one.loadN - loadN)) / spread
  const { rateNPerMm: rates, lengthMm: lengths } = springBounds
  if (!(rateNPerMm >= rates.min && rateNPerMm <= rates.max)) return false
  const freeMm = lengthMm + loadN / rateNPerMm
  return freeMm >= lengths.min && freeMm <= lengths.max
}
