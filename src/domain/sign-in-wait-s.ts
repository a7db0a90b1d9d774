/** Failures that cost nothing: fingers slip. */
const freeFailureCount = { byName: 4, byAddress: 20 } as const

/** Nobody is kept out longer than this, so that a stranger can't lock a colleague out for a shift. */
const longestWaitS = 60

/**
 * How long the next try must still wait, in seconds: after the free ones it doubles with each
 * failure of the last quarter of an hour, for the name and for the address it comes from.
 * @param failures counted over the last 15 minutes; `sinceLastS` seconds since the newest
 */
export function signInWaitS(failures: {
  readonly byName: number
  readonly byAddress: number
  readonly sinceLastS: number
}): number {
  const over = Math.max(
    failures.byName - freeFailureCount.byName,
    failures.byAddress - freeFailureCount.byAddress,
  )
  if (over <= 0) return 0
  const waitS = Math.min(longestWaitS, 2 ** over)
  return Math.max(0, Math.ceil(waitS - failures.sinceLastS))
}
