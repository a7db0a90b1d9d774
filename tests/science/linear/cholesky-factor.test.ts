import { describe, expect, it } from 'vitest'
import { choleskyFactor } from '../../../src/science/linear/cholesky-factor.ts'

describe('choleskyFactor', () => {
  it('gives the factor of the textbook matrix of whole numbers', () => {
    // A well-known example of lectures: L = [2 0 0; 6 1 0; -8 5 3], from memory, checked by L L'.
    const lower = choleskyFactor([4, 12, -16, 12, 37, -43, -16, -43, 98], 3)
    expect([...lower]).toEqual([2, 0, 0, 6, 1, 0, -8, 5, 3])
  })

  it('gives a factor whose product is the matrix again, for a Hilbert matrix', () => {
    const size = 6
    const matrix = Array.from({ length: size * size }, (_, at) => {
      return 1 / (Math.floor(at / size) + (at % size) + 1)
    })
    const lower = choleskyFactor(matrix, size)
    for (let i = 0; i < size; i++) {
      for (let j = 0; j < size; j++) {
        let sum = 0
        for (let k = 0; k < size; k++) {
          sum += (lower[i * size + k] ?? 0) * (lower[j * size + k] ?? 0)
        }
        // Rounding of six products of at most 1; the factor is backward stable.
        expect(Math.abs(sum - (matrix[i * size + j] ?? 0))).toBeLessThan(1e-15)
      }
    }
  })

  it('reads only the lower triangle', () => {
    const whole = choleskyFactor([4, 2, 2, 5], 2)
    expect([...choleskyFactor([4, Number.NaN, 2, 5], 2)]).toEqual([...whole])
  })

  it.each([
    { name: 'an indefinite matrix', matrix: [1, 2, 2, 1], size: 2 },
    { name: 'a matrix of rank one', matrix: [1, 1, 1, 1], size: 2 },
    { name: 'NaN', matrix: [1, 0, Number.NaN, 1], size: 2 },
    { name: 'an infinite entry', matrix: [Number.POSITIVE_INFINITY], size: 1 },
  ])('refuses $name', ({ matrix, size }) => {
    expect(() => choleskyFactor(matrix, size)).toThrow(RangeError)
    expect(() => choleskyFactor(matrix, size)).toThrow('requires a positive definite matrix')
  })

  it('refuses lengths that disagree', () => {
    expect(() => choleskyFactor([1, 0, 1], 2)).toThrow('choleskyFactor requires matrix length')
    expect(() => choleskyFactor([], 0)).toThrow('choleskyFactor requires size')
  })
})
