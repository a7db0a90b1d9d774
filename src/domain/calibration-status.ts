import type { Calibration, CalibrationStatus, Instrument } from './instrument.ts'

/**
 * Says how an instrument stood on a day. On its due day it is still in calibration; on the day of
 * its withdrawal no longer in use.
 * @param day calendar day, `2026-11-25`
 */
export function calibrationStatus(instrument: Instrument, day: string): CalibrationStatus {
  if (instrument.withdrawnOn !== null && day >= instrument.withdrawnOn) return 'withdrawn'
  const calibration = calibrationOn(instrument, day)
  if (calibration === undefined) return 'never-calibrated'
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
