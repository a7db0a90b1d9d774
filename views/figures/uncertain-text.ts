import type { Characteristic } from '../../src/domain/characteristic.ts'
import { printedUnit } from '../../src/domain/printed-unit.ts'
import { type UncertainFigure, uncertainFigure } from '../../src/domain/uncertain-figure.ts'
import type { Uncertainty } from '../../src/domain/uncertainty.ts'
import { tradeWords } from '../words/en/trade.ts'
import { type ResultText, resultText } from './result-text.ts'

type Doubt = Pick<Uncertainty, 'expandedUncertainty'> | null

/**
 * A result with its expanded uncertainty in one text: `0.588 ± 0.071` and its unit. Without an
 * uncertainty it is the bare result, rounded as its kind is.
 * @param value in the stored unit of its characteristic, as is the uncertainty
 */
export function uncertainText(
  characteristic: Characteristic,
  value: number,
  uncertainty: Doubt,
): ResultText {
  if (uncertainty === null) return resultText(characteristic, value)
  return { value: printed(characteristic, value, uncertainty).text, unit: unitOf(characteristic) }
}

/**
 * The same in parts, for where the value is set large and what follows ± is not. What needs a
 * power of ten stays one text in brackets.
 */
export function uncertainParts(
  characteristic: Characteristic,
  value: number,
  uncertainty: Doubt,
): ResultText & { readonly doubt?: string } {
  const whole = uncertainText(characteristic, value, uncertainty)
  const [first = '', second] = whole.value.split(' ± ')
  if (second === undefined || whole.value.startsWith('(')) return whole
  return { value: first, doubt: `± ${second}`, unit: whole.unit }
}

function printed(
  characteristic: Characteristic,
  value: number,
  { expandedUncertainty }: NonNullable<Doubt>,
): UncertainFigure {
  const { storedPerPrinted: factor } = printedUnit[characteristic]
  return uncertainFigure({
    value: value / factor,
    expandedUncertainty: expandedUncertainty / factor,
  })
}

function unitOf(characteristic: Characteristic): string {
  return tradeWords.unit[printedUnit[characteristic].unit]
}
