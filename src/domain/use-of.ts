import { faultOfUse } from './fault-of-use.ts'
import type { Instrument, InstrumentUse } from './instrument.ts'
import { instrumentUse } from './instrument-use.ts'
import type { InstrumentReadings } from './range-holds.ts'
import type { UseException } from './use-exception.ts'
import { usedException } from './used-exception.ts'

/** The label of an instrument on the day of use, with the exception of the order that it needed. */
export function useOf(
  instrument: Instrument,
  by: {
    /** Calendar days of use and of recording, `2026-11-25`. */
    readonly day: string
    readonly recordedOn: string
    /** Of the order; none where absent. */
    readonly exceptions?: readonly UseException[] | undefined
    readonly readings?: InstrumentReadings
  },
): InstrumentUse {
  const { day, recordedOn, exceptions = [], readings } = by
  const fault = faultOfUse(instrument, day, readings)
  if (fault === null) return instrumentUse(instrument, day)
  const found = usedException(exceptions, {
    instrumentId: instrument.id,
    fault,
    day,
    recordedOn,
  })
  return instrumentUse(instrument, day, found)
}
