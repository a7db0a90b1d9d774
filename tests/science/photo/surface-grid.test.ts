import { expect, it } from 'vitest'
import { surfaceGrid } from '../../../src/science/photo/surface-grid.ts'

it('surfaceGrid has its first and last ring where it was told, and both edges by rays', () => {
  const grid = surfaceGrid({
    radiusRatio: 0.6,
    level: 2,
    seenFrom: 0.62,
    seenTo: 0.98,
    from: 0.6,
    to: 1,
  })
  expect(grid.radii[0]).toBe(0.6)
  expect(grid.radii.at(-1)).toBe(1)
  expect(grid.radii).toHaveLength(17)
  expect(grid.basis).toHaveLength(17 * 180 * 15)
  // The plane goes on straight, so it is exact at the edges as well: x of the first ray is r.
  expect(grid.basis[0]).toBeCloseTo(0.6, 9) // a slope by differences of 2e-5
  expect(grid.basis[16 * 180 * 15]).toBeCloseTo(1, 9)
})
