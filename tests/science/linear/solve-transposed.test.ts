import { describe, expect, it } from 'vitest'
import { solveTransposed } from '../../../src/science/linear/solve-transposed.ts'

describe('solveTransposed', () => {
  it('solves by hand: 2 x + y = 3 and 4 y = 8', () => {
    expect([...solveTransposed([2, 0, 1, 4], [3, 8])]).toEqual([0.5, 2])
  })

  it('gives columns whose sum of products is the inverse of the matrix', () => {
    // A = L L' = [4 2; 2 5] has the inverse [5 -2; -2 4] / 16, by Cramer's rule.
    const lower = [2, 0, 1, 2]
    const first = solveTransposed(lower, [1, 0])
    const second = solveTransposed(lower, [0, 1])
    const product = (i: number, j: number) =>
      (first[i] ?? 0) * (first[j] ?? 0) + (second[i] ?? 0) * (second[j] ?? 0)
    expect([product(0, 0), product(0, 1), product(1, 1)]).toEqual([5 / 16, -2 / 16, 4 / 16])
  })

  it('leaves what it was given as it was', () => {
    const right = [3, 8]
    solveTransposed([2, 0, 1, 4], right)
    expect(right).toEqual([3, 8])
  })

  it('refuses lengths that disagree', () => {
    expect(() => solveTransposed([1], [1, 2])).toThrow('requires lower length')
  })
})
