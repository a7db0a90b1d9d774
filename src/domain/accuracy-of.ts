import { calibrationOn } from './calibration-status.ts'
import type { Calibration, Instrument } from './instrument.ts'
import { toleranceLeft } from './tolerance-left.ts'

/** What is known of how far off an instrument may be, in its own unit; null where it is not. */
export type InstrumentAccuracy = {
  /** Of its calibration: how well the error was known that it found, not how large that is. */
  readonly standardUncertainty: number | null
  /** The error itself, to either side: readings are not corrected for it. */
  readonly errorHalfWidth: number | null
  /** Step of the scale or display. */
  readonly resolutionStep: number | null
}

/**
 * An instrument is read as it is, without a correction. Its error is therefore a source of its own,
 * taken as rectangular to either side, beside the uncertainty that the calibration in force on the
 * day found it with (k = 2 where that states no factor): JCGM 100:2008, 4.3.3, 4.3.7, 6.3.1 note
 * and F.2.4.5. The error is the largest that the calibration left, where it states both; else the
 * larger of it and the permissible one, which one that left it beyond has shown not to hold.
 * @param day calendar day, `2026-11-25`
 */
export function accuracyOf(instrument: Instrument, day: string): InstrumentAccuracy {
  const { resolutionStep, largestError } = instrument
  const calibration = calibrationOn(instrument, day)
  const { expandedUncertainty = null, coverageFactor } = calibration ?? {}
  return {
    standardUncertainty:
      expandedUncertainty === null ? null : expandedUncertainty / (coverageFactor ?? 2),
    errorHalfWidth: errorHalfWidth(calibration, largestError),
    resolutionStep,
  }
}

/**
 * The error of an instrument to either side, in the unit of its calibration; null where it is not
 * known. An error that no uncertainty stands beside is not relied on to be smaller than permitted.
 * @param largestError the largest permissible one, null where that is not known
 */
export function errorHalfWidth(
  calibration: Calibration | undefined,
  largestError: number | null,
): number | null {
  if (calibration === undefined) return largestError
  const left = errorLeft(calibration)
  if (left !== null && calibration.expandedUncertainty !== null) return left
  const isBeyond = toleranceLeft(calibration) === 'beyond'
  if (isBeyond ? left === null : largestError === null) return null
  return Math.max(left ?? 0, largestError ?? 0)
}

/** As found where nothing says how it was left: nothing says that it was adjusted. */
function errorLeft({ asFoundError, asLeft, asLeftError }: Calibration): number | null {
  const signed = asLeftError ?? (asLeft === 'not-stated' ? asFoundError : null)
  return signed === null ? null : Math.abs(signed)
}
