import { accuracyOf } from './accuracy-of.ts'
import type { Instrument } from './instrument.ts'
import { type BaseUnit, basePerInstrumentUnit } from './instrument-unit.ts'
import type { NewStaticTest } from './static-test.ts'

/**
 * What is known about how far off the readings of a static test may be: standard uncertainties,
 * errors that the readings are not corrected for, to either side, and steps of the displays. Null
 * where it is not known.
 */
export type StaticTestAccuracy = {
  readonly volumeRelative: number | null
  readonly volumeErrorRelative: number | null
  /** Of the calibration of the gauge, or of one reading as it was stated. */
  readonly pressurePa: number | null
  readonly pressureErrorPa: number | null
  readonly pressureStepPa: number | null
  readonly temperatureK: number | null
  readonly temperatureErrorK: number | null
  readonly temperatureStepK: number | null
  readonly timeS: number
  /** Ids of the sources that nobody stated: an instrument, or the error of a calibrated one. */
  readonly leftOut: readonly string[]
}

/** Of a hold timed with a stop watch (common practice, no source); shown and editable. */
export const usualTimeS = 1

/**
 * What follows from the instruments as they stood on the day of the test; what the tester states
 * goes before it, and then covers the error of the instrument and the step of its display too,
 * where no step is stated beside it.
 */
export function staticTestAccuracy(
  test: Pick<
    NewStaticTest,
    | 'gaugeInstrumentId'
    | 'thermometerInstrumentId'
    | 'volumeInstrumentId'
    | 'volumeL'
    | 'startedAt'
    | 'budgetInput'
  >,
  instruments: readonly Instrument[],
): StaticTestAccuracy {
  const day = test.startedAt.slice(0, 10)
  const of = (id: number | null, base: BaseUnit) => {
    const found = instruments.find((one) => one.id === id)
    return found === undefined ? unknown : accuracyIn(found, day, base)
  }
  const stated = test.budgetInput
  const pressure = of(test.gaugeInstrumentId, 'Pa')
  const temperature = of(test.thermometerInstrumentId, 'K')
  const volume = of(test.volumeInstrumentId, 'L')
  const ofVolume = (litres: number | null) => (litres === null ? null : litres / test.volumeL)
  const isVolumeStated = stated?.volumeRelative != null
  const isPressureStated = stated?.pressurePa != null
  const isTemperatureStated = stated?.temperatureK != null
  return {
    volumeRelative: stated?.volumeRelative ?? ofVolume(volume.standardUncertainty),
    volumeErrorRelative: isVolumeStated ? null : ofVolume(volume.error),
    pressurePa: stated?.pressurePa ?? pressure.standardUncertainty,
    pressureErrorPa: isPressureStated ? null : pressure.error,
    pressureStepPa: stated?.resolutionPa ?? (isPressureStated ? null : pressure.step),
    temperatureK: stated?.temperatureK ?? temperature.standardUncertainty,
    temperatureErrorK: isTemperatureStated ? null : temperature.error,
    temperatureStepK: stated?.resolutionK ?? (isTemperatureStated ? null : temperature.step),
    timeS: stated?.timeS ?? usualTimeS,
    leftOut: [
      ...(isVolumeStated ? [] : leftOutOf('volume', volume)),
      ...(isPressureStated ? [] : leftOutOf('pressure', pressure)),
      ...(isTemperatureStated ? [] : leftOutOf('temperature', temperature)),
    ],
  }
}

type Known = {
  readonly standardUncertainty: number | null
  readonly error: number | null
  readonly step: number | null
}
const unknown: Known = { standardUncertainty: null, error: null, step: null }

/** How well an error is known does not tell how large it is. */
function leftOutOf(source: string, { standardUncertainty, error }: Known): readonly string[] {
  if (error !== null) return []
  return [standardUncertainty === null ? source : `${source}-error`]
}

/** An instrument whose numbers are in another kind of unit says nothing here. */
function accuracyIn(instrument: Instrument, day: string, base: BaseUnit): Known {
  const factor = basePerInstrumentUnit(instrument, base)
  if (factor === null) return unknown
  const { standardUncertainty, errorHalfWidth, resolutionStep } = accuracyOf(instrument, day)
  const inBase = (own: number | null) => (own === null ? null : own * factor)
  return {
    standardUncertainty: inBase(standardUncertainty),
    error: inBase(errorHalfWidth),
    step: inBase(resolutionStep),
  }
}
