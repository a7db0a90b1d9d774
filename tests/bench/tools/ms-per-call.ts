/** Calls again and again for at least so long; milliseconds of one call. */
export function msPerCall(work: () => unknown, forMs: number): number {
  const startedAt = performance.now()
  let callCount = 0
  let elapsedMs = 0
  // The clock is asked at each power of two: asking costs more than the shortest work.
  for (let next = 1; elapsedMs < forMs; next *= 2) {
    for (; callCount < next; callCount++) kept = work()
    elapsedMs = performance.now() - startedAt
  }
  return elapsedMs / callCount
}

/** Results are kept where the compiler can't know that nobody reads them. */
export let kept: unknown
