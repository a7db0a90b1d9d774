/**
 * Gives the number back when it is finite, and throws otherwise: NaN and infinities are caught at
 * the door instead of travelling through a formula.
 *
 * @param functionName the function that asks, as the error names it
 * @param name the name of the parameter
 * @param value any number, in any unit
 * @returns value, unchanged
 * @throws RangeError when value is NaN or infinite
 * @example requireFinite('umToUin', 'um', 0.88) // 0.88
 */
export function requireFinite(functionName: string, name: string, value: number): number {
  if (!Number.isFinite(value)) {
    throw new RangeError(`${functionName} requires ${name} as a finite number, got ${value}`)
  }
  return value
}
