import { describe, expect, it } from 'vitest'
import {
  type DecideConformityInput,
  decideConformity,
} from '../../../src/science/acceptance/decide-conformity.ts'
import {
  type ConformityOutcome,
  type DecisionRule,
  decisionRules,
} from '../../../src/science/acceptance/decision-rule.ts'
import { readReference } from '../read-reference.ts'
import { seededUniform } from '../seeded-random.ts'

type Case = DecideConformityInput & { source: string; outcome: ConformityOutcome }
const cases = readReference<Case[]>('acceptance/decisions.json')

/** Seeded inputs of every rule with upper, lower or both limits, near the limits. */
function randomInputs(seed: number, count: number): DecideConformityInput[] {
  const uniform = seededUniform(seed)
  return Array.from({ length: count }, (_, turn) => {
    const lower = 0.5 + uniform()
    const upper = lower + 0.5 + uniform()
    const standardUncertainty = 0.15 * uniform() ** 2
    const nearby = (4 * uniform() - 2) * 2 * standardUncertainty
    return {
      value: (uniform() < 0.5 ? lower : upper) + nearby,
      standardUncertainty,
      ...(turn % 3 === 0 ? {} : { lowerLimit: lower }),
      ...(turn % 3 === 1 ? {} : { upperLimit: upper }),
      rule: decisionRules[turn % decisionRules.length] as DecisionRule,
      uncertaintyShareAtMost: 1,
    }
  })
}

const accepts = (input: DecideConformityInput) =>
  ['pass', 'conditional-pass'].includes(decideConformity(input).outcome)

