import { formatWithUncertainty } from '../science/rounding/format-with-uncertainty.ts'
import { roundForPrint } from '../science/rounding/round-for-print.ts'
import type { Figure } from './certified-results.ts'

/** A result with its expanded uncertainty as they are printed, rounded to the same place. */
export type UncertainFigure = {
  readonly value: Figure
  readonly expandedUncertainty: Figure
  /** Both in one: `0.588 ± 0.071`, `(9.43 ± 0.33) × 10⁻⁶`. */
  readonly text: string
}

const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹'

/**
 * The one way in which a result and its uncertainty are printed.
 * @param input both in the unit that is printed
 * @example uncertainFigure({ value: 0.5875618, expandedUncertainty: 0.0713 }).text // 0.588 ± 0.071
 */
export function uncertainFigure(input: {
  readonly value: number
  readonly expandedUncertainty: number
}): UncertainFigure {
  const printed = formatWithUncertainty(input)
  const valueText = printed.valueText.replace('-', '−')
  const { uncertaintyText, power } = printed
  const times = power === 0 ? '' : ` × 10${raised(power)}`
  const pair = `${valueText} ± ${uncertaintyText}`
  return {
    value: { value: input.value, text: `${valueText}${times}` },
    expandedUncertainty: { value: input.expandedUncertainty, text: `${uncertaintyText}${times}` },
    text: power === 0 ? pair : `(${pair})${times}`,
  }
}

/** The coverage factor, `2` or `2.37`: to two decimals where it needs them. */
export function coverageFactorText(coverageFactor: number): string {
  return String(roundForPrint({ value: coverageFactor, decimals: 2 }))
}

function raised(power: number): string {
  return [...String(power)].map((sign) => superscripts[Number(sign)] ?? '⁻').join('')
}
