import { calibrationOn } from './calibration-status.ts'
import type { Instrument } from './instrument.ts'

/** What is known of how far off an instrument may be, in its own unit; null where it is not. */
export type InstrumentAccuracy = {
  readonly standardUncertainty: number | null
  /** `rectangular` where it follows from the largest permissible error. */
  readonly distribution: 'normal' | 'rectangular'
  /** The largest permissible error that it follows from; null where a calibration says more. */
  readonly largestError: number | null
  /** Step of the scale or display. */
  readonly resolutionStep: number | null
}

/**
 * The uncertainty that the calibration in force on a day states goes first (k = 2 where it states
 * no factor); else the largest permissible error, taken as rectangular (JCGM 100:2008, 4.3.3 and
 * 4.3.7).
 * @param day calendar day, `2026-11-25`
 */
export function accuracyOf(instrument: Instrument, day: string): InstrumentAccuracy {
  const { expandedUncertainty, coverageFactor } = calibrationOn(instrument, day) ?? {}
  const { largestError, resolutionStep } = instrument
  if (expandedUncertainty != null) {
    return {
      standardUncertainty: expandedUncertainty / (coverageFactor ?? 2),
      distribution: 'normal',
      largestError: null,
      resolutionStep,
    }
  }
  return {
    standardUncertainty: largestError === null ? null : largestError / Math.sqrt(3),
    distribution: 'rectangular',
    largestError,
    resolutionStep,
  }
}
