import { calibrationOn, calibrationStatus } from './calibration-status.ts'
import type { Instrument, InstrumentUse, UsedException } from './instrument.ts'

/**
 * What stood on an instrument's label on the day of use; kept with the reading, so that a later
 * calibration does not rewrite what was known then.
 * @param day calendar day, `2026-11-25`
 * @param exception that it was used by, where it needed one
 */
export function instrumentUse(
  instrument: Instrument,
  day: string,
  exception?: UsedException,
): InstrumentUse {
  const calibration = calibrationOn(instrument, day)
  return {
    instrumentId: instrument.id,
    number: instrument.number,
    name: instrument.name,
    serial: instrument.serial,
    kind: instrument.kind,
    status: calibrationStatus(instrument, day),
    dueOn: calibration?.dueOn ?? null,
    certificateNumber: calibration?.certificateNumber ?? null,
    ...(exception === undefined ? {} : { exception }),
  }
}
