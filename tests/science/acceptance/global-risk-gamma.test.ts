import { describe, expect, it } from 'vitest'
import type { GlobalRiskLimits } from '../../../src/science/acceptance/global-risk.ts'
import { globalRiskGamma } from '../../../src/science/acceptance/global-risk-gamma.ts'
import { globalRiskNormal } from '../../../src/science/acceptance/global-risk-normal.ts'
import { readReference } from '../read-reference.ts'

type Case = {
  shape: number
  scale: number
  measurementUncertainty: number
  limits: GlobalRiskLimits
  falseAcceptRisk: number
  falseRejectRisk: number
  conformingShare?: number
}
const cases = readReference<Case[]>('acceptance/global-risk-gamma.json')

describe('globalRiskGamma', () => {
  it.each(cases)('gives $falseAcceptRisk and $falseRejectRisk', (one) => {
    const risk = globalRiskGamma(one)
    // The reference integrates numerically to about 1e-8.
    expect(Math.abs(risk.falseAcceptRisk / one.falseAcceptRisk - 1)).toBeLessThan(1e-7)
    expect(Math.abs(risk.falseRejectRisk / one.falseRejectRisk - 1)).toBeLessThan(1e-7)
    if (one.conformingShare !== undefined) {
      expect(risk.conformingShare).toBeCloseTo(one.conformingShare, 12) // 14 digits of ln gamma
    }
  })

  it.each([
    [1, 2, 1 - Math.exp(-2)],
    [2, 3, 1 - 4 * Math.exp(-3)],
    [1.5, 1.5, 0.608_374_823_728_911],
    [10_000, 10_000, 0.501_329_808_339_955_3],
  ])('knows the share of good items for shape %s below %s scales', (shape, upperLimit, share) => {
    // Closed forms for whole shapes, SciPy gammainc for the others.
    const input = { shape, scale: 1, measurementUncertainty: 0.1, limits: { upperLimit } }
    // ln gamma(1e4) carries 1e-14 of 8e4, and a broken power is smooth only piece by piece.
    expect(globalRiskGamma(input).conformingShare).toBeCloseTo(share, 8)
  })

  it('becomes the normal one for a large shape', () => {
    const limits = { upperLimit: 103, upperAcceptanceLimit: 102.5 }
    const gamma = globalRiskGamma({
      shape: 10_000,
      scale: 0.01,
      measurementUncertainty: 0.3,
      limits,
    })
    const normal = globalRiskNormal({
      mean: 100,
      standardDeviation: 1,
      measurementUncertainty: 0.3,
      limits,
    })
    // Skewness 2 / sqrt(shape) = 0.02 moves the tail at 3 s by some 6 x 0.02 of itself.
    expect(Math.abs(gamma.falseRejectRisk / normal.falseRejectRisk - 1)).toBeLessThan(0.15)
    expect(gamma.falseAcceptRisk).toBeGreaterThan(normal.falseAcceptRisk)
  })

  it('keeps to its scale', () => {
    const at = (scale: number) =>
      globalRiskGamma({
        shape: 4,
        scale: 0.25 * scale,
        measurementUncertainty: 0.25 * scale,
        limits: { upperLimit: 2 * scale, upperAcceptanceLimit: 1.8 * scale },
      }).falseAcceptRisk
    expect(at(1e-6) / at(1)).toBeCloseTo(1, 12) // roundings
  })

  it.each([{ shape: 0.9 }, { shape: 1e5 }, { scale: 0 }, { measurementUncertainty: 0 }])(
    'refuses %o',
    (wrong) => {
      const input = { shape: 4, scale: 1, measurementUncertainty: 0.1, limits: { upperLimit: 2 } }
      expect(() => globalRiskGamma({ ...input, ...wrong })).toThrow(RangeError)
    },
  )
})
