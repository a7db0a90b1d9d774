import { computeStaticTest } from './compute-static-test.ts'
import { instrumentUse } from './instrument-use.ts'
import type { NewStaticTest, StaticTest } from './static-test.ts'
import { staticTestAccuracy } from './static-test-accuracy.ts'
import type { StaticTestContext } from './static-test-context.ts'

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
  context: Pick<StaticTestContext, 'instruments'>,
): CompleteStaticTest {
  const day = test.startedAt.slice(0, 10)
  const use = (id: number) => {
    const instrument = context.instruments.find((one) => one.id === id)
    if (instrument !== undefined) return instrumentUse(instrument, day)
    throw new RangeError(`completeStaticTest requires an instrument of its context, got id ${id}`)
  }
  const { thermometerInstrumentId, volumeInstrumentId } = test
  const accuracy = staticTestAccuracy(test, context.instruments)
  return {
    ...test,
    ...computeStaticTest(test, accuracy),
    gauge: use(test.gaugeInstrumentId),
    volume: volumeInstrumentId === null ? null : use(volumeInstrumentId),
    thermometer: thermometerInstrumentId === null ? null : use(thermometerInstrumentId),
  }
}
