import { calibrationStatus } from './calibration-status.ts'
import type { Instrument } from './instrument.ts'
import type { UseException } from './use-exception.ts'
import { usedException } from './used-exception.ts'

/**
 * Says whether a form offers an instrument: one that is withdrawn only where an inspector allowed
 * it for the order. Whether it may be recorded with is asked when it is.
 */
export function canBeChosen(
  instrument: Instrument,
  by: {
    readonly day: string
    readonly recordedOn: string
    readonly exceptions: readonly UseException[]
  },
): boolean {
  if (calibrationStatus(instrument, by.day) !== 'withdrawn') return true
  const { day, recordedOn } = by
  const asked = { instrumentId: instrument.id, fault: 'withdrawn', day, recordedOn } as const
  return usedException(by.exceptions, asked) !== undefined
}
