import { describe, expect, it } from 'vitest'
import { incompleteBetaRatio } from '../../../src/science/statistics/incomplete-beta-ratio.ts'
import { readReference } from '../read-reference.ts'

const cases = readReference<{ x: number; a: number; b: number; ratio: number }[]>(
  'statistics/incomplete-beta-scipy.json',
)

describe('incompleteBetaRatio', () => {
  it.each(cases)('agrees with SciPy for x $x, a $a, b $b', (row) => {
    // log-gamma of 5000 loses about four digits of sixteen.
    expect(Math.abs(incompleteBetaRatio(row) / row.ratio - 1)).toBeLessThan(5e-12)
  })

  it('agrees with the power for b = 1 and the arc sine for a = b = 1/2', () => {
    for (const x of [0.01, 0.3, 0.5, 0.77, 0.999]) {
      // Closed forms; rounding only.
      expect(incompleteBetaRatio({ x, a: 3.5, b: 1 })).toBeCloseTo(x ** 3.5, 13)
      expect(incompleteBetaRatio({ x, a: 0.5, b: 0.5 })).toBeCloseTo(
        (2 / Math.PI) * Math.asin(Math.sqrt(x)),
        13,
      )
    }
  })

  it('is its own mirror and rises from 0 to 1', () => {
    expect(incompleteBetaRatio({ x: 0, a: 2, b: 3 })).toBe(0)
    expect(incompleteBetaRatio({ x: 1, a: 2, b: 3 })).toBe(1)
    let before = 0
    for (let x = 0.05; x < 1; x += 0.05) {
      const ratio = incompleteBetaRatio({ x, a: 2.5, b: 0.7 })
      expect(ratio).toBeGreaterThan(before)
      // rounding
      expect(ratio + incompleteBetaRatio({ x: 1 - x, a: 0.7, b: 2.5 })).toBeCloseTo(1, 13)
      before = ratio
    }
  })

  it.each([
    { x: -0.1, a: 1, b: 1 },
    { x: 1.1, a: 1, b: 1 },
    { x: 0.5, a: 0, b: 1 },
    { x: 0.5, a: 1, b: Number.NaN },
  ])('refuses %o', (input) => {
    expect(() => incompleteBetaRatio(input)).toThrow(RangeError)
  })
})
