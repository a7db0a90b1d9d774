import { pressureChange } from '../science/leak/pressure-change.ts'
import { methods } from './methods.ts'
import type { NewStaticTest, StaticTest } from './static-test.ts'
import type { StaticTestAccuracy } from './static-test-accuracy.ts'
import { staticTestUncertainty } from './static-test-uncertainty.ts'

export type ComputedStaticTest = Pick<
  StaticTest,
  | 'pressureDropKPa'
  | 'leakPaM3PerS'
  | 'uncompensatedPaM3PerS'
  | 'leakUncertainty'
  | 'dropUncertainty'
  | 'method'
>

/** What a test's figures depend on. */
export type StaticTestFigures = Pick<
  NewStaticTest,
  | 'startPressureKPaAbs'
  | 'endPressureKPaAbs'
  | 'startTemperatureC'
  | 'endTemperatureC'
  | 'durationS'
  | 'volumeL'
  | 'referenceTemperatureC'
>

/**
 * The computed columns of a static test, unrounded; positive when gas leaves. A pressure that
 * rose is a negative drop: nothing is cut off.
 * @param accuracy what is known about the readings on the day
 * @throws RangeError where the test did not pass its parsing
 */
export function computeStaticTest(
  test: StaticTestFigures,
  accuracy: StaticTestAccuracy,
): ComputedStaticTest {
  const input = {
    volumeL: test.volumeL,
    referenceTemperatureC: test.referenceTemperatureC,
    start: {
      timeS: 0,
      pressureKPaAbs: test.startPressureKPaAbs,
      temperatureC: test.startTemperatureC,
    },
    end: {
      timeS: test.durationS,
      pressureKPaAbs: test.endPressureKPaAbs,
      temperatureC: test.endTemperatureC,
    },
  }
  const change = pressureChange(input)
  return {
    pressureDropKPa: change.pressureDropKPa,
    leakPaM3PerS: change.leakPaM3PerS,
    uncompensatedPaM3PerS: change.uncompensatedPaM3PerS,
    ...staticTestUncertainty(input, accuracy),
    method: methods.leakPressureChange,
  }
}
