import type { Calibration } from './instrument.ts'

/** Calendar days, both included; `from` null where every earlier use is in doubt. */
export type DoubtWindow = { readonly from: string | null; readonly to: string }

/**
 * The days of use that a calibration puts in doubt by finding the instrument beyond its tolerance:
 * from the last one that left it good up to the day of this one. Both days count, since nobody
 * knows at which hour of them it was used. Null where it found nothing beyond.
 * @param calibrations of the same instrument, in any order
 */
export function doubtWindow(
  calibrations: readonly Calibration[],
  found: Calibration,
): DoubtWindow | null {
  if (found.asFound !== 'beyond') return null
  const good = calibrations
    .filter((one) => isBefore(one, found) && one.asLeft !== 'beyond')
    .map((one) => one.calibratedOn)
    .reduce<string | null>((last, day) => (last === null || day > last ? day : last), null)
  return { from: good, to: found.calibratedOn }
}

/** Of two on one day, the one that was recorded first. */
function isBefore(one: Calibration, other: Calibration): boolean {
  if (one.calibratedOn !== other.calibratedOn) return one.calibratedOn < other.calibratedOn
  return one.id < other.id
}
