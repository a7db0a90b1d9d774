import type { Calibration } from './instrument.ts'
import { toleranceLeft } from './tolerance-left.ts'

/** Calendar days, both included. */
export type DoubtWindow = {
  /** Null where every earlier use is in doubt. */
  readonly from: string | null
  /** Null where nothing has put the instrument right since: use until today is in doubt. */
  readonly to: string | null
}

/**
 * The days of use that a calibration puts in doubt by finding the instrument beyond its tolerance,
 * or leaving it so: from the last one that left it good up to the day of this one, or up to the
 * next one that leaves it good where this one did not. Both days count, since nobody knows at which
 * hour of them it was used. Null where it found and left nothing beyond.
 *
 * Good is one that left the instrument within, or found it so and says nothing of adjusting it. One
 * that says neither counts as good too: nobody found it beyond, and readings were recorded by it.
 * @param calibrations of the same instrument, in any order
 */
export function doubtWindow(
  calibrations: readonly Calibration[],
  found: Calibration,
): DoubtWindow | null {
  const leftGood = toleranceLeft(found) !== 'beyond'
  if (leftGood && found.asFound !== 'beyond') return null
  const good = calibrations.filter((one) => toleranceLeft(one) !== 'beyond')
  const next = good.filter((one) => isBefore(found, one)).map((one) => one.calibratedOn)
  return {
    // Left beyond though found within: nothing earlier is in doubt.
    from: found.asFound === 'within' ? found.calibratedOn : lastBefore(good, found),
    to: leftGood ? found.calibratedOn : (next.toSorted()[0] ?? null),
  }
}

function lastBefore(good: readonly Calibration[], found: Calibration): string | null {
  const days = good.filter((one) => isBefore(one, found)).map((one) => one.calibratedOn)
  return days.toSorted().at(-1) ?? null
}

/** Of two on one day, the one that was recorded first. */
function isBefore(one: Calibration, other: Calibration): boolean {
  if (one.calibratedOn !== other.calibratedOn) return one.calibratedOn < other.calibratedOn
  return one.id < other.id
}
