/**
 * Gives the number back when it lies from `from` to `to`, both included, and throws otherwise.
 *
 * @param functionName the function that asks, as the error names it
 * @param name the name of the parameter
 * @param value the number to check; NaN is outside every range
 * @param range from, to: the ends, both allowed
 * @returns value, unchanged
 * @throws RangeError "FUNCTION requires NAME from A to B, got V"
 * @example requireRange('bandHeightUm', 'viewingAngleDeg', 10, { from: 0, to: 80 }) // 10
 */
export function requireRange(
  functionName: string,
  name: string,
  value: number,
  range: { readonly from: number; readonly to: number },
): number {
  if (!(value >= range.from && value <= range.to)) {
    throw new RangeError(
      `${functionName} requires ${name} from ${range.from} to ${range.to}, got ${value}`,
    )
  }
  return value
}
