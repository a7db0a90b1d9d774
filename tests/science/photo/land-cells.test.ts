import { expect, it } from 'vitest'
import { landCells } from '../../../src/science/photo/land-cells.ts'
import { bandLand } from './band-land.ts'

it('landCells counts every sample once, about as many in each cell of a row', () => {
  const { samples } = bandLand({ radiusRatio: 0.6, wanted: 20_000, gap: () => 0 })
  const land = landCells(samples, { from: 0.6, to: 1 })
  expect(land.totals.reduce((a, b) => a + b, 0)).toBe(samples.xs.length)
  for (let row = 0; row < 4; row++) {
    const counts = land.totals.slice(row * 36, row * 36 + 36)
    // Area of a cell: 10 degrees of a ring; a square grid counts it to a few per cent.
    const middle = 0.65 + 0.1 * row
    const expected = (20_000 * middle * 0.1 * 2 * (1 / 36)) / (1 - 0.36)
    for (const count of counts) expect(Math.abs(count / expected - 1)).toBeLessThan(0.15)
  }
})

it('landCells begins at the right and goes counter-clockwise, the inner row first', () => {
  const land = landCells(
    {
      xs: Float64Array.from([0.61, 0, -0.99]),
      ys: Float64Array.from([0.01, 0.61, -0.01]),
      values: new Float64Array(3),
      isUsable: new Uint8Array(3),
      pitch: 0.1,
    },
    { from: 0.6, to: 1 },
  )
  expect([...land.cellOf]).toEqual([0, 9, 3 * 36 + 18])
})
