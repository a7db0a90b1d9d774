import type { Calibration, CalibrationStatus, Instrument } from './instrument.ts'
import { toleranceLeft } from './tolerance-left.ts'

/**
 * Says how an instrument stood on a day. On its due day it is still in calibration; on the day of
 * its withdrawal no longer in use. One that its newest calibration left beyond its tolerance is
 * known to be wrong: that is said before an overdue date, which only says that nobody has looked
 * since.
 * @param day calendar day, `2026-11-25`
 */
export function calibrationStatus(instrument: Instrument, day: string): CalibrationStatus {
  if (instrument.withdrawnOn !== null && day >= instrument.withdrawnOn) return 'withdrawn'
  const calibration = calibrationOn(instrument, day)
  if (calibration === undefined) return 'never-calibrated'
  if (toleranceLeft(calibration) === 'beyond') return 'left-beyond'
  return day > calibration.dueOn ? 'overdue' : 'in-calibration'
}

/** The newest calibration on or before a day: a later one says nothing about that day. */
export function calibrationOn(instrument: Instrument, day: string): Calibration | undefined {
  return instrument.calibrations
    .filter((one) => one.calibratedOn <= day)
    .reduce<Calibration | undefined>(
      (newest, one) =>
        newest === undefined || one.calibratedOn >= newest.calibratedOn ? one : newest,
      undefined,
    )
}
