import { faultOfUse } from './fault-of-use.ts'
import type { Fields } from './fields.ts'
import type { Instrument } from './instrument.ts'
import { type InstrumentReadings, rangeHolds } from './range-holds.ts'
import type { UseException } from './use-exception.ts'
import { usedException } from './used-exception.ts'

/**
 * Refuses the instrument that a field names where its range doesn't hold what it showed, unless an
 * inspector allowed that for this order. An instrument that is used by an exception of its label
 * already has no second one.
 */
export function checkRange(
  fields: Fields,
  name: string,
  use: {
    readonly instrument: Instrument | undefined
    readonly readings: InstrumentReadings
    /** Calendar days of use and of recording. */
    readonly day: string
    readonly recordedOn: string
    readonly exceptions?: readonly UseException[] | undefined
  },
): void {
  const { instrument, readings, day, recordedOn, exceptions = [] } = use
  if (instrument === undefined || fields.faults.some((one) => one.field === name)) return
  if (rangeHolds(instrument, readings)) return
  const fault = faultOfUse(instrument, day, readings)
  const asked = {
    instrumentId: instrument.id,
    fault: 'out-of-range',
    day,
    recordedOn,
  } as const
  if (fault === 'out-of-range' && usedException(exceptions, asked) !== undefined) return
  const { number, unit, rangeFrom, rangeTo } = instrument
  fields.fault(name, 'out-of-range-instrument', {
    number,
    unit,
    ...(rangeFrom === null ? {} : { from: rangeFrom }),
    ...(rangeTo === null ? {} : { to: rangeTo }),
  })
}
