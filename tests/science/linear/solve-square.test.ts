import { describe, expect, it } from 'vitest'
import { solveSquare } from '../../../src/science/linear/solve-square.ts'
import { seededNormal } from '../seeded-random.ts'

describe('solveSquare', () => {
  it('solves the worked system of Gauss-Jordan elimination of the textbooks', () => {
    // 2x + y - z = 8, -3x - y + 2z = -11, -2x + y + 2z = -3: x, y, z = 2, 3, -1 (from memory).
    const rows = [
      [2, 1, -1],
      [-3, -1, 2],
      [-2, 1, 2],
    ]
    const x = solveSquare(rows, [8, -11, -3])
    expect(x).toEqual([2, 3, -1].map((v) => expect.closeTo(v, 12))) // rounding
  })

  it('gives back what a random matrix was multiplied with', () => {
    const normal = seededNormal(5)
    for (let size = 1; size <= 8; size++) {
      const rows = Array.from({ length: size }, () => Array.from({ length: size }, normal))
      const truth = Array.from({ length: size }, normal)
      const right = rows.map((row) => row.reduce((a, v, k) => a + v * (truth[k] as number), 0))
      const x = solveSquare(rows, right) as number[]
      // Rounding times the condition of a random matrix, some hundreds.
      for (const [k, value] of truth.entries()) expect(x[k]).toBeCloseTo(value, 10)
    }
  })

  it('exchanges rows where the first pivot is 0, and leaves its input as it was', () => {
    const rows = [
      [0, 1],
      [2, 0],
    ]
    expect(solveSquare(rows, [3, 4])).toEqual([2, 3])
    expect(rows).toEqual([
      [0, 1],
      [2, 0],
    ])
  })

  it('says null for a singular matrix instead of a number', () => {
    const rows = [
      [1, 2],
      [2, 4],
    ]
    expect(solveSquare(rows, [1, 1])).toBeNull()
    expect(solveSquare([[0]], [1])).toBeNull()
    expect(solveSquare([[Number.NaN]], [1])).toBeNull()
  })

  it('refuses lengths that disagree', () => {
    expect(() => solveSquare([[1, 2]], [1])).toThrow('length of row 0')
    expect(() => solveSquare([[1]], [1, 2])).toThrow('count of rows')
    expect(() => solveSquare([], [])).toThrow('size')
  })
})
