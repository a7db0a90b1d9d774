import { formatFixed } from '../science/rounding/format-fixed.ts'
import { formatSignificant } from '../science/rounding/format-significant.ts'
import type { Figure } from './certified-results.ts'

/**
 * How a figure is rounded for print: to decimals, to significant digits, or not at all, for what
 * a person entered.
 */
export type Rounding = { readonly decimals: number } | { readonly digits: number } | 'as-entered'

const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹'

/**
 * A number together with its printed form: minus sign and powers of ten as print has them.
 * @example figure(-0.00000943, { digits: 3 }).text // −9.43 × 10⁻⁶
 */
export function figure(value: number, rounding: Rounding): Figure {
  const plain = plainText(value, rounding)
  const [digits = '', power] = plain.replace('-', '−').split('e')
  if (power === undefined) return { value, text: digits }
  const raised = [...power.replace('+', '')]
    .map((sign) => superscripts[Number(sign)] ?? '⁻')
    .join('')
  return { value, text: `${digits} × 10${raised}` }
}

function plainText(value: number, rounding: Rounding): string {
  if (rounding === 'as-entered') return String(value)
  return 'decimals' in rounding
    ? formatFixed({ value, decimals: rounding.decimals })
    : formatSignificant({ value, digits: rounding.digits })
}

/** The same for a value that may be missing. */
export function optionalFigure(value: number | null, rounding: Rounding): Figure | null {
  return value === null ? null : figure(value, rounding)
}
