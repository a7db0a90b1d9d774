/**
 * A tolerance in the unit of what it is asked for, from one in percent to either side; null where
 * either is not stated.
 */
export function shareOf(design: number | null, percent: number | null): number | null {
  return design === null || percent === null ? null : (design * percent) / 100
}
