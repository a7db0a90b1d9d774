import { describe, expect, it } from 'vitest'
import { globalRisk } from '../../../src/science/acceptance/global-risk.ts'

const evenly = { density: () => 1, knots: [0, 1] }

describe('globalRisk', () => {
  it('gives the closed form for evenly spread items', () => {
    // Rc = integral of Phi(-t/u) dt from 0 on = u phi(0) = u / sqrt(2 pi), and Rp the same.
    const { falseAcceptRisk, falseRejectRisk, conformingShare } = globalRisk({
      ...evenly,
      measurementUncertainty: 0.02,
      limits: { upperLimit: 0.6, upperAcceptanceLimit: 0.6 },
    })
    // roundings of the sums
    expect(falseAcceptRisk).toBeCloseTo(0.02 / Math.sqrt(2 * Math.PI), 12)
    expect(falseRejectRisk).toBeCloseTo(0.02 / Math.sqrt(2 * Math.PI), 12)
    expect(conformingShare).toBeCloseTo(0.6, 12)
  })

  it('accepts everything where nothing bounds acceptance', () => {
    const limits = { lowerLimit: 0.25, upperLimit: 0.5 }
    const risk = globalRisk({ ...evenly, measurementUncertainty: 0.1, limits })
    expect(risk.falseAcceptRisk).toBeCloseTo(0.75, 12) // all the bad ones; roundings
    expect(risk.falseRejectRisk).toBe(0)
  })

  it('refuses the bad and takes the good as measuring becomes sharp', () => {
    const limits = { upperLimit: 0.5, upperAcceptanceLimit: 0.5 }
    const risk = globalRisk({ ...evenly, measurementUncertainty: 1e-9, limits })
    expect(risk.falseAcceptRisk).toBeLessThan(1e-9)
    expect(risk.falseRejectRisk).toBeLessThan(1e-9)
  })

  it('refuses an uncertainty of 0, no limit, limits that cross and knots that are none', () => {
    const limits = { upperLimit: 0.5 }
    const u = { measurementUncertainty: 0.1 }
    expect(() => globalRisk({ ...evenly, limits, measurementUncertainty: 0 })).toThrow(RangeError)
    expect(() => globalRisk({ ...evenly, ...u, limits: {} })).toThrow(RangeError)
    const crossed = { lowerLimit: 1, upperLimit: 0 }
    expect(() => globalRisk({ ...evenly, ...u, limits: crossed })).toThrow(RangeError)
    expect(() => globalRisk({ ...evenly, knots: [], ...u, limits })).toThrow(RangeError)
    const endless = { upperLimit: Number.POSITIVE_INFINITY }
    expect(() => globalRisk({ ...evenly, ...u, limits: endless })).toThrow(RangeError)
  })
})
