import { requireWhole } from '../check/require-whole.ts'

/**
 * Gives a decimal number as a whole count of units of 10^unitExponent, halves away from zero.
 *
 * count = round(coefficient x 10^(exponent - unitExponent))
 *
 * @param input coefficient: 0 or more; exponent, unitExponent: powers of ten, whole,
 *   from -400 to 400
 * @returns the whole count of units
 * @throws RangeError outside these ranges
 * Source: own code, exact whole-number arithmetic.
 * @example roundCoefficient({ coefficient: 1005n, exponent: -3, unitExponent: -2 }) // 101
 */
export function roundCoefficient(input: {
  readonly coefficient: bigint
  readonly exponent: number
  readonly unitExponent: number
}): bigint {
  const { coefficient, exponent, unitExponent } = input
  if (coefficient < 0n) {
    throw new RangeError(`roundCoefficient requires coefficient from 0, got ${coefficient}`)
  }
  const powers = { from: -400, to: 400 }
  requireWhole('roundCoefficient', 'exponent', exponent, powers)
  requireWhole('roundCoefficient', 'unitExponent', unitExponent, powers)
  const shift = exponent - unitExponent
  if (shift >= 0) return coefficient * 10n ** BigInt(shift)
  const divisor = 10n ** BigInt(-shift)
  return (coefficient + divisor / 2n) / divisor
}
