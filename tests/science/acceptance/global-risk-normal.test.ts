import { describe, expect, it } from 'vitest'
import type { GlobalRiskLimits } from '../../../src/science/acceptance/global-risk.ts'
import { globalRiskNormal } from '../../../src/science/acceptance/global-risk-normal.ts'
import { readReference } from '../read-reference.ts'
import { seededNormal } from '../seeded-random.ts'

type Case = {
  mean: number
  standardDeviation: number
  measurementUncertainty: number
  limits: GlobalRiskLimits
  falseAcceptRisk: number
  falseRejectRisk: number
  conformingShare?: number
}
const cases = readReference<Case[]>('acceptance/global-risk-normal.json')
const shaft = {
  mean: 0.02,
  standardDeviation: 0.12,
  measurementUncertainty: 0.04,
  limits: {
    lowerLimit: -0.2,
    upperLimit: 0.2,
    lowerAcceptanceLimit: -0.15,
    upperAcceptanceLimit: 0.15,
  },
}

describe('globalRiskNormal', () => {
  it.each(cases)('gives $falseAcceptRisk and $falseRejectRisk', (one) => {
    const risk = globalRiskNormal(one)
    // The reference integrates numerically to 1e-9; limits near 1500 cost digits in doubles.
    expect(Math.abs(risk.falseAcceptRisk / one.falseAcceptRisk - 1)).toBeLessThan(1e-8)
    expect(Math.abs(risk.falseRejectRisk / one.falseRejectRisk - 1)).toBeLessThan(1e-8)
    if (one.conformingShare !== undefined) {
      expect(risk.conformingShare).toBeCloseTo(one.conformingShare, 12) // roundings
    }
  })

  it('agrees with 400 000 seeded items, each measured once', () => {
    const normal = seededNormal(1066)
    const count = 400_000
    let acceptedBad = 0
    let rejectedGood = 0
    for (let item = 0; item < count; item++) {
      const x = shaft.mean + shaft.standardDeviation * normal()
      const y = x + shaft.measurementUncertainty * normal()
      const isGood = Math.abs(x) <= 0.2
      const isAccepted = Math.abs(y) <= 0.15
      if (isAccepted && !isGood) acceptedBad++
      if (!isAccepted && isGood) rejectedGood++
    }
    const risk = globalRiskNormal(shaft)
    // Four standard deviations of a share, sqrt(p / n) each.
    for (const [got, seen] of [
      [risk.falseAcceptRisk, acceptedBad / count],
      [risk.falseRejectRisk, rejectedGood / count],
    ] as const) {
      expect(Math.abs(got - seen)).toBeLessThan(4 * Math.sqrt(got / count))
      expect(seen).toBeGreaterThan(0)
    }
  })

  it('trades the customer’s risk for the maker’s as acceptance narrows', () => {
    const risks = [0.28, 0.2, 0.16, 0.12, 0.05].map((at) =>
      globalRiskNormal({
        ...shaft,
        limits: { ...shaft.limits, lowerAcceptanceLimit: -at, upperAcceptanceLimit: at },
      }),
    )
    for (const [index, risk] of risks.slice(1).entries()) {
      expect(risk.falseAcceptRisk).toBeLessThan(risks[index]!.falseAcceptRisk)
      expect(risk.falseRejectRisk).toBeGreaterThan(risks[index]!.falseRejectRisk)
    }
  })

  it('is the same in its mirror image', () => {
    const mirrored = { lowerLimit: -1, lowerAcceptanceLimit: -0.9 }
    const limits = { upperLimit: 1, upperAcceptanceLimit: 0.9 }
    const prior = { standardDeviation: 0.5, measurementUncertainty: 0.1 }
    const right = globalRiskNormal({ ...prior, mean: 0.3, limits })
    const left = globalRiskNormal({ ...prior, mean: -0.3, limits: mirrored })
    expect(left.falseAcceptRisk).toBeCloseTo(right.falseAcceptRisk, 13) // order of the sums
    expect(left.falseRejectRisk).toBeCloseTo(right.falseRejectRisk, 13)
  })

  it('refuses a prior that does not scatter or has no mean', () => {
    expect(() => globalRiskNormal({ ...shaft, standardDeviation: 0 })).toThrow(RangeError)
    expect(() => globalRiskNormal({ ...shaft, mean: Number.NaN })).toThrow(RangeError)
  })
})
