import { describe, expect, it } from 'vitest'
import { contourLines } from '../../../src/science/photo/contour-lines.ts'

const gridOf = (value: (row: number, column: number) => number) => ({
  rowCount: 9,
  columnCount: 60,
  values: Array.from({ length: 9 * 60 }, (_, i) => value(Math.floor(i / 60), i % 60)),
})

describe('contourLines', () => {
  it('closes a line that goes once around', () => {
    const [line, ...others] = contourLines(
      gridOf((row) => row),
      [3.25],
    )
    expect(others).toEqual([])
    expect(line?.points).toHaveLength(61)
    expect(line?.points.at(-1)).toEqual(line?.points[0])
    for (const [row] of line?.points ?? []) expect(row).toBe(3.25)
  })

  it('gives an open line from edge to edge, through the seam as well', () => {
    // sin is 0 at columns 0 and 30: one of the two lines lies on the seam.
    const lines = contourLines(
      gridOf((row, column) => Math.sin((2 * Math.PI * (column + 0.5)) / 60) + 0 * row),
      [0],
    )
    expect(lines).toHaveLength(2)
    for (const { points } of lines) {
      expect(points).toHaveLength(9)
      for (const [, column] of points) {
        expect(Math.abs((column % 30) - 29.5)).toBeLessThan(1e-9) // antisymmetric about it
      }
    }
  })

  it('puts every point where the value is, on a slope', () => {
    const lines = contourLines(
      gridOf((row, column) => row + Math.cos((2 * Math.PI * column) / 60)),
      [2.1, 4.7],
    )
    expect(lines.map((line) => line.value)).toEqual([2.1, 4.7])
    for (const { value, points } of lines) {
      for (const [row, column] of points) {
        const here = row + Math.cos((2 * Math.PI * column) / 60)
        // Straight between columns: off by at most (2 pi / 60)^2 / 8.
        expect(Math.abs(here - value)).toBeLessThan(0.0014)
      }
    }
  })

  it('gives nothing where the value is not reached', () => {
    expect(
      contourLines(
        gridOf(() => 1),
        [0.5, 2],
      ),
    ).toEqual([])
  })
})
