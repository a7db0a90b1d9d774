import type { InstrumentReadings } from './range-holds.ts'
import type { NewStaticTest } from './static-test.ts'

/**
 * What the gauge of a static test showed. A pressure above the air was read as such; an absolute
 * one may have been read so, or worked out by whoever sent it.
 */
export function gaugeReadings(
  test: Pick<NewStaticTest, 'typed' | 'startPressureKPaAbs' | 'endPressureKPaAbs' | 'barometerKPa'>,
): InstrumentReadings {
  const absolutePa = [test.startPressureKPaAbs, test.endPressureKPaAbs].map((kPa) => kPa * 1000)
  const abovePa = absolutePa.map((pa) => pa - test.barometerKPa * 1000)
  const isAbove = test.typed.pressureReference === 'gauge'
  return { base: 'Pa', ways: isAbove ? [abovePa] : [absolutePa, abovePa] }
}
