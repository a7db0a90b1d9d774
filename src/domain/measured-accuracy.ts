import { accuracyOf } from './accuracy-of.ts'
import type { Instrument } from './instrument.ts'
import { basePerInstrumentUnit } from './instrument-unit.ts'
import type { NewMeasuredValue } from './measured-value.ts'
import { umPerUnit } from './um-per-unit.ts'

/** What is known of how far off an instrument may be. */
export type MeasuredAccuracy = {
  /** Of its calibration: how well its error is known; null where that says nothing. */
  readonly standardUncertaintyUm: number | null
  /** Its error, not corrected, to either side; null where it is not known. */
  readonly largestErrorUm: number | null
  /** Step of the scale or display. */
  readonly resolutionUm: number
  /** A lever reads true only where it lies along the surface. */
  readonly isLever: boolean
}

/**
 * What follows from an instrument as it stood on the day. Where its record says no step, readings
 * were as fine as they were typed.
 */
export function measuredAccuracy(
  instrument: Instrument,
  day: string,
  measured: Pick<NewMeasuredValue, 'unit' | 'readings'>,
): MeasuredAccuracy {
  const isLever = instrument.kind === 'lever-indicator'
  const factor = basePerInstrumentUnit(instrument, 'um')
  if (factor === null) {
    const resolutionUm = typedStepUm(measured)
    return { standardUncertaintyUm: null, largestErrorUm: null, resolutionUm, isLever }
  }
  const { standardUncertainty, errorHalfWidth, resolutionStep } = accuracyOf(instrument, day)
  return {
    standardUncertaintyUm: standardUncertainty === null ? null : standardUncertainty * factor,
    largestErrorUm: errorHalfWidth === null ? null : errorHalfWidth * factor,
    resolutionUm: resolutionStep === null ? typedStepUm(measured) : resolutionStep * factor,
    isLever,
  }
}

/** One in the last place of the reading that was typed finest: `0.04` mm is 10 µm. */
function typedStepUm({ unit, readings }: Pick<NewMeasuredValue, 'unit' | 'readings'>): number {
  const decimals = readings.map(({ typed }) => typed.split(/[.,]/)[1]?.length ?? 0)
  return 10 ** -Math.max(...decimals) * (umPerUnit(unit, undefined) ?? 1)
}
