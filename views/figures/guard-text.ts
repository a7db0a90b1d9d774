import { formatFixed } from '../../src/science/rounding/format-fixed.ts'
import { numberText } from './number-text.ts'

/**
 * A limit of acceptance as text: to one place below the two digits of the uncertainty that it
 * comes from, without zeros at its end. Without uncertainty it is the limit as it was stated.
 * @example guardText(0.5342058549, 0.08) // 0.5342
 */
export function guardText(limit: number, expandedUncertainty: number): string {
  if (expandedUncertainty === 0) return numberText(limit)
  const decimals = 2 - Math.floor(Math.log10(expandedUncertainty))
  if (decimals > 15) return numberText(limit)
  return numberText(Number(formatFixed({ value: limit, decimals: Math.max(0, decimals) })))
}
