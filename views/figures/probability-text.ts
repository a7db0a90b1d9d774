import { percentText } from './percent-text.ts'

/**
 * A probability as percent: a tail of what is known is never nothing, so its ends are bounds.
 * @param probability from 0 to 1
 * @example probabilityText(1) // > 99.9 %
 */
export function probabilityText(probability: number): string {
  if (probability >= 0.9995) return '> 99.9 %'
  return probability < 0.0005 ? '< 0.1 %' : percentText(probability)
}
