import { requireRange } from '../check/require-range.ts'
import { normalQuantile } from '../statistics/normal-quantile.ts'
import { studentTQuantile } from '../statistics/student-t-quantile.ts'
import { type BudgetLine, budgetLine } from './budget-line.ts'
import { combinedStandardUncertainty } from './combined-standard-uncertainty.ts'
import { effectiveDegreesOfFreedom } from './effective-degrees-of-freedom.ts'
import { evaluateDual } from './expression/evaluate-dual.ts'
import { ModelFault } from './expression/model-fault.ts'
import { parseExpression } from './expression/parse-expression.ts'
import type { MeasurementModel } from './measurement-model.ts'

/** A result and its uncertainty by the law of propagation. */
export interface LinearEvaluation {
  readonly value: number
  readonly standardUncertainty: number
  readonly expandedUncertainty: number
  readonly coverageFactor: number
  /** Not rounded; null stands for infinitely many. */
  readonly effectiveDegreesOfFreedom: number | null
  readonly budget: readonly BudgetLine[]
}

/**
 * Evaluates a measurement model by the law of propagation of uncertainty.
 *
 * u^2 = sum of (df/dx u(x))^2; U = k u, k = Student's t for the effective degrees of freedom
 * (Welch-Satterthwaite), cut off to a whole number
 *
 * @param model expression and quantities, which are independent of each other
 * @param options probability that U covers, from 0.01 to 0.9999
 * @returns value, u, U, k, degrees of freedom, and a line for each quantity by its name
 * @throws RangeError outside this range; ModelFault where the expression can't be read, a name has
 *   no quantity, or value, derivative or U is not finite
 * Validity: to first order; compare with monteCarlo or secondOrderVariance where the model is
 *   curved over the width of u.
 * Source: JCGM 100:2008, equations (10), (G.2b) and G.4.1 for the cutting off.
 * @example evaluateLinear({ expression: '2 * x', quantities: [{ name: 'x', value: 3,
 *   distribution: 'normal', standardUncertainty: 1, degreesOfFreedom: null }] },
 *   { probability: 0.95 }).expandedUncertainty // 3.92
 */
export function evaluateLinear(
  model: MeasurementModel,
  options: { readonly probability: number },
): LinearEvaluation {
  const { probability } = options
  requireRange('evaluateLinear', 'probability', probability, { from: 0.01, to: 0.9999 })
  const node = parseExpression(model.expression)
  const values = new Map(model.quantities.map((one) => [one.name, one.value]))
  const { value } = evaluateDual(node, values, '')
  if (!Number.isFinite(value)) throw new ModelFault('not-finite', 0)
  const budget = model.quantities.map((quantity) => {
    const { slope } = evaluateDual(node, values, quantity.name)
    if (!Number.isFinite(slope)) throw new ModelFault('not-finite', 0)
    return budgetLine({
      source: quantity.name,
      value: quantity.standardUncertainty,
      distribution: quantity.distribution,
      sensitivity: slope,
      ...(quantity.degreesOfFreedom === null
        ? {}
        : { degreesOfFreedom: quantity.degreesOfFreedom }),
    })
  })
  const standardUncertainty = combinedStandardUncertainty(budget)
  const effective =
    standardUncertainty === 0 ? Number.POSITIVE_INFINITY : effectiveDegreesOfFreedom(budget)
  const coverageFactor = factorOf(probability, effective)
  const expandedUncertainty = coverageFactor * standardUncertainty
  if (!Number.isFinite(expandedUncertainty)) throw new ModelFault('not-finite', 0)
  return {
    value,
    standardUncertainty,
    expandedUncertainty,
    coverageFactor,
    effectiveDegreesOfFreedom: Number.isFinite(effective) ? effective : null,
    budget,
  }
}

/** 99 degrees of freedom of one source come out as 98.999999999999986: they are not cut to 98. */
const forgivenRounding = 1e-9

/** Below one degree of freedom there is nothing whole to cut off to. */
function factorOf(probability: number, effective: number): number {
  const upper = (1 + probability) / 2
  if (effective >= 1e6) return normalQuantile(upper)
  const whole = Math.floor(effective * (1 + forgivenRounding))
  const degreesOfFreedom = whole < 1 ? Math.max(0.5, effective) : whole
  return studentTQuantile({ probability: upper, degreesOfFreedom })
}
