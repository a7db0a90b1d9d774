import { formatFixed } from '../science/rounding/format-fixed.ts'
import { formatSignificant } from '../science/rounding/format-significant.ts'
import type { Figure } from './certificate.ts'

/** How a figure is rounded for print: to decimals, or to significant digits. */
export type Rounding = { readonly decimals: number } | { readonly digits: number }

const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹'

/**
 * A number together with its printed form: minus sign and powers of ten as print has them.
 * @example figure(-0.00000943, { digits: 3 }).text // −9.43 × 10⁻⁶
 */
export function figure(value: number, rounding: Rounding): Figure {
  const plain =
    'decimals' in rounding
      ? formatFixed({ value, decimals: rounding.decimals })
      : formatSignificant({ value, digits: rounding.digits })
  const [digits = '', power] = plain.replace('-', '−').split('e')
  if (power === undefined) return { value, text: digits }
  const raised = [...power].map((sign) => superscripts[Number(sign)] ?? '⁻').join('')
  return { value, text: `${digits} × 10${raised}` }
}

/** The same for a value that may be missing. */
export function optionalFigure(value: number | null, rounding: Rounding): Figure | null {
  return value === null ? null : figure(value, rounding)
}
