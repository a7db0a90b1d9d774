import { mean, sampleStandardDeviation } from 'simple-statistics'
import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'

/**
 * Gives mean and scatter of readings of the same thing, taken one after the other.
 *
 * s^2 = sum of (x - mean)^2 / (n - 1)
 *
 * @param readings from 2 to 10 000 finite numbers x, n of them
 * @returns mean and standard deviation s of one reading, in the unit of the readings; n - 1
 *   degrees of freedom
 * @throws RangeError outside these ranges
 * Validity: independent readings. The same display or the same eye each time hides what it always
 *   does alike.
 * Source: JCGM 100:2008, 4.2.1 and 4.2.2.
 * @example repeatedReadings([2, 2.25, 2]).standardDeviation // 0.1443
 */
export function repeatedReadings(readings: readonly number[]): {
  readonly mean: number
  readonly standardDeviation: number
  readonly degreesOfFreedom: number
} {
  const name = 'repeatedReadings'
  requireRange(name, 'count of readings', readings.length, { from: 2, to: 10_000 })
  for (const reading of readings) requireFinite(name, 'reading', reading)
  return {
    mean: mean([...readings]),
    standardDeviation: sampleStandardDeviation([...readings]),
    degreesOfFreedom: readings.length - 1,
  }
}
