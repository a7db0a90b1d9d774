import { evaluateLinear, type LinearEvaluation } from '../science/uncertainty/evaluate-linear.ts'
import { secondOrderVariance } from '../science/uncertainty/second-order-variance.ts'
import { methods } from './methods.ts'
import type { UncertaintyRequest } from './parse-uncertainty-request.ts'

export type UncertaintyAnswer = LinearEvaluation & {
  readonly method: string
  readonly probability: number
  /** With the next terms of the series; null where these leave nothing of it, or have no end. */
  readonly secondOrderStandardUncertainty: number | null
  /** The next terms change the standard uncertainty by more than a twentieth. */
  readonly isNonlinear: boolean
}

/** A change of u that would show in its two digits (own choice). */
const noticedShare = 0.05

/**
 * The linear evaluation of a model, and whether it can be trusted; no record is made.
 * @throws ModelFault not-finite where value or derivatives are not finite
 */
export function answerUncertainty(request: UncertaintyRequest): UncertaintyAnswer {
  const { model, probability } = request
  const linear = evaluateLinear(model, { probability })
  const u = linear.standardUncertainty
  const variance = u * u + secondOrderVariance(model)
  const second = variance >= 0 && Number.isFinite(variance) ? Math.sqrt(variance) : null
  return {
    ...linear,
    probability,
    secondOrderStandardUncertainty: second,
    isNonlinear: second === null || Math.abs(second - u) > noticedShare * Math.max(u, second),
    method: methods.uncertaintyModel,
  }
}
