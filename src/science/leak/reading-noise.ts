/**
 * Gives how much readings scatter from one to the next, whatever slow course they follow.
 *
 * s = 1.4826 median |d| / sqrt 6, d: second differences of neighbours, made for even steps
 *
 * @param values in the order of time
 * @returns in the unit of the values; 0 with fewer than five
 * Validity: independent noise; of readings that resemble one another it sees less.
 * Source: variance of a second difference is 6 s^2; median absolute deviation, common practice.
 * @example readingNoise([0, 1, 2, 3, 4, 5]) // 0
 */
export function readingNoise(values: readonly number[]): number {
  if (values.length < 5) return 0
  const second = Float64Array.from({ length: values.length - 2 }, (_, i) => {
    const [a, b, c] = [values[i] as number, values[i + 1] as number, values[i + 2] as number]
    return Math.abs(a - 2 * b + c)
  }).sort()
  const middle = second[Math.floor(second.length / 2)] as number
  return (1.4826 * middle) / Math.sqrt(6)
}
