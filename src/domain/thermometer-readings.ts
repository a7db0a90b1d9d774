import type { InstrumentReadings } from './range-holds.ts'
import type { NewStaticTest } from './static-test.ts'

/** What the thermometer of a static test showed, in its own degrees Celsius. */
export function thermometerReadings(
  test: Pick<NewStaticTest, 'startTemperatureC' | 'endTemperatureC'>,
): InstrumentReadings {
  return { base: 'K', ways: [[test.startTemperatureC, test.endTemperatureC]] }
}
