import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'
import { repeatedReadings } from './repeated-readings.ts'

/** A mean, and how well it is known from the scatter of what it is the mean of. */
export interface MeanReading {
  readonly mean: number
  /** null for a single reading, which shows no scatter. */
  readonly standardUncertainty: number | null
  readonly degreesOfFreedom: number | null
}

/**
 * Gives the mean of one or more readings of the same thing, and how well scatter lets it be known.
 *
 * standardUncertainty = s / sqrt n
 *
 * @param readings from 1 to 10 000 finite numbers, n of them
 * @returns mean and its standard uncertainty, in the unit of the readings, and n - 1 degrees of
 *   freedom; both null for a single reading
 * @throws RangeError outside these ranges
 * Validity: as repeatedReadings.
 * Source: JCGM 100:2008, 4.2.3.
 * @example meanReading([40, 42, 41, 41]).standardUncertainty // 0.408
 */
export function meanReading(readings: readonly number[]): MeanReading {
  const count = requireRange('meanReading', 'count of readings', readings.length, {
    from: 1,
    to: 10_000,
  })
  if (count === 1) {
    const mean = requireFinite('meanReading', 'reading', readings[0] ?? Number.NaN)
    return { mean, standardUncertainty: null, degreesOfFreedom: null }
  }
  const { mean, standardDeviation, degreesOfFreedom } = repeatedReadings(readings)
  return { mean, standardUncertainty: standardDeviation / Math.sqrt(count), degreesOfFreedom }
}
