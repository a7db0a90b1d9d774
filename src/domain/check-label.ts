import { calibrationOn, calibrationStatus } from './calibration-status.ts'
import type { Fields } from './fields.ts'
import type { Instrument } from './instrument.ts'
import type { UseException } from './use-exception.ts'
import { usedException } from './used-exception.ts'

/**
 * Refuses an instrument that is withdrawn, overdue, was left beyond its tolerance or never was
 * calibrated, unless an inspector allowed an exception for this order.
 */
export function checkLabel(
  fields: Fields,
  name: string,
  use: {
    readonly instrument: Instrument
    /** Calendar days of use and of recording. */
    readonly day: string
    readonly recordedOn: string
    readonly exceptions?: readonly UseException[] | undefined
  },
): void {
  const { instrument, day, recordedOn, exceptions = [] } = use
  const fault = calibrationStatus(instrument, day)
  if (fault === 'in-calibration') return
  const { id: instrumentId, number } = instrument
  if (usedException(exceptions, { instrumentId, fault, day, recordedOn }) !== undefined) return
  if (fault === 'overdue') {
    const dueOn = calibrationOn(instrument, day)?.dueOn ?? ''
    fields.fault(name, 'overdue-instrument', { number, dueOn })
  } else fields.fault(name, `${fault}-instrument`, { number })
}
