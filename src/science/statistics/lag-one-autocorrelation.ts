import { requireRange } from '../check/require-range.ts'

/**
 * Gives the lag-one autocorrelation of a series: how much a value tells about the next one.
 *
 * r1 = sum (v[i] - mean)(v[i+1] - mean) / sum (v[i] - mean)^2
 *
 * @param values at least 3 finite numbers in the order of time
 * @returns from -1 to 1; 0 for a series of equal values, which says nothing about the next
 * @throws RangeError with fewer than 3 values
 * Source: NIST/SEMATECH e-Handbook 1.3.5.12; checked against certified values of NIST StRD.
 * @example lagOneAutocorrelation([1, 2, 3, 4, 5]) // 0.4
 */
export function lagOneAutocorrelation(values: readonly number[]): number {
  requireRange('lagOneAutocorrelation', 'count of values', values.length, { from: 3, to: 1e7 })
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length
  let products = 0
  let squares = 0
  let before = 0
  for (const value of values) {
    const deviation = value - mean
    products += deviation * before
    squares += deviation * deviation
    before = deviation
  }
  return squares === 0 ? 0 : products / squares
}
