import { springRate } from '../science/spring/spring-rate.ts'
import { isSpringLine } from './is-spring-line.ts'
import type { NewSpringCheck } from './spring-check.ts'
import { springLinePoints } from './spring-line-points.ts'

/** The straight line of one spring. */
export type Spring = {
  readonly rateNPerMm: number
  /** At which its line comes to no load. */
  readonly freeLengthMm: number
}

/**
 * One spring as it was read: by the line through its loads, by its one load and its free length, or
 * by its stated rate.
 * @returns null where there is neither load nor rate, or the load doesn't rise as it shortens
 */
export function springOf({
  loads,
  freeLength,
  statedRateNPerMm,
}: Pick<NewSpringCheck, 'loads' | 'freeLength' | 'statedRateNPerMm'>): Spring | null {
  const freeLengthMm = freeLength.mm
  const points = springLinePoints({ loads, freeLength })
  if (points.length === 0) {
    return statedRateNPerMm === null ? null : { rateNPerMm: statedRateNPerMm, freeLengthMm }
  }
  if (!isSpringLine(points)) return null
  const { rateNPerMm, fittedFreeLengthMm } = springRate(points)
  return { rateNPerMm, freeLengthMm: loads.length === 1 ? freeLengthMm : fittedFreeLengthMm }
}
