import { errorQuantity } from './error-quantity.ts'
import type { MeasurementModel } from './measurement-model.ts'
import { repeatedReadingModel } from './repeated-reading-model.ts'
import { type RoughnessInput, roughnessBudget } from './roughness-budget.ts'

/**
 * Gives the measurement model of a roughness Ra, for propagation of distributions; its result is in
 * um.
 *
 * meanUm + resolutionUm + calibrationUm + instrumentUm + referenceUm, as far as they are known
 *
 * @param input as roughnessBudget
 * @returns expression and quantities, whose standard uncertainties and distributions are those of
 *   the lines
 * @throws RangeError outside these ranges
 * Validity: as roughnessBudget and repeatedReadingModel.
 * Source: as roughnessBudget.
 * @example roughnessModel({ readingsUm: [0.2], largestErrorRelative: 0.1 }).expression.length // 21
 */
export function roughnessModel(input: RoughnessInput): MeasurementModel {
  const reference = roughnessBudget(input).filter((line) => line.source === 'reference')
  const figure = repeatedReadingModel(input, false)
  return {
    expression: [figure.expression, ...reference.map(() => 'referenceUm')].join(' + '),
    quantities: [
      ...figure.quantities,
      ...reference.map((line) => errorQuantity('referenceUm', line)),
    ],
  }
}
