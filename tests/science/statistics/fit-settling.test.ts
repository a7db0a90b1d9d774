import { describe, expect, it } from 'vitest'
import { fitSettling } from '../../../src/science/statistics/fit-settling.ts'
import { readReference } from '../read-reference.ts'

interface Case {
  id: string
  kind: string
  input: { t: number[]; y: number[] }
  expect: { c: number; A: number; q: number; tau: number; seq: number }
}
const cases = readReference<Case[]>('leak/decay-cases.json').filter((c) => c.kind === 'expLine')
const timesS = Array.from({ length: 121 }, (_, i) => i * 5)

describe('fitSettling', () => {
  it.each(cases)('agrees with a general nonlinear solver on $id', (row) => {
    const fit = fitSettling({ timesS: row.input.t, values: row.input.y })
    // The general solver stops at about 1e-6 in the time constant; the fall depends on it weakly.
    expect(Math.abs(fit.level / row.expect.c - 1)).toBeLessThan(1e-6)
    expect(Math.abs(fit.amplitude / row.expect.A - 1)).toBeLessThan(1e-4)
    expect(Math.abs(fit.timeConstantS / row.expect.tau - 1)).toBeLessThan(1e-4)
    expect(Math.abs(fit.fallPerS / row.expect.q - 1)).toBeLessThan(3e-4)
    expect(Math.abs(fit.fallStandardError / row.expect.seq - 1)).toBeLessThan(1e-3)
  })

  it('has both reference cases', () => {
    expect(cases.length).toBe(2)
  })

  it.each([
    [2, 60, 0.001],
    [-1.5, 25, -0.002],
    [0.3, 200, 0],
  ])(
    'finds amplitude %d, time constant %d and fall %d from a clean curve',
    (amplitude, tau, fall) => {
      const values = timesS.map((t) => 300 + amplitude * Math.exp(-t / tau) - fall * t)
      const fit = fitSettling({ timesS, values })
      // Pressures near 300 carry rounding of 6e-14; the search ends near 1e-8 in the time constant.
      expect(fit.timeConstantS / tau).toBeCloseTo(1, 6)
      expect(fit.amplitude).toBeCloseTo(amplitude, 6)
      expect(fit.fallPerS).toBeCloseTo(fall, 8)
      expect(fit.level).toBeCloseTo(300, 6)
    },
  )

  it('leaves no more than a brute-force grid over the time constant', () => {
    const row = cases[0]
    if (row === undefined) throw new Error('no case')
    const fit = fitSettling({ timesS: row.input.t, values: row.input.y })
    const sumAt = (tau: number) =>
      row.input.t.reduce((sum, t, i) => {
        const model = fit.level + fit.amplitude * Math.exp(-t / tau) - fit.fallPerS * t
        return sum + ((row.input.y[i] ?? 0) - model) ** 2
      }, 0)
    for (let tau = 5; tau < 300; tau += 0.5)
      // rounding of the two sums
      expect(sumAt(tau)).toBeGreaterThanOrEqual(fit.sumOfSquares * (1 - 1e-9))
  })

  it('does not depend on when the clock started or on the unit', () => {
    const values = timesS.map((t) => 300 + 2 * Math.exp(-t / 60) - 0.001 * t)
    const fit = fitSettling({ timesS, values })
    const moved = fitSettling({
      timesS: timesS.map((t) => t + 4096),
      values: values.map((v) => v * 1024),
    })
    // Powers of two change no digit of the input.
    expect(moved.timeConstantS).toBeCloseTo(fit.timeConstantS, 9)
    expect(moved.fallPerS / 1024).toBeCloseTo(fit.fallPerS, 12)
  })

  it.each([
    { timesS: [0, 1, 2, 3, 4], values: [1, 2, 3, 4, 5] },
    { timesS: [0, 0, 0, 0, 0, 0], values: [1, 2, 3, 4, 5, 6] },
    { timesS: [0, 1, 2, 3, 4, 5], values: [1, 2, 3] },
  ])('refuses %o', (input) => {
    expect(() => fitSettling(input)).toThrow(RangeError)
  })
})
