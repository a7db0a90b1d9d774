import { describe, expect, it } from 'vitest'
import { answerConformity } from '../../src/domain/answer-conformity.ts'
import type { ConformityRequest } from '../../src/domain/parse-conformity-request.ts'
import { decisionRules } from '../../src/science/acceptance/decision-rule.ts'

const request: ConformityRequest = {
  value: 1.5,
  standardUncertainty: 0.25,
  expandedUncertainty: 0.5,
  lowerLimit: undefined,
  upperLimit: 2,
  rule: 'simple',
  probability: 0.95,
  isNonNegative: false,
  uncertaintyShareAtMost: 1 / 3,
  prior: null,
}
const gamma = { mean: 1, standardDeviation: 0.5, shape: 'gamma' } as const

describe('answerConformity', () => {
  it('carries the decision, what it was made by, and the method', () => {
    expect(answerConformity(request)).toMatchObject({
      outcome: 'pass',
      rule: 'simple',
      probability: 0.95,
      acceptanceLimits: { lower: null, upper: 2 },
      expandedUncertainty: 0.5,
      uncertaintyShare: 0.25,
      method: 'acceptance/conformity 1',
    })
    expect(answerConformity(request)).not.toHaveProperty('globalFalseAcceptRisk')
  })

  it('gives the risks over many items where a prior is stated', () => {
    // Gamma prior of mean 1 and deviation 0.5, u 0.25, limit 2: double integral by SciPy.
    const answer = answerConformity({ ...request, prior: gamma })
    expect(answer.globalFalseAcceptRisk).toBeCloseTo(0.008019112, 8)
    expect(answer.globalFalseRejectRisk).toBeCloseTo(0.01744457, 8)
    const normal = { mean: 0, standardDeviation: 0.12, shape: 'normal' } as const
    // Normal prior, u 0.04, limits ±0.2: double integral by SciPy, confirmed by simulation.
    const shaft = answerConformity({
      ...request,
      value: 0.1,
      standardUncertainty: 0.04,
      expandedUncertainty: 0.08,
      lowerLimit: -0.2,
      upperLimit: 0.2,
      prior: normal,
    })
    expect(shaft.globalFalseAcceptRisk).toBeCloseTo(0.0189422, 7)
    expect(shaft.globalFalseRejectRisk).toBeCloseTo(0.0372078, 7)
  })

  it('counts a conditional pass as accepted, and a guard band as refused', () => {
    const risks = decisionRules.map(
      (rule) => answerConformity({ ...request, rule, prior: gamma }).globalFalseAcceptRisk ?? -1,
    )
    const [simple, guard, proven, four] = risks as [number, number, number, number]
    expect(four).toBe(simple)
    expect(guard).toBeLessThan(proven)
    expect(proven).toBeLessThan(simple)
  })
})
