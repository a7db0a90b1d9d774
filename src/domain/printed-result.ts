import type { Figure } from './certified-results.ts'
import type { Characteristic } from './characteristic.ts'
import { figure } from './figure.ts'
import { printedUnit } from './printed-unit.ts'
import { uncertainFigure } from './uncertain-figure.ts'
import type { Uncertainty } from './uncertainty.ts'

/**
 * A result as the certificate prints it, alone and with its expanded uncertainty in one text, in
 * the printed unit of its characteristic.
 * @param result value and uncertainty in the stored unit
 */
export function printedResult(result: {
  readonly characteristic: Characteristic
  readonly value: number
  /** Null where it is not known. */
  readonly uncertainty: Pick<Uncertainty, 'expandedUncertainty'> | null
}): { readonly value: Figure; readonly text: string } {
  const { storedPerPrinted, rounding } = printedUnit[result.characteristic]
  const value = result.value / storedPerPrinted
  if (result.uncertainty === null) {
    const bare = figure(value, rounding)
    return { value: bare, text: bare.text }
  }
  const expandedUncertainty = result.uncertainty.expandedUncertainty / storedPerPrinted
  return uncertainFigure({ value, expandedUncertainty })
}
