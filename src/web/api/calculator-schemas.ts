import { conformityBounds, priorShapes } from '../../domain/parse-conformity-request.ts'
import { conformityOutcomes, decisionRules } from '../../science/acceptance/decision-rule.ts'
import { answer, num, object, oneOf, text } from './json-schema.ts'

const numberOrNull = { type: ['number', 'null'] }
const sides = answer({ lower: numberOrNull, upper: numberOrNull })

/** What the calculators of decisions take. */
export const calculatorRequestSchemas = {
  apiConformityRequest: object(
    {
      value: num(conformityBounds.number),
      standardUncertainty: num(conformityBounds.uncertainty),
      expandedUncertainty: num(conformityBounds.uncertainty),
      lowerLimit: num(conformityBounds.number),
      upperLimit: num(conformityBounds.number),
      rule: oneOf(decisionRules),
      probability: num(conformityBounds.probability),
      nonNegative: { type: 'boolean' },
      uncertaintyShareAtMost: num(conformityBounds.share),
      prior: object(
        {
          mean: num(conformityBounds.number),
          standardDeviation: num(conformityBounds.deviation),
          shape: oneOf(priorShapes),
        },
        ['mean', 'standardDeviation', 'shape'],
      ),
    },
    ['value', 'standardUncertainty', 'rule'],
  ),
} as const

const decision = answer({
  method: text,
  outcome: oneOf(conformityOutcomes),
  acceptanceLimits: sides,
  rejectionLimits: sides,
  conformanceProbability: num(),
  falseAcceptRisk: num(),
  falseRejectRisk: num(),
  uncertaintyShare: numberOrNull,
  isUncertaintyTooLarge: { type: 'boolean' },
  standardUncertainty: num(),
  expandedUncertainty: num(),
  uncertaintyShareAtMost: num(),
  rule: oneOf(decisionRules),
  probability: num(),
})

/** What they answer at least; the global risks come where a prior was stated. */
export const calculatorResponseSchemas = {
  apiConformityAnswer: {
    ...decision,
    properties: {
      ...decision.properties,
      globalFalseAcceptRisk: num(),
      globalFalseRejectRisk: num(),
    },
  },
} as const
