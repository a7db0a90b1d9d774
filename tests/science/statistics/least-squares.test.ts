import { describe, expect, it } from 'vitest'
import { leastSquares } from '../../../src/science/statistics/least-squares.ts'
import { readReference } from '../read-reference.ts'

interface LineCase {
  id: string
  input: { t: number[]; y: number[] }
  expect: { a: number; b: number; s: number; se: number }
}
const norris = readReference<LineCase[]>('leak/decay-cases.json').find((c) => c.id === 'ols-norris')

describe('leastSquares', () => {
  it('gives the certified Norris line', () => {
    if (norris === undefined) throw new Error('the Norris case is missing')
    const { t, y } = norris.input
    const fit = leastSquares({ columns: [t.map(() => 1), t], values: y })
    // Certified by NIST StRD to 15 digits; doubles keep at least ten.
    expect(Math.abs((fit.coefficients[0] ?? 0) / norris.expect.a - 1)).toBeLessThan(1e-10)
    expect(Math.abs((fit.coefficients[1] ?? 0) / norris.expect.b - 1)).toBeLessThan(1e-12)
    const variance = fit.sumOfSquares / (t.length - 2)
    expect(Math.sqrt(variance * (fit.inverseDiagonal[1] ?? 0)) / norris.expect.se).toBeCloseTo(
      1,
      10,
    )
  })

  it('keeps its digits on nearly dependent columns', () => {
    // 1, t and t^2 on t = 1000 to 1019: the normal equations would keep about three digits.
    const t = Array.from({ length: 20 }, (_, i) => 1000 + i)
    const values = t.map((x) => 2 - 3 * x + 0.5 * x * x)
    const { coefficients } = leastSquares({
      columns: [t.map(() => 1), t, t.map((x) => x * x)],
      values,
    })
    // Condition number about 5e10: five digits of sixteen are left for the smallest coefficient.
    expect(coefficients[2]).toBeCloseTo(0.5, 7)
    expect(coefficients[1]).toBeCloseTo(-3, 4)
  })

  it('leaves residuals square to every column', () => {
    const columns = [
      [1, 1, 1, 1, 1],
      [0, 1, 2, 3, 4],
      [1, 0, 2, 0, 5],
    ]
    const { residuals } = leastSquares({ columns, values: [3, 1, 4, 1, 5] })
    for (const column of columns) {
      const product = column.reduce((sum, value, i) => sum + value * (residuals[i] ?? 0), 0)
      expect(Math.abs(product)).toBeLessThan(1e-13) // rounding of sums of order ten
    }
  })

  it('cannot be improved by moving a coefficient', () => {
    // Second route: brute force around the answer.
    const columns = [
      [1, 1, 1, 1],
      [0, 1, 3, 7],
    ]
    const values = [2, 3, 1, 4]
    const fit = leastSquares({ columns, values })
    const sumAt = (shift: number[]) =>
      values.reduce((sum, value, i) => {
        const model = columns.reduce(
          (m, c, k) => m + ((fit.coefficients[k] ?? 0) + (shift[k] ?? 0)) * (c[i] ?? 0),
          0,
        )
        return sum + (value - model) ** 2
      }, 0)
    expect(sumAt([0, 0])).toBeCloseTo(fit.sumOfSquares, 13) // rounding only
    for (const shift of [
      [0.01, 0],
      [-0.01, 0],
      [0, 0.01],
      [0, -0.01],
      [0.01, -0.01],
    ]) {
      expect(sumAt(shift)).toBeGreaterThan(fit.sumOfSquares)
    }
  })

  it.each([
    { columns: [], values: [1, 2] },
    {
      columns: [
        [1, 1],
        [0, 1],
      ],
      values: [1],
    },
    {
      columns: [
        [1, 1, 1],
        [0, 1],
      ],
      values: [1, 2, 3],
    },
    {
      columns: [
        [1, 1, 1],
        [2, 2, 2],
      ],
      values: [1, 2, 3],
    },
    { columns: [[1, Number.NaN, 1]], values: [1, 2, 3] },
  ])('refuses case %#', (input) => {
    expect(() => leastSquares(input)).toThrow(/^leastSquares requires /)
  })
})
