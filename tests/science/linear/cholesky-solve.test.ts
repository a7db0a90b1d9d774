import { describe, expect, it } from 'vitest'
import { choleskyFactor } from '../../../src/science/linear/cholesky-factor.ts'
import { choleskySolve } from '../../../src/science/linear/cholesky-solve.ts'

describe('choleskySolve', () => {
  it('solves the textbook system of whole numbers', () => {
    // A x = b with x = [1, 2, 3]: b = [4 + 24 - 48, 12 + 74 - 129, -16 - 86 + 294].
    const lower = choleskyFactor([4, 12, -16, 12, 37, -43, -16, -43, 98], 3)
    expect([...choleskySolve(lower, [-20, -43, 192])]).toEqual([1, 2, 3])
  })

  it('undoes a multiplication by the matrix', () => {
    const size = 20
    // Second differences: condition number about 180, by the closed form of its eigenvalues.
    const matrix = new Float64Array(size * size)
    for (let i = 0; i < size; i++) {
      matrix[i * size + i] = 2
      if (i > 0) matrix[i * size + i - 1] = -1
    }
    const x = Array.from({ length: size }, (_, i) => Math.sin(i))
    const right = x.map((value, i) => 2 * value - (x[i - 1] ?? 0) - (x[i + 1] ?? 0))
    const solved = choleskySolve(choleskyFactor(matrix, size), right)
    // 180 times the rounding of a double.
    x.forEach((value, i) => {
      expect(Math.abs((solved[i] ?? 0) - value)).toBeLessThan(1e-13)
    })
  })

  it('refuses lengths that disagree', () => {
    expect(() => choleskySolve([1, 0, 0, 1], [1, 2, 3])).toThrow('requires lower length')
  })
})
