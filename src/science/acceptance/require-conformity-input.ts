import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'

/** A measured value with what is known of it, and the limits that it is held against. */
export interface ConformityInput {
  readonly value: number
  readonly standardUncertainty: number
  readonly lowerLimit?: number | undefined
  readonly upperLimit?: number | undefined
  /** The quantity itself can't be below 0, as a length; what is known is cut there. */
  readonly isNonNegative?: boolean | undefined
}

/** A value further below 0, in standard uncertainties, can't be of a quantity without sign. */
const mostBelowZero = 30

/**
 * Checks a measured value and its limits, and gives them with an open side as an infinity.
 *
 * @param functionName the function that asks, as the error names it
 * @param input value, limits: finite, in one unit, at least one limit, lower below upper;
 *   standardUncertainty: from 0, in the same unit; isNonNegative: false unless stated
 * @returns value, u, the ends lower and upper (infinite where open), and isNonNegative
 * @throws RangeError when a number is missing or out of range
 * Source: own rule.
 * @example requireConformityInput('f', { value: 1, standardUncertainty: 0.1,
 *   upperLimit: 2 }).u // 0.1
 */
export function requireConformityInput(functionName: string, input: ConformityInput) {
  const { lowerLimit, upperLimit, isNonNegative = false } = input
  const value = requireFinite(functionName, 'value', input.value)
  const u = requireFinite(functionName, 'standardUncertainty', input.standardUncertainty)
  requireRange(functionName, 'standardUncertainty', u, { from: 0, to: Number.MAX_VALUE })
  if (lowerLimit === undefined && upperLimit === undefined) {
    throw new RangeError(`${functionName} requires lowerLimit or upperLimit, got neither`)
  }
  if (lowerLimit !== undefined) requireFinite(functionName, 'lowerLimit', lowerLimit)
  if (upperLimit !== undefined) requireFinite(functionName, 'upperLimit', upperLimit)
  const lower = lowerLimit ?? Number.NEGATIVE_INFINITY
  const upper = upperLimit ?? Number.POSITIVE_INFINITY
  if (lower >= upper) {
    throw new RangeError(
      `${functionName} requires lowerLimit below upperLimit, got ${lower} and ${upper}`,
    )
  }
  if (isNonNegative && value < -mostBelowZero * u) {
    const from = -mostBelowZero * u
    throw new RangeError(
      `${functionName} requires value from ${from} where nothing is below 0, got ${value}`,
    )
  }
  return { value, u, lower, upper, isNonNegative }
}
