/**
 * Gives the usual step of a clock: the median of the rising steps between neighbours.
 *
 * @param times in the order of reading
 * @returns in the unit of the times; null where no step rises
 * Source: definition.
 * @example medianStep([0, 10, 20, 15, 30]) // 10
 */
export function medianStep(times: ArrayLike<number>): number | null {
  const steps = new Float64Array(Math.max(0, times.length - 1))
  let count = 0
  for (let i = 1; i < times.length; i++) {
    const step = (times[i] as number) - (times[i - 1] as number)
    if (step > 0) steps[count++] = step
  }
  if (count === 0) return null
  const sorted = steps.subarray(0, count).sort()
  const middle = Math.floor(count / 2)
  const upper = sorted[middle] as number
  return count % 2 === 1 ? upper : ((sorted[middle - 1] as number) + upper) / 2
}
