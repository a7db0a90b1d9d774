import { computeStaticTest } from './compute-static-test.ts'
import { gaugeReadings } from './gauge-readings.ts'
import type { InstrumentReadings } from './range-holds.ts'
import type { NewStaticTest, StaticTest } from './static-test.ts'
import { staticTestAccuracy } from './static-test-accuracy.ts'
import type { StaticTestContext } from './static-test-context.ts'
import { thermometerReadings } from './thermometer-readings.ts'
import { useOf } from './use-of.ts'

/** A test with all that is computed, before the store gives it an id, a name and a time. */
export type CompleteStaticTest = Omit<
  StaticTest,
  'id' | 'recordedById' | 'recordedByName' | 'recordedAt' | 'replacedById'
>

/**
 * Adds to a parsed test its figures and the instruments as they stood on the day the hold began.
 * @throws RangeError where the test was not parsed in this context
 */
export function completeStaticTest(
  test: NewStaticTest,
  context: Pick<StaticTestContext, 'instruments' | 'exceptions' | 'now'>,
): CompleteStaticTest {
  const day = test.startedAt.slice(0, 10)
  const { exceptions } = context
  const recordedOn = context.now.slice(0, 10)
  const use = (id: number, readings?: InstrumentReadings) => {
    const instrument = context.instruments.find((one) => one.id === id)
    if (instrument !== undefined) {
      return useOf(instrument, { day, recordedOn, exceptions, ...(readings && { readings }) })
    }
    throw new RangeError(`completeStaticTest requires an instrument of its context, got id ${id}`)
  }
  const { thermometerInstrumentId, volumeInstrumentId } = test
  const accuracy = staticTestAccuracy(test, context.instruments)
  return {
    ...test,
    ...computeStaticTest(test, accuracy),
    gauge: use(test.gaugeInstrumentId, gaugeReadings(test)),
    volume: volumeInstrumentId === null ? null : use(volumeInstrumentId),
    thermometer:
      thermometerInstrumentId === null
        ? null
        : use(thermometerInstrumentId, thermometerReadings(test)),
  }
}
