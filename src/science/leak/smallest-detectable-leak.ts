import { requireRange } from '../check/require-range.ts'

/** Two one-sided normal 95 % points added: 5 % false alarms and 5 % misses. */
const detectionFactor = 3.29

/**
 * Gives the smallest leak that a set-up can tell from none, in the unit of the uncertainty.
 *
 * 3.29 u0, with u0 the standard uncertainty when there is no leak
 *
 * @param standardUncertaintyAtZero u0: from 0 to 1e300; without the parts that grow with the leak
 *   (volume, time)
 * @returns smallest detectable leak, same unit
 * @throws RangeError outside this range
 * Validity: 5 % false alarms and 5 % misses, u0 known rather than estimated from few readings.
 *   A limit below this cannot be accepted with the set-up.
 * Source: detection limit after L. A. Currie, Anal. Chem. 40 (1968) 586, as in ISO 11929 (from
 *   memory); 3.29 = 1.645 + 1.645.
 * @example smallestDetectableLeak(0.0001) // 0.000329
 */
export function smallestDetectableLeak(standardUncertaintyAtZero: number): number {
  requireRange('smallestDetectableLeak', 'standardUncertaintyAtZero', standardUncertaintyAtZero, {
    from: 0,
    to: 1e300,
  })
  return detectionFactor * standardUncertaintyAtZero
}
