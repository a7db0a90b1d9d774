import { expect, it } from 'vitest'
import { quadraticAt, quadraticCount } from '../../../src/science/photo/quadratic-at.ts'

it('quadraticAt writes the six terms, from the place that it was told', () => {
  const into = quadraticAt(3, -2, new Float64Array(8), 2)
  expect([...into]).toEqual([0, 0, 1, 3, -2, 12.25, 5, -12])
  expect(quadraticCount).toBe(6)
})

it('quadraticAt can describe any quadratic: x^2 is made of its square terms', () => {
  const terms = quadraticAt(0.4, 0.9, [] as number[], 0)
  const square = ((terms[3] ?? 0) + 0.75 + (terms[4] ?? 0)) / 2
  expect(square).toBeCloseTo(0.16, 14) // rounding only
})
