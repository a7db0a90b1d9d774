import type { Characteristic } from '../../src/domain/characteristic.ts'
import { printedUnit } from '../../src/domain/printed-unit.ts'
import { uncertainFigure } from '../../src/domain/uncertain-figure.ts'
import type { Uncertainty } from '../../src/domain/uncertainty.ts'
import { tradeWords } from '../words/en/trade.ts'
import { type ResultText, resultText } from './result-text.ts'

/**
 * A result with its expanded uncertainty: `0.588 ± 0.071` and its unit. Without an uncertainty it
 * is the bare result, rounded as its kind is.
 * @param value in the stored unit of its characteristic, as is the uncertainty
 */
export function uncertainText(
  characteristic: Characteristic,
  value: number,
  uncertainty: Pick<Uncertainty, 'expandedUncertainty'> | null,
): ResultText {
  if (uncertainty === null) return resultText(characteristic, value)
  const { unit, storedPerPrinted } = printedUnit[characteristic]
  const { text } = uncertainFigure({
    value: value / storedPerPrinted,
    expandedUncertainty: uncertainty.expandedUncertainty / storedPerPrinted,
  })
  return { value: text, unit: tradeWords.unit[unit] }
}
