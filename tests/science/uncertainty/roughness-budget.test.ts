import { describe, expect, it } from 'vitest'
import { expandedResult } from '../../../src/science/uncertainty/expanded-result.ts'
import {
  type RoughnessInput,
  roughnessBudget,
} from '../../../src/science/uncertainty/roughness-budget.ts'

/** Four places over a carbon face; an instrument good to 5 %, set on a specimen known to 8 nm. */
const worked: RoughnessInput = {
  readingsUm: [0.18, 0.22, 0.2, 0.24],
  resolutionUm: 0.01,
  largestErrorRelative: 0.05,
  referenceStandardUncertaintyUm: 0.008,
}

describe('roughnessBudget', () => {
  it('gives a worked carbon face line by line (own derivation)', () => {
    // Mean 0.21; s^2 = (0.0009 + 0.0001 + 0.0001 + 0.0009) / 3, s = 0.025820, / 2 = 0.012910;
    // 0.01 / sqrt 12 = 0.0028868; 0.05 x 0.21 / sqrt 3 = 0.0060622; 0.008.
    const byHand = {
      surface: 0.01291,
      resolution: 0.0028868,
      instrument: 0.0060622,
      reference: 0.008,
    }
    const lines = roughnessBudget(worked)
    expect(lines.map((line) => line.source)).toEqual(Object.keys(byHand))
    for (const line of lines) {
      // Digits of the hand calculation.
      expect(line.contribution).toBeCloseTo(byHand[line.source as keyof typeof byHand], 6)
    }
    // u = sqrt(1.6667e-4 + 8.333e-6 + 3.675e-5 + 6.4e-5) = 0.016606;
    // v = (0.016606 / 0.012910)^4 x 3 = 8.21; t for 8 is 2.31, for 9 2.26 (JCGM 100:2008, G.2).
    const result = expandedResult(lines)
    expect(result.standardUncertainty).toBeCloseTo(0.016606, 5)
    expect(result.effectiveDegreesOfFreedom).toBeCloseTo(8.21, 1)
    expect(result.coverageFactor).toBeGreaterThan(2.26)
    expect(result.coverageFactor).toBeLessThan(2.31)
  })

  it('scales with the surface where the instrument errs by a share', () => {
    const { referenceStandardUncertaintyUm: _, ...own } = worked
    const u = (factor: number) =>
      expandedResult(
        roughnessBudget({
          ...own,
          resolutionUm: 0.01 * factor,
          readingsUm: own.readingsUm.map((um) => um * factor),
        }),
      ).standardUncertainty
    expect(u(3) / u(1)).toBeCloseTo(3, 12) // rounding
  })

  it('takes the instrument’s error in um or by its calibration too', () => {
    const of = (more: Partial<RoughnessInput>) => roughnessBudget({ readingsUm: [0.2], ...more })[0]
    for (const more of [{ largestErrorUm: 0.02 }, { largestErrorRelative: 0.1 }]) {
      expect(of(more)?.contribution).toBeCloseTo(0.02 / Math.sqrt(3), 12) // rounding
    }
    expect(of({ standardUncertaintyUm: 0.01 })).toMatchObject({ contribution: 0.01 })
  })

  it('has no line for what is not known: a single place shows no scatter', () => {
    expect(roughnessBudget({ readingsUm: [0.2] })).toEqual([])
  })

  it.each([
    { readingsUm: [] },
    { readingsUm: [-0.1] },
    { largestErrorUm: 0.01 },
    { referenceStandardUncertaintyUm: -1 },
  ])('refuses %o', (wrong) => {
    expect(() => roughnessBudget({ ...worked, ...wrong })).toThrow(RangeError)
  })
})
