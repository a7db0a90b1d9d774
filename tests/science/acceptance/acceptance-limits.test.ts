import { describe, expect, it } from 'vitest'
import { acceptanceLimits } from '../../../src/science/acceptance/acceptance-limits.ts'
import { conformanceProbability } from '../../../src/science/acceptance/conformance-probability.ts'
import { type DecisionRule, decisionRules } from '../../../src/science/acceptance/decision-rule.ts'
import { readReference } from '../read-reference.ts'

type Case = {
  source: string
  rule: DecisionRule
  upperLimit: number
  standardUncertainty: number
  guard: number
  acceptance: number
}
const cases = readReference<Case[]>('acceptance/acceptance-limits.json')
const known = { expandedUncertainty: 0.2, standardUncertainty: 0.1, probability: 0.95 }

describe('acceptanceLimits', () => {
  it.each(cases)('accepts up to $acceptance below $upperLimit ($source)', (one) => {
    const { acceptance } = acceptanceLimits({
      ...one,
      expandedUncertainty: 2 * one.standardUncertainty,
      probability: 0.95,
    })
    // Values recomputed in doubles; what is left is rounding.
    expect(acceptance.upper).toBeCloseTo(one.acceptance, 14)
    expect(one.upperLimit - (acceptance.upper ?? 0)).toBeCloseTo(one.guard, 14)
    expect(acceptance.lower).toBeNull()
  })

  it.each(decisionRules)('mirrors the two sides of %s', (rule) => {
    const upper = acceptanceLimits({ upperLimit: 1, rule, ...known })
    const lower = acceptanceLimits({ lowerLimit: -1, rule, ...known })
    expect(lower.acceptance.lower).toBe(-(upper.acceptance.upper ?? Number.NaN))
    expect(lower.rejection.lower).toBe(-(upper.rejection.upper ?? Number.NaN))
    expect([lower.acceptance.upper, lower.rejection.upper]).toEqual([null, null])
  })

  it('rejects where it no longer accepts by the rules that know only pass and fail', () => {
    for (const rule of ['simple', 'guard-u95'] as const) {
      const { acceptance, rejection } = acceptanceLimits({ upperLimit: 1, rule, ...known })
      expect(rejection).toEqual(acceptance)
    }
    const four = acceptanceLimits({ upperLimit: 1, rule: 'four-outcomes', ...known })
    expect([four.acceptance.upper, four.rejection.upper]).toEqual([0.8, 1.2])
  })

  it('sets the guard band so that at its edge the stated probability is reached', () => {
    for (const probability of [0.6, 0.9, 0.95, 0.999]) {
      const { acceptance, rejection } = acceptanceLimits({
        upperLimit: 1,
        rule: 'guard-probability',
        ...known,
        probability,
      })
      const pc = (value: number | null) =>
        conformanceProbability({ value: value ?? 0, standardUncertainty: 0.1, upperLimit: 1 })
      // roundings
      expect(pc(acceptance.upper)).toBeCloseTo(probability, 13)
      expect(pc(rejection.upper)).toBeCloseTo(1 - probability, 13)
    }
  })

  it('crosses its limits where nothing could be accepted', () => {
    const input = { lowerLimit: 0, upperLimit: 0.3, rule: 'guard-u95', ...known } as const
    const { lower, upper } = acceptanceLimits(input).acceptance
    expect(lower).toBeGreaterThan(upper ?? Number.NaN)
  })

  it.each([
    { expandedUncertainty: -1 },
    { standardUncertainty: Number.NaN },
    { probability: 0.4 },
    { probability: 1 },
    { upperLimit: Number.POSITIVE_INFINITY },
    { lowerLimit: Number.NaN },
  ])('refuses %o', (wrong) => {
    const input = { upperLimit: 1, rule: 'simple', ...known, ...wrong } as const
    expect(() => acceptanceLimits(input)).toThrow(RangeError)
  })
})
