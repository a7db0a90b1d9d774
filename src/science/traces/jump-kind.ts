import { fitLine } from '../statistics/fit-line.ts'

const fewest = 5
/** How many times the scatter a value may lie off the line that it should go on. */
const mostScatter = 4

/**
 * Tells whether a clock that shows an hour more stood still meanwhile or was set: by whether the value
 * went on for the hour, or for one step.
 *
 * line through the last values; the next one lies on it at the long step (gap), at the usual step
 * (clock-forward), on neither or on both (jump-unknown), within 4 s, s: scatter of a new value
 *
 * @param input timesS, values: of the last rows, rising times; stepS: the long step; usualStepS;
 *   nextValue
 * @returns kind
 * Validity: a value that moves with time, evenly over the last rows. With fewer than five rows nothing
 *   can be told.
 * Source: own rule; prediction of a straight line, NIST/SEMATECH e-Handbook 4.5.1.2.
 * @example jumpKind({ timesS: [0, 10, 20, 30, 40], values: [0, 1, 2, 3, 4], stepS: 3610, usualStepS:
 *   10, nextValue: 5 }) // clock-forward
 */
export function jumpKind(input: {
  readonly timesS: readonly number[]
  readonly values: readonly number[]
  readonly stepS: number
  readonly usualStepS: number
  readonly nextValue: number
}): 'gap' | 'clock-forward' | 'jump-unknown' {
  const { timesS, values, stepS, usualStepS, nextValue } = input
  const count = timesS.length
  if (count < fewest) return 'jump-unknown'
  const last = timesS[count - 1] as number
  const x = timesS.map((one) => one - last)
  const line = fitLine({ x, y: values })
  const middle = x.reduce((sum, one) => sum + one, 0) / count
  const largest = Math.max(...values.map(Math.abs), 1e-300)
  const noise = Math.max(line.residualStandardDeviation, 1e-12 * largest)
  const fits = (step: number) => {
    const apart = (step - middle) * line.slopePerNoise
    const scatter = noise * Math.sqrt(1 + 1 / count + apart ** 2)
    return Math.abs(nextValue - line.intercept - line.slope * step) <= mostScatter * scatter
  }
  const [isGap, isSet] = [fits(stepS), fits(usualStepS)]
  if (isGap === isSet) return 'jump-unknown'
  return isGap ? 'gap' : 'clock-forward'
}
