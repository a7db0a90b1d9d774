import { requireRange } from './require-range.ts'

/**
 * Gives the number back when it is whole and lies from `from` to `to`, and throws otherwise.
 *
 * @param functionName the function that asks, as the error names it
 * @param name the name of the parameter
 * @param value the count to check
 * @param range from, to: the ends, both allowed
 * @returns value, unchanged
 * @throws RangeError outside the range, or when value has a fraction
 * @example requireWhole('formatFixed', 'decimals', 2, { from: 0, to: 20 }) // 2
 */
export function requireWhole(
  functionName: string,
  name: string,
  value: number,
  range: { readonly from: number; readonly to: number },
): number {
  requireRange(functionName, name, value, range)
  if (!Number.isInteger(value)) {
    throw new RangeError(
      `${functionName} requires ${name} whole from ${range.from} to ${range.to}, got ${value}`,
    )
  }
  return value
}
