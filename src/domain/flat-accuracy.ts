import { accuracyOf, errorHalfWidth } from './accuracy-of.ts'
import { calibrationOn } from './calibration-status.ts'
import type { Instrument } from './instrument.ts'
import { basePerInstrumentUnit } from './instrument-unit.ts'
import { permittedError } from './permitted-error.ts'

/** How far an optical flat may depart from flat; null where it is not known. */
export type FlatAccuracy = {
  /** Its largest departure, which no count is corrected for. */
  readonly flatToleranceUm: number | null
  /** Of its calibration: how well that departure was known. */
  readonly flatStandardUncertaintyUm: number | null
}

/**
 * What follows from an optical flat as it stood on the day. A flat without a unit states its
 * calibration in um, as it states its tolerance.
 * @param day calendar day, `2026-11-25`
 */
export function flatAccuracy(flat: Instrument, day: string): FlatAccuracy {
  const factor = flat.unit === '' ? 1 : basePerInstrumentUnit(flat, 'um')
  if (factor === null) {
    return { flatToleranceUm: flat.flatToleranceUm, flatStandardUncertaintyUm: null }
  }
  const error = errorHalfWidth(calibrationOn(flat, day), permittedError(flat))
  const { standardUncertainty } = accuracyOf(flat, day)
  return {
    flatToleranceUm: error === null ? null : error * factor,
    flatStandardUncertaintyUm: standardUncertainty === null ? null : standardUncertainty * factor,
  }
}
