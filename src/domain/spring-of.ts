import { springRate } from '../science/spring/spring-rate.ts'
import type { NewSpringCheck } from './spring-check.ts'

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
  const points = loads.map(({ length, load }) => ({ lengthMm: length.mm, loadN: load.n }))
  const [only] = points
  const freeLengthMm = freeLength.mm
  if (only === undefined) {
    return statedRateNPerMm === null ? null : { rateNPerMm: statedRateNPerMm, freeLengthMm }
  }
  if (points.length === 1) {
    const isPressed = only.lengthMm < freeLengthMm && only.loadN > 0
    if (!isPressed) return null
    return { rateNPerMm: only.loadN / (freeLengthMm - only.lengthMm), freeLengthMm }
  }
  if (!isRising(points)) return null
  const { rateNPerMm, fittedFreeLengthMm } = springRate(points)
  return { rateNPerMm, freeLengthMm: fittedFreeLengthMm }
}

/** Does the load of the best line rise as the spring shortens, enough to speak of a rate? */
function isRising(points: readonly { readonly lengthMm: number; readonly loadN: number }[]) {
  const mean = (of: (one: (typeof points)[number]) => number) =>
    points.reduce((sum, one) => sum + of(one), 0) / points.length
  const length = mean((one) => one.lengthMm)
  const load = mean((one) => one.loadN)
  const joint = mean((one) => (length - one.lengthMm) * (one.loadN - load))
  const spread = mean((one) => (one.lengthMm - length) ** 2)
  return spread > 0 && joint / spread > 1e-6
}
