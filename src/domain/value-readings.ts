import type { ValueReading } from './measured-value.ts'
import type { InstrumentReadings } from './range-holds.ts'

/** What the instrument of a measured value showed. */
export function valueReadings(readings: readonly ValueReading[]): InstrumentReadings {
  return { base: 'um', ways: [readings.map((one) => one.um)] }
}
