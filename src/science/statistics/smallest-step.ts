/**
 * Gives the smallest difference between two different values of a list: an upper bound of the
 * step of a display, from the readings themselves.
 *
 * min |v[i] - v[j]| over v[i] != v[j]
 *
 * @param values any count of finite numbers
 * @returns the step, in the unit of the values; 0 when all are equal, so that no step was seen
 * Validity: readings of an undivided, noisy signal give a step far below their noise.
 * Source: definition.
 * @example smallestStep([271.3, 271.1, 271.3, 271.0]) // 0.1
 */
export function smallestStep(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  let step = Number.POSITIVE_INFINITY
  for (let index = 1; index < sorted.length; index++) {
    const difference = (sorted[index] as number) - (sorted[index - 1] as number)
    if (difference > 0 && difference < step) step = difference
  }
  return Number.isFinite(step) ? step : 0
}
