import { computeStaticTest } from '../../src/domain/compute-static-test.ts'
import type { StaticTest } from '../../src/domain/static-test.ts'
import type { StaticTestAccuracy } from '../../src/domain/static-test-accuracy.ts'
import { buildInstrumentUse } from './build-instrument.ts'

/** A volume known to 1 %, a gauge to 30 Pa, temperatures to 0.05 K and the time to 1 s. */
export const builtAccuracy: StaticTestAccuracy = {
  volumeRelative: 0.01,
  volumeErrorRelative: null,
  pressurePa: 30,
  pressureErrorPa: null,
  pressureStepPa: null,
  temperatureK: 0.05,
  temperatureErrorK: null,
  temperatureStepK: null,
  timeS: 1,
  leftOut: [],
}

/**
 * A test of the whole seal: 2 L from 271 to 270 kPa absolute in 300 s at 20 °C, by user 1, with
 * `builtAccuracy`. The computed columns follow the changes, unless these name them.
 */
export function buildStaticTest(changes: Partial<StaticTest> = {}): StaticTest {
  const test = {
    id: 1,
    workOrderId: 1,
    section: 'whole',
    typed: {
      startPressure: '271',
      endPressure: '270',
      pressureUnit: 'kPa',
      pressureReference: 'absolute',
      barometer: '',
    },
    startPressureKPaAbs: 271,
    endPressureKPaAbs: 270,
    barometerKPa: 101.325,
    startTemperatureC: 20,
    endTemperatureC: 20,
    referenceTemperatureC: 20,
    durationS: 300,
    startedAt: '2026-11-24T10:00:00.000Z',
    volumeL: 2,
    stabilisationS: null,
    leakPlace: null,
    expansion: null,
    gaugeInstrumentId: 3,
    thermometerInstrumentId: null,
    volumeInstrumentId: null,
    budgetInput: null,
    note: '',
    replacesId: null,
    reason: '',
    gauge: buildInstrumentUse('pressure-gauge'),
    thermometer: null,
    volume: null,
    recordedById: 1,
    recordedByName: 'Tess',
    recordedAt: '2026-11-24T10:10:00.000Z',
    replacedById: null,
    ...changes,
  } as const satisfies Partial<StaticTest>
  return { ...test, ...computeStaticTest(test, builtAccuracy), ...changes }
}