describe('decideConformity', () => {
  it.each(cases)('says $outcome at $value by $rule ($source)', ({ source, outcome, ...input }) => {
    expect(source).not.toBe('')
    expect(decideConformity(input).outcome).toBe(outcome)
  })

  it('accepts 2.80 below 3.00 with a risk of 4.78 %', () => {
    const decision = decideConformity({
      value: 2.8,
      standardUncertainty: 0.12,
      upperLimit: 3,
      rule: 'simple',
    })
    // Training note, two printed decimals of a percent.
    expect(decision.conformanceProbability * 100).toBeCloseTo(95.22, 2)
    expect(decision.falseAcceptRisk * 100).toBeCloseTo(4.78, 2)
    expect(decision.falseRejectRisk).toBe(0)
  })

  it.each([
    [1.74, 97.72],
    [1.9, 77.91],
    [2, 50],
  ])('knows at %s below 2.00 the probability of conformity, %s %%', (value, percent) => {
    const input = { value, standardUncertainty: 0.13, upperLimit: 2, rule: 'simple' } as const
    // Training note, two printed decimals of a percent.
    expect(decideConformity(input).conformanceProbability * 100).toBeCloseTo(percent, 2)
  })

  it('tells what a rejection risks, and for no decision what either would', () => {
    const input = { standardUncertainty: 0.04, upperLimit: 0.6, rule: 'guard-probability' } as const
    const open = decideConformity({ ...input, value: 0.55 })
    // Normal distribution function, SciPy.
    expect(open.falseRejectRisk).toBeCloseTo(0.8943502263, 10)
    expect(open.falseAcceptRisk).toBeCloseTo(1 - 0.8943502263, 10)
    const failed = decideConformity({ ...input, value: 0.67 })
    expect(failed.falseAcceptRisk).toBe(0)
    expect(failed.falseRejectRisk).toBeCloseTo(0.040_059_156_86, 10) // Phi(-1.75)
  })

  it('has a proven outcome at the very edge of each zone', () => {
    const at = (value: number) =>
      decideConformity({
        value,
        standardUncertainty: 0.04,
        upperLimit: 0.6,
        rule: 'guard-probability',
      })
    const { acceptanceLimits, rejectionLimits } = at(0.5)
    expect(at(acceptanceLimits.upper ?? 0).outcome).toBe('pass')
    expect(at(rejectionLimits.upper ?? 0).outcome).toBe('fail')
    expect(at((acceptanceLimits.upper ?? 0) + 1e-9).outcome).toBe('undecidable')
    expect(at((rejectionLimits.upper ?? 0) - 1e-9).outcome).toBe('undecidable')
  })

  it('forgives the rounding of the computer at a limit and at a guard band', () => {
    const value = (3 * 587.6) / 2000
    const input = { value, standardUncertainty: 0.01, upperLimit: 0.8814, rule: 'simple' } as const
    expect(decideConformity(input).outcome).toBe('pass')
    // 0.3 - 0.1 is 0.19999999999999998, and 0.1 / 0.3 is more than a third
    const guarded = { value: 0.2, standardUncertainty: 0.05, upperLimit: 0.3 }
    expect(decideConformity({ ...guarded, rule: 'guard-u95' }).outcome).toBe('pass')
  })

  it('decides nothing where U takes up more than the share, unless far beyond', () => {
    for (const rule of decisionRules) {
      const at = (value: number) =>
        decideConformity({ value, standardUncertainty: 0.2, upperLimit: 1, rule })
      expect(at(0.1)).toMatchObject({ outcome: 'undecidable', isUncertaintyTooLarge: true })
      expect(at(1.4).outcome).toBe('undecidable')
      expect(at(1.41).outcome).toBe('fail')
      const low = { value: 0.59, standardUncertainty: 0.2, lowerLimit: 1, rule }
      expect(decideConformity(low).outcome).toBe('fail')
      const two = { value: 0.5, standardUncertainty: 0.2, lowerLimit: 0, upperLimit: 1, rule }
      expect(decideConformity(two).outcome).toBe('undecidable')
    }
  })

  it('takes the share as it is given, and a third exactly is not too much', () => {
    const input = {
      value: 0.1,
      standardUncertainty: 0.5 / 3,
      upperLimit: 1,
      rule: 'simple',
    } as const
    expect(decideConformity(input)).toMatchObject({ outcome: 'pass', isUncertaintyTooLarge: false })
    expect(decideConformity(input).uncertaintyShare).toBeCloseTo(1 / 3, 15) // rounding
    const strict = { ...input, uncertaintyShareAtMost: 0.1 }
    expect(decideConformity(strict).outcome).toBe('undecidable')
    const lax = { ...input, standardUncertainty: 0.4, uncertaintyShareAtMost: 1 }
    expect(decideConformity(lax).outcome).toBe('pass')
  })

  it('knows no share of one limit of 0, nor calls it too large', () => {
    const input = { value: -1, standardUncertainty: 0.2, upperLimit: 0, rule: 'guard-u95' } as const
    expect(decideConformity(input)).toMatchObject({
      outcome: 'pass',
      uncertaintyShare: null,
      isUncertaintyTooLarge: false,
    })
  })

  it('decides nothing where the guard bands leave nothing to accept', () => {
    const input = {
      value: 0.5,
      standardUncertainty: 0.3,
      lowerLimit: 0,
      upperLimit: 1,
      rule: 'guard-u95',
      uncertaintyShareAtMost: 1,
    } as const
    const decision = decideConformity(input)
    expect(decision).toMatchObject({ outcome: 'undecidable', isUncertaintyTooLarge: false })
    expect(decideConformity({ ...input, value: 1.7 }).outcome).toBe('fail')
  })

  it('takes an expanded uncertainty with a factor other than 2', () => {
    const input = {
      value: 0.88,
      standardUncertainty: 0.05,
      upperLimit: 1,
      rule: 'guard-u95',
    } as const
    expect(decideConformity(input).outcome).toBe('pass')
    expect(decideConformity({ ...input, expandedUncertainty: 0.15 }).outcome).toBe('fail')
  })

  it('passes at the limit without uncertainty, by every rule', () => {
    for (const rule of decisionRules) {
      const at = (value: number) =>
        decideConformity({ value, standardUncertainty: 0, upperLimit: 1, rule })
      expect(at(1)).toMatchObject({ outcome: 'pass', falseAcceptRisk: 0, uncertaintyShare: 0 })
      expect(at(1.001)).toMatchObject({ outcome: 'fail', falseRejectRisk: 0 })
    }
  })

  it('never accepts behind a guard band what simple acceptance refuses', () => {
    let acceptedCount = 0
    for (const input of randomInputs(1, 4000)) {
      if (!accepts(input)) continue
      acceptedCount++
      expect(accepts({ ...input, rule: 'simple' })).toBe(true)
    }
    expect(acceptedCount).toBeGreaterThan(500)
  })

  it('bounds the risk that it promises', () => {
    for (const input of randomInputs(2, 2000)) {
      const oneSided = { ...input, lowerLimit: undefined, upperLimit: 1.5, probability: 0.97 }
      const decision = decideConformity({ ...oneSided, rule: 'guard-probability' })
      // Rounding of the quantile.
      if (decision.outcome === 'pass') expect(decision.falseAcceptRisk).toBeLessThan(0.03 + 1e-9)
      if (decision.outcome === 'fail') expect(decision.falseRejectRisk).toBeLessThan(0.03 + 1e-9)
      const guarded = decideConformity({ ...oneSided, rule: 'guard-u95' })
      // 2 u, one-sided: 2.275 %
      if (guarded.outcome === 'pass') expect(guarded.falseAcceptRisk).toBeLessThan(0.02276)
    }
  })

  it('decides the same in another unit', () => {
    const seen = new Set<string>()
    for (const input of randomInputs(3, 3000)) {
      const { lowerLimit, upperLimit } = input
      const scaled = (factor: number) =>
        decideConformity({
          ...input,
          value: input.value * factor,
          standardUncertainty: input.standardUncertainty * factor,
          lowerLimit: lowerLimit === undefined ? undefined : lowerLimit * factor,
          upperLimit: upperLimit === undefined ? undefined : upperLimit * factor,
        })
      const one = scaled(1)
      for (const factor of [1e-3, 25.4, 1e6]) {
        const other = scaled(factor)
        expect(other.outcome).toBe(one.outcome)
        // Roundings of the differences over u, which may be as small as 1e-6 of the value.
        expect(Math.abs(other.conformanceProbability - one.conformanceProbability)).toBeLessThan(
          1e-8,
        )
      }
      seen.add(`${input.rule} ${one.outcome}`)
    }
    // Each rule with each outcome it can have, undecidable for empty zones aside.
    expect(seen.size).toBeGreaterThanOrEqual(11)
  })

  it('decides the same at another place and in its mirror image', () => {
    for (const input of randomInputs(4, 3000)) {
      const { value, lowerLimit, upperLimit } = input
      const one = decideConformity(input)
      // The share of a single limit depends on where 0 lies; here no share is too large.
      const mirrored = decideConformity({
        ...input,
        value: -value,
        lowerLimit: upperLimit === undefined ? undefined : -upperLimit,
        upperLimit: lowerLimit === undefined ? undefined : -lowerLimit,
      })
      const shifted = decideConformity({
        ...input,
        value: value + 5,
        lowerLimit: lowerLimit === undefined ? undefined : lowerLimit + 5,
        upperLimit: upperLimit === undefined ? undefined : upperLimit + 5,
      })
      expect([mirrored.outcome, shifted.outcome]).toEqual([one.outcome, one.outcome])
      expect(mirrored.conformanceProbability).toBeCloseTo(one.conformanceProbability, 13)
    }
  })

  it.each([
    { expandedUncertainty: -1 },
    { uncertaintyShareAtMost: 1.1 },
    { uncertaintyShareAtMost: Number.NaN },
    { probability: 1 },
    { upperLimit: undefined },
    { lowerLimit: 1 },
  ])('refuses %o', (wrong) => {
    const input = { value: 1, standardUncertainty: 0.1, upperLimit: 1, rule: 'simple' } as const
    expect(() => decideConformity({ ...input, ...wrong })).toThrow(RangeError)
  })
})
