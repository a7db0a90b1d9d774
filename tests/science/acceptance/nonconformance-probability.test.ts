import { describe, expect, it } from 'vitest'
import { conformanceProbability } from '../../../src/science/acceptance/conformance-probability.ts'
import { nonconformanceProbability } from '../../../src/science/acceptance/nonconformance-probability.ts'
import { readReference } from '../read-reference.ts'
import { seededUniform } from '../seeded-random.ts'

const guardBands = readReference<{ r: number; risk: number; printedBelow?: string }[]>(
  'acceptance/guard-band-risk.json',
)

describe('nonconformanceProbability', () => {
  it.each(guardBands)('risks $risk at a guard band of $r U', ({ r, risk, printedBelow }) => {
    const u = 0.05
    const got = nonconformanceProbability({
      value: 1 - r * 2 * u,
      standardUncertainty: u,
      upperLimit: 1,
    })
    // The guard band's place is rounded to 1e-16, which 6 u away is 1e-14 of the risk.
    expect(Math.abs(got / risk - 1)).toBeLessThan(1e-13)
    // Printed as "below" and rounded to its digits.
    if (printedBelow !== undefined) {
      expect(got * 100).toBeLessThanOrEqual(Number.parseFloat(printedBelow))
    }
  })

  it('is what is left of the probability of conformity', () => {
    const uniform = seededUniform(11)
    for (let turn = 0; turn < 300; turn++) {
      const input = {
        value: uniform() * 1.5,
        standardUncertainty: 0.02 + 0.3 * uniform(),
        ...(turn % 3 === 0 ? {} : { lowerLimit: 0.2 * uniform() }),
        ...(turn % 3 === 1 ? {} : { upperLimit: 0.4 + uniform() }),
        isNonNegative: turn % 2 === 0,
      }
      const sum = nonconformanceProbability(input) + conformanceProbability(input)
      expect(sum).toBeCloseTo(1, 14) // roundings
    }
  })

  it('is yes or no without uncertainty and certain of a limit below nothing', () => {
    const exact = { standardUncertainty: 0, upperLimit: 1 }
    expect(nonconformanceProbability({ ...exact, value: 1 })).toBe(0)
    expect(nonconformanceProbability({ ...exact, value: 1.01 })).toBe(1)
    const never = { value: 0, standardUncertainty: 1, upperLimit: -1, isNonNegative: true }
    expect(nonconformanceProbability(never)).toBe(1)
  })

  it('refuses a negative uncertainty', () => {
    const input = { value: 1, standardUncertainty: -1, upperLimit: 2 }
    expect(() => nonconformanceProbability(input)).toThrow(
      'nonconformanceProbability requires standardUncertainty from 0',
    )
  })
})
