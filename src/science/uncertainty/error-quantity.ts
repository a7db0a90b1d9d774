import type { BudgetLine } from './budget-line.ts'
import type { ModelQuantity } from './measurement-model.ts'

/**
 * Gives a line of a budget as a quantity of a measurement model: an error that is expected to be
 * 0 and scatters as the line says.
 *
 * @param name as the expression names it: a letter, then letters and digits
 * @param line of a budget; its sensitivity is left to the expression
 * @returns the quantity in the unit of the line's source: value 0, distribution, standard
 *   uncertainty and degrees of freedom of the line
 * Source: JCGM 100:2008, 4.1.2, corrections of the value 0.
 * @example errorQuantity('flatUm', { source: 'optical-flat', value: 0.0144,
 *   distribution: 'rectangular', sensitivity: 1, contribution: 0.0144,
 *   degreesOfFreedom: null }).standardUncertainty // 0.0144
 */
export function errorQuantity(name: string, line: BudgetLine): ModelQuantity {
  return {
    name,
    value: 0,
    distribution: line.distribution,
    standardUncertainty: line.value,
    degreesOfFreedom: line.degreesOfFreedom,
  }
}
