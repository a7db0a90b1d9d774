import { describe, expect, it } from 'vitest'
import {
  type DialReadingInput,
  dialReadingBudget,
} from '../../../src/science/uncertainty/dial-reading-budget.ts'
import { dialReadingUm } from '../../../src/science/uncertainty/dial-reading-um.ts'
import { expandedResult } from '../../../src/science/uncertainty/expanded-result.ts'

/** A run-out read three times with a lever indicator of 2 um a graduation. */
const worked: DialReadingInput = {
  readingsUm: [40, 42, 41],
  resolutionUm: 2,
  largestErrorUm: 3,
  isDifference: true,
  leverAngleDeg: 15,
  leverAngleHalfWidthDeg: 5,
}

describe('dialReadingBudget', () => {
  it('gives a worked run-out line by line (own derivation)', () => {
    // cos 15 = 0.965926, cos 20 = 0.939693. s = 1: 1 / sqrt 3 x 0.965926 = 0.55768;
    // 2 / sqrt 12 x sqrt 2 x 0.965926 = 0.78867; 3 / sqrt 3 x sqrt 2 x 0.965926 = 2.36602;
    // (0.965926 - 0.939693) / sqrt 3 x 41 = 0.62098. Squares 0.31101 + 0.62200 +
    // 5.59805 + 0.38562 = 6.91668, the root 2.62996; the figure 39.603.
    const byHand = {
      repeatability: 0.55768,
      resolution: 0.78867,
      instrument: 2.36602,
      alignment: 0.62098,
    }
    const lines = dialReadingBudget(worked)
    expect(lines.map((line) => line.source)).toEqual(Object.keys(byHand))
    for (const line of lines) {
      // Digits of the hand calculation.
      expect(line.contribution).toBeCloseTo(byHand[line.source as keyof typeof byHand], 4)
    }
    const result = expandedResult(lines)
    expect(result.standardUncertainty).toBeCloseTo(2.62996, 4)
    expect(dialReadingUm(worked)).toBeCloseTo(39.603, 3)
    // (2.62996 / 0.55768)^4 x 2 = 989: so many that k stays 2.
    expect(result.effectiveDegreesOfFreedom).toBeCloseTo(989, -1)
    expect(result.coverageFactor).toBe(2)
  })

  it('gives a total indicator reading the root of two of the u of one reading', () => {
    const one = dialReadingBudget({ readingsUm: [40], isDifference: false, resolutionUm: 10 })
    const tir = dialReadingBudget({ readingsUm: [40], isDifference: true, resolutionUm: 10 })
    const ratio = expandedResult(tir).standardUncertainty / expandedResult(one).standardUncertainty
    expect(ratio).toBeCloseTo(Math.SQRT2, 14) // rounding
  })

  it('agrees with a coarse dial’s difference of two readings, rounded each for itself', () => {
    // Second route: highest and lowest spread evenly over a step, all pairs of a grid.
    const steps = 400
    let squares = 0
    for (let i = 0; i < steps; i++) {
      for (let j = 0; j < steps; j++) squares += (((i - j) / steps) * 10) ** 2
    }
    const [line] = dialReadingBudget({ readingsUm: [40], isDifference: true, resolutionUm: 10 })
    // A grid of 400: relative error 1 / 400^2.
    expect(line?.contribution).toBeCloseTo(Math.sqrt(squares) / steps, 3)
  })

  it('takes the few repeats of a figure into the factor', () => {
    const lines = dialReadingBudget({ readingsUm: [40, 44], isDifference: true })
    // One degree of freedom: 12.71 of table G.2, JCGM 100:2008.
    expect(expandedResult(lines).coverageFactor).toBeCloseTo(12.71, 2) // printed
  })

  it('keeps an alignment also at an angle of nought: 1 - cos', () => {
    const flat = { readingsUm: [40], isDifference: true, leverAngleHalfWidthDeg: 10 }
    const [line] = dialReadingBudget(flat)
    // 40 x (1 - 0.984808) / sqrt 3 by hand.
    expect(line?.contribution).toBeCloseTo(0.35085, 4)
    expect(line?.source).toBe('alignment')
  })

  it('has no line for what is not known, nor alignment without a half width', () => {
    expect(dialReadingBudget({ readingsUm: [40], isDifference: true })).toEqual([])
    const { leverAngleHalfWidthDeg: _, ...noHalfWidth } = worked
    expect(dialReadingBudget(noHalfWidth).map((line) => line.source)).not.toContain('alignment')
  })

  it.each([
    { leverAngleDeg: -1 },
    { leverAngleDeg: 61 },
    { leverAngleHalfWidthDeg: 21 },
    { readingsUm: [] },
    { largestErrorRelative: 0.1 },
    { standardUncertaintyUm: -1 },
  ])('refuses %o', (wrong) => {
    expect(() => dialReadingBudget({ ...worked, ...wrong })).toThrow(RangeError)
  })
})
