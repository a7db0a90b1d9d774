import { evaluateDual } from './expression/evaluate-dual.ts'
import { parseExpression } from './expression/parse-expression.ts'
import type { MeasurementModel, ModelQuantity } from './measurement-model.ts'

/** A tenth of u: the model is looked at over the width that matters, and rounding stays small. */
const stepInU = 0.1

/**
 * Gives what the next terms of the series add to the variance of a linear evaluation: how curved
 * the model is over the width of its uncertainties.
 *
 * sum over i and j of (f_ij^2 / 2 + f_i f_ijj) u_i^2 u_j^2
 *
 * @param model expression and quantities, which are independent of each other
 * @returns the sum, in the square of the result's unit; may be negative; 0 for a linear model
 * @throws ModelFault where the expression can't be read or a name has no quantity
 * Validity: for quantities that are normally distributed; second and third derivatives from
 *   differences of exact first ones, good to about 1 %.
 * Source: JCGM 100:2008, note to 5.1.2; H.1.7.
 * @example secondOrderVariance({ expression: 'x^2', quantities: [{ name: 'x', value: 0,
 *   distribution: 'normal', standardUncertainty: 1, degreesOfFreedom: null }] }) // 2
 */
export function secondOrderVariance(model: MeasurementModel): number {
  const node = parseExpression(model.expression)
  const centre = new Map(model.quantities.map((one) => [one.name, one.value]))
  const uncertain = model.quantities.filter((one) => one.standardUncertainty > 0)
  const slopeAt = (of: ModelQuantity, moved: ModelQuantity, by: number): number => {
    const values = new Map(centre).set(moved.name, moved.value + by * moved.standardUncertainty)
    return evaluateDual(node, values, of.name).slope
  }
  let variance = 0
  for (const i of uncertain) {
    for (const j of uncertain) {
      const [low, middle, high] = [
        slopeAt(i, j, -stepInU),
        slopeAt(i, j, 0),
        slopeAt(i, j, stepInU),
      ]
      // Derivatives by j in units of u_j: the factors u_j^2 of the formula are in them already.
      const second = (high - low) / (2 * stepInU)
      const third = (high - 2 * middle + low) / stepInU ** 2
      variance += (second ** 2 / 2 + middle * third) * i.standardUncertainty ** 2
    }
  }
  return variance
}
