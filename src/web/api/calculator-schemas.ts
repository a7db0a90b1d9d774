import { conformityBounds, priorShapes } from '../../domain/parse-conformity-request.ts'
import { type quantityFields, uncertaintyBounds } from '../../domain/parse-uncertainty-request.ts'
import { conformityOutcomes, decisionRules } from '../../science/acceptance/decision-rule.ts'
import { distributions } from '../../science/uncertainty/distributions.ts'
import { answer, list, num, object, oneOf, text } from './json-schema.ts'

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
  apiUncertaintyRequest: object(
    {
      quantities: list(
        object(
          {
            name: text,
            value: num(uncertaintyBounds.number),
            distribution: oneOf(distributions),
            halfWidth: num(uncertaintyBounds.uncertainty),
            standardUncertainty: num(uncertaintyBounds.uncertainty),
            degreesOfFreedom: num(uncertaintyBounds.degreesOfFreedom),
          } satisfies Record<(typeof quantityFields)[number], unknown>,
          ['name', 'value', 'distribution'],
        ),
        uncertaintyBounds.quantityCount,
      ),
      model: text,
      probability: num(uncertaintyBounds.probability),
      monteCarlo: object(
        { trials: num(uncertaintyBounds.trials), seed: num(uncertaintyBounds.seed) },
        ['trials'],
      ),
    },
    ['quantities', 'model'],
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

const trialsAnswer = answer({
  mean: num(),
  standardDeviation: num(),
  shortestInterval: list(num()),
  symmetricInterval: list(num()),
  trials: num(),
  seed: num(),
})

const uncertainty = answer({
  method: text,
  value: num(),
  standardUncertainty: num(),
  expandedUncertainty: num(),
  coverageFactor: num(),
  effectiveDegreesOfFreedom: numberOrNull,
  probability: num(),
  secondOrderStandardUncertainty: numberOrNull,
  isNonlinear: { type: 'boolean' },
  budget: list({ type: 'object' }),
})

/** What they answer at least; the global risks come where a prior was stated. */
export const calculatorResponseSchemas = {
  apiUncertaintyAnswer: {
    ...uncertainty,
    properties: { ...uncertainty.properties, monteCarlo: trialsAnswer },
  },
  apiConformityAnswer: {
    ...decision,
    properties: {
      ...decision.properties,
      globalFalseAcceptRisk: num(),
      globalFalseRejectRisk: num(),
    },
  },
} as const
