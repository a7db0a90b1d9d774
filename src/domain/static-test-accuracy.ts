import { accuracyOf } from './accuracy-of.ts'
import type { Instrument } from './instrument.ts'
import { type BaseUnit, basePerInstrumentUnit } from './instrument-unit.ts'
import type { NewStaticTest } from './static-test.ts'

/**
 * What is known about how far off the readings of a static test may be: standard uncertainties,
 * and steps of the displays. Null where it is not known.
 */
export type StaticTestAccuracy = {
  readonly volumeRelative: number | null
  /** Of one reading of the gauge, without its step. */
  readonly pressurePa: number | null
  readonly pressureStepPa: number | null
  readonly temperatureK: number | null
  readonly temperatureStepK: number | null
  readonly timeS: number
}

/** Of a hold timed with a stop watch (common practice, no source); shown and editable. */
export const usualTimeS = 1

/**
 * What follows from the instruments as they stood on the day of the test; what the tester states
 * goes before it, and then covers the step of the display too.
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
  const volume = of(test.volumeInstrumentId, 'L').standardUncertainty
  const isPressureStated = stated?.pressurePa != null
  const isTemperatureStated = stated?.temperatureK != null
  return {
    volumeRelative: stated?.volumeRelative ?? (volume === null ? null : volume / test.volumeL),
    pressurePa: stated?.pressurePa ?? pressure.standardUncertainty,
    pressureStepPa: isPressureStated ? null : pressure.step,
    temperatureK: stated?.temperatureK ?? temperature.standardUncertainty,
    temperatureStepK: isTemperatureStated ? null : temperature.step,
    timeS: stated?.timeS ?? usualTimeS,
  }
}

type Known = { readonly standardUncertainty: number | null; readonly step: number | null }
const unknown: Known = { standardUncertainty: null, step: null }

/** An instrument whose numbers are in another kind of unit says nothing here. */
function accuracyIn(instrument: Instrument, day: string, base: BaseUnit): Known {
  const factor = basePerInstrumentUnit(instrument, base)
  if (factor === null) return unknown
  const { standardUncertainty, resolutionStep } = accuracyOf(instrument, day)
  return {
    standardUncertainty: standardUncertainty === null ? null : standardUncertainty * factor,
    step: resolutionStep === null ? null : resolutionStep * factor,
  }
}
