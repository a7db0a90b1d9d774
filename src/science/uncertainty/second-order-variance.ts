import { evaluateSlopes } from './expression/evaluate-slopes.ts'
import { parseExpression } from './expression/parse-expression.ts'
import type { MeasurementModel } from './measurement-model.ts'

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
  const slopesMoved = (name: string, by: number): ReadonlyMap<string, number> =>
    evaluateSlopes(node, new Map(centre).set(name, (centre.get(name) ?? 0) + by))
  const middles = evaluateSlopes(node, centre)
  let variance = 0
  for (const { name, standardUncertainty: u } of uncertain) {
    const [lows, highs] = [slopesMoved(name, -stepInU * u), slopesMoved(name, stepInU * u)]
    for (const other of uncertain) {
      const of = (slopes: ReadonlyMap<string, number>) => slopes.get(other.name) ?? 0
      variance += termOf(of(lows), of(middles), of(highs)) * other.standardUncertainty ** 2
    }
  }
  return variance
}

/** Derivatives by j in units of u_j: the factors u_j^2 of the formula are in them already. */
function termOf(low: number, middle: number, high: number): number {
  const second = (high - low) / (2 * stepInU)
  const third = (high - 2 * middle + low) / stepInU ** 2
  return second ** 2 / 2 + middle * third
}
