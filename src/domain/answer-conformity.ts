import {
  type ConformityDecision,
  decideConformity,
} from '../science/acceptance/decide-conformity.ts'
import type { DecisionRule } from '../science/acceptance/decision-rule.ts'
import type { GlobalRisk } from '../science/acceptance/global-risk.ts'
import { globalRiskGamma } from '../science/acceptance/global-risk-gamma.ts'
import { globalRiskNormal } from '../science/acceptance/global-risk-normal.ts'
import { methods } from './methods.ts'
import type { ConformityRequest, Prior } from './parse-conformity-request.ts'

export type ConformityAnswer = ConformityDecision & {
  readonly rule: DecisionRule
  readonly probability: number
  readonly standardUncertainty: number
  readonly expandedUncertainty: number
  readonly uncertaintyShareAtMost: number
  readonly method: string
  /** Over many items, where it was said how they scatter. */
  readonly globalFalseAcceptRisk?: number
  readonly globalFalseRejectRisk?: number
}

/** Whether a result conforms, by the stated rule, with what that risks. No record is made. */
export function answerConformity(request: ConformityRequest): ConformityAnswer {
  const { rule, probability, standardUncertainty, expandedUncertainty, prior } = request
  const decision = decideConformity(request)
  return {
    ...decision,
    rule,
    probability,
    standardUncertainty,
    expandedUncertainty,
    uncertaintyShareAtMost: request.uncertaintyShareAtMost,
    ...(prior === null ? {} : globalRisks(request, prior, decision)),
    method: methods.conformity,
  }
}

/** A conditional pass is accepted too: of four outcomes the limits themselves accept. */
function globalRisks(request: ConformityRequest, prior: Prior, decision: ConformityDecision) {
  const { lowerLimit, upperLimit, standardUncertainty, rule } = request
  const { lower, upper } = decision.acceptanceLimits
  const isFour = rule === 'four-outcomes'
  const limits = {
    lowerLimit,
    upperLimit,
    lowerAcceptanceLimit: isFour ? lowerLimit : (lower ?? undefined),
    upperAcceptanceLimit: isFour ? upperLimit : (upper ?? undefined),
  }
  const many = { measurementUncertainty: standardUncertainty, limits }
  const risk = riskOf[prior.shape](prior, many)
  return {
    globalFalseAcceptRisk: risk.falseAcceptRisk,
    globalFalseRejectRisk: risk.falseRejectRisk,
  }
}

type Many = Pick<Parameters<typeof globalRiskNormal>[0], 'measurementUncertainty' | 'limits'>

const riskOf: Readonly<Record<Prior['shape'], (prior: Prior, many: Many) => GlobalRisk>> = {
  normal: ({ mean, standardDeviation }, many) =>
    globalRiskNormal({ mean, standardDeviation, ...many }),
  gamma: ({ mean, standardDeviation }, many) =>
    globalRiskGamma({
      shape: (mean / standardDeviation) ** 2,
      scale: standardDeviation ** 2 / mean,
      ...many,
    }),
}
