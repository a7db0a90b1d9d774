import { repeatedReadings } from '../science/statistics/repeated-readings.ts'
import type { NewFlatnessReading } from './flatness.ts'
import type { FlatnessBudgetInput } from './flatness-budget-input.ts'

export type Repeatability = {
  readonly standardDeviationBands: number
  /** How many counts the result is the mean of. */
  readonly count: number
  readonly degreesOfFreedom: number | null
}

/** Counts are typed to hundredths of a band: so near a mean is the mean. */
const asTypedBands = 0.005

/**
 * How far counts of a reading scatter: from counting one direction again, or as it was known.
 * Null where it was not stated. What was typed as the count stays the result: where that is the
 * mean of the repeats its scatter is that of a mean, else that of one count. A saddle is the sum
 * of two counts, of which one at most was repeated: there it stays that of one count.
 */
export function repeatabilityOf(
  input: Pick<FlatnessBudgetInput, 'repeats' | 'repeatability'>,
  reading: Pick<NewFlatnessReading, 'pattern' | 'directions'>,
): Repeatability | null {
  if (input.repeats.length < 2) return input.repeatability
  const bands = input.repeats.map((one) => one.bands)
  const { mean, standardDeviation, degreesOfFreedom } = repeatedReadings(bands)
  const largest = Math.max(0, ...reading.directions.map((one) => one.bands))
  const isMean = reading.pattern !== 'saddle' && Math.abs(mean - largest) <= asTypedBands
  return {
    standardDeviationBands: standardDeviation,
    count: isMean ? bands.length : 1,
    degreesOfFreedom,
  }
}
