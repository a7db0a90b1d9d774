import { describe, expect, it } from 'vitest'
import type { PointPx } from '../../src/plots/path-data.ts'
import { polarGrid } from '../../src/plots/polar-grid.ts'
import { thinOutline } from '../../src/plots/thin-outline.ts'
import { traceRegion } from '../../src/plots/trace-region.ts'

const grid = polarGrid(0.4, 60, 240)

function area(outlines: readonly (readonly PointPx[])[]): number {
  let twice = 0
  for (const outline of outlines) {
    outline.forEach((a, index) => {
      const b = outline[(index + 1) % outline.length]!
      twice += a.x * b.y - b.x * a.y
    })
  }
  return Math.abs(twice / 2)
}

describe('traceRegion', () => {
  it('traces the whole ring as rim and bore', () => {
    const outlines = traceRegion(grid, () => 1)
    expect(outlines.length).toBe(2)
    // Polygon of 240 corners instead of a circle: area low by 1 − sin(2π/240)/(2π/240) = 1.1e-4.
    expect(area(outlines)).toBeCloseTo(Math.PI * (1 - 0.16), 3)
  })

  it('traces nothing where the field is negative everywhere', () => {
    expect(traceRegion(grid, () => -1)).toEqual([])
  })

  it('splits the ring into areas that add up to it', () => {
    const above = (level: number) => (row: number, column: number) => {
      const { x, y } = grid.node(row, column)
      return x + 0.3 * y * y - level
    }
    for (const level of [-0.6, -0.1, 0.25, 0.7]) {
      const upper = area(traceRegion(grid, above(level)))
      const lower = area(traceRegion(grid, (row, column) => -above(level)(row, column)))
      // Both trace the same dividing line, so only the polygon error of the ring is left.
      expect(upper + lower).toBeCloseTo(Math.PI * 0.84, 3)
      expect(Math.min(upper, lower)).toBeGreaterThan(0.05)
    }
  })

  it('finds the half above the middle with its exact area', () => {
    const half = traceRegion(grid, (row, column) => grid.node(row, column).y)
    // Half of the ring; the dividing line runs through nodes, the polygon error is 1.1e-4.
    expect(area(half)).toBeCloseTo((Math.PI * 0.84) / 2, 3)
  })
})

describe('polarGrid', () => {
  it('lies on bore and rim', () => {
    for (const column of [0, 17, 239]) {
      const bore = grid.node(0, column)
      const rim = grid.node(59, column)
      expect(Math.hypot(bore.x, bore.y)).toBeCloseTo(0.4, 12) // rounding of one root
      expect(Math.hypot(rim.x, rim.y)).toBeCloseTo(1, 12)
    }
  })

  it('refuses rings and counts that make no grid', () => {
    expect(() => polarGrid(0.99, 10, 20)).toThrow(
      'polarGrid requires innerRatio from 0.05 to 0.95, got 0.99',
    )
    expect(() => polarGrid(0.5, 1, 20)).toThrow(RangeError)
  })
})

describe('thinOutline', () => {
  const circle = Array.from({ length: 360 }, (_, index) => ({
    x: 50 * Math.cos((index * Math.PI) / 180),
    y: 50 * Math.sin((index * Math.PI) / 180),
  }))

  it('drops points but stays within its tolerance', () => {
    const kept = thinOutline(circle, 0.2)
    // Halving gives 2^n chords: 32 would sag by 0.24, 64 sag by 0.06.
    expect(kept.length).toBe(64)
    for (const [index, a] of kept.entries()) {
      const b = kept[(index + 1) % kept.length]!
      const sag = 50 - Math.hypot((a.x + b.x) / 2, (a.y + b.y) / 2)
      expect(sag).toBeLessThanOrEqual(0.2 + 1e-9) // rounding
    }
  })

  it('keeps every corner of a square', () => {
    const square = [
      { x: 0, y: 0 },
      { x: 5, y: 0 },
      { x: 5, y: 5 },
      { x: 0, y: 5 },
    ]
    expect(thinOutline(square, 0.5)).toHaveLength(4)
  })

  it('refuses what is no outline', () => {
    expect(() => thinOutline([{ x: 0, y: 0 }], 1)).toThrow(
      'thinOutline requires points from 3 to any, got 1',
    )
  })
})
