import { describe, expect, it } from 'vitest'
import { annularTerms } from '../../../src/science/surface/annular-terms.ts'
import { pressTest } from '../../../src/science/surface/press-test.ts'
import { seededUniform } from '../seeded-random.ts'

const fitted = (
  constant: number,
  tilt: readonly [number, number],
  rest: readonly number[] = [],
) => {
  const count = annularTerms(2).length
  const gap = [constant, ...tilt, ...Array.from({ length: count - 2 }, (_, k) => rest[k] ?? 0)]
  return { radiusRatio: 0.7, level: 2, gap }
}
const over = (one: ReturnType<typeof fitted>) => ({ ...one, gap: one.gap.map((v) => -v) })

describe('pressTest', () => {
  it('leaves a gap that became smaller as it is, and turns one that grew', () => {
    const [before, after] = [fitted(5.3, [4, 1]), fitted(5.1, [4, 1])]
    expect(pressTest(before, after)).toEqual({ sign: 1, movedBands: expect.closeTo(-0.2, 10) })
    expect(pressTest(over(before), over(after)).sign).toBe(-1)
  })

  it('is right for every press of 0.11 to 0.36 band, whatever sign each fit chose', () => {
    const uniform = seededUniform(16)
    for (let pair = 0; pair < 64; pair++) {
      const press = 0.11 + 0.25 * uniform()
      const tilt = [6 * uniform() - 3, 3 + uniform()] as const
      const form = Array.from({ length: 13 }, () => uniform() - 0.5)
      const constant = 10 * uniform()
      const whole = Math.floor(5 * uniform())
      const before = fitted(constant, tilt, form)
      // Pressing tilts a little too; whole bands of the constant are not known.
      const after = fitted(constant - press + whole, [tilt[0] + 0.1, tilt[1] - 0.1], form)
      const [isFirstOver, isSecondOver] = [uniform() > 0.5, uniform() > 0.5]
      const got = pressTest(isFirstOver ? over(before) : before, isSecondOver ? over(after) : after)
      expect(got.sign).toBe(isFirstOver ? -1 : 1)
      expect(Math.abs(got.movedBands)).toBeCloseTo(press, 9) // rounding
    }
  })

  it('takes the mean over the land, not the constant: a bent flat moves the edges', () => {
    // First term after the plane: t along the radius, mean by area (1 - e) / (3 (1 + e)).
    const mean = (1 - 0.7) / (3 * (1 + 0.7))
    const got = pressTest(fitted(5, [4, 1]), fitted(4.8, [4, 1], [0.1]))
    expect(got.movedBands).toBeCloseTo(-0.2 + 0.1 * mean, 4) // 17 circles, a step squared
  })

  it('counts whole bands as they were seen, also where the gap is that of normal view', () => {
    const axisRatio = 0.94
    // As seen: from 0.45 down by 0.3 to 0.15, written as 1.15, 3.15 or -1.85.
    const normal = (constant: number) => fitted(constant / axisRatio, [4, 1])
    const before = { ...normal(0.45), axisRatio }
    for (const constant of [0.15, 1.15, 3.15, -1.85]) {
      const got = pressTest(before, { ...normal(constant), axisRatio })
      expect(got).toEqual({ sign: 1, movedBands: expect.closeTo(-0.3 / axisRatio, 10) })
    }
  })

  it('can not tell below 0.08, above 0.42, or where the wedge was turned', () => {
    const before = fitted(5, [4, 1])
    expect(pressTest(before, fitted(4.93, [4, 1])).sign).toBe(0)
    expect(pressTest(before, fitted(4.57, [4, 1])).sign).toBe(0)
    expect(pressTest(before, fitted(4.8, [-1, 4])).sign).toBe(0)
    expect(pressTest(before, fitted(4.8, [0, 0])).sign).toBe(0)
    expect(pressTest(before, fitted(4.59, [4, 1])).sign).toBe(1)
  })

  it('refuses a gap that is not of its level', () => {
    const short = { ...fitted(1, [1, 1]), level: 3 }
    expect(() => pressTest(short, short)).toThrow('length of gap')
  })
})
