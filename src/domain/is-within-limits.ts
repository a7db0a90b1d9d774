import { atMost } from '../science/acceptance/at-most.ts'

/** Says whether a value keeps its limits, whatever its uncertainty; null: no limit that side. */
export function isWithinLimits(
  value: number,
  limits: { readonly lower: number | null; readonly upper: number | null },
): boolean {
  const { lower, upper } = limits
  const keepsUpper = upper === null || atMost({ value, limit: upper })
  return keepsUpper && (lower === null || atMost({ value: lower, limit: value }))
}
