import { calibrationStatus } from './calibration-status.ts'
import type { Instrument } from './instrument.ts'
import { type InstrumentReadings, rangeHolds } from './range-holds.ts'
import type { UseFault } from './use-exception.ts'

/**
 * Why an instrument may not be used on a day; null where it may. What its label says goes before
 * its range: nobody uses an instrument beyond both by one exception.
 * @param day calendar day, `2026-11-25`
 * @param readings what it showed; absent where that is not known or has no range
 */
export function faultOfUse(
  instrument: Instrument,
  day: string,
  readings?: InstrumentReadings,
): UseFault | null {
  const status = calibrationStatus(instrument, day)
  if (status !== 'in-calibration') return status
  return readings === undefined || rangeHolds(instrument, readings) ? null : 'out-of-range'
}
