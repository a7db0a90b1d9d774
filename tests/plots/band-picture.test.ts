import { describe, expect, it } from 'vitest'
import { bandPicture } from '../../src/plots/band-picture.ts'
import { type BandPattern, bandPatterns, gapBands } from '../../src/plots/band-surface.ts'
import type { PathShape } from '../../src/plots/drawing.ts'
import { coordinates, subpaths } from './path-points.ts'

const sizePx = 160
const innerRatio = 0.42
const banded = bandPatterns.filter((pattern) => pattern !== 'unreadable')

function paths(pattern: BandPattern): readonly PathShape[] {
  return bandPicture({ pattern, sizePx }).shapes.filter((shape) => shape.kind === 'path')
}

/** Whether a picture is dark at a point (outer radii, y up), by even-odd ray casting. */
function darkness(pattern: BandPattern): (x: number, y: number) => boolean {
  const rimPx = sizePx / 2 - 2
  const areas = paths(pattern)
    .filter((path) => path.fill === 'dark')
    .map((path) => subpaths(path.d))
  return (x, y) => {
    const px = sizePx / 2 + rimPx * x
    const py = sizePx / 2 - rimPx * y
    return areas.some((outlines) => {
      let crossings = 0
      for (const outline of outlines) {
        outline.forEach((a, index) => {
          const b = outline[(index + 1) % outline.length]!
          if (a.y > py !== b.y > py && px < a.x + ((py - a.y) / (b.y - a.y)) * (b.x - a.x)) {
            crossings += 1
          }
        })
      }
      return crossings % 2 === 1
    })
  }
}

describe('bandPicture', () => {
  it('draws the same picture every time', () => {
    for (const pattern of bandPatterns) {
      expect(bandPicture({ pattern, sizePx })).toEqual(bandPicture({ pattern, sizePx }))
    }
  })

  it('draws a different picture for every pattern', () => {
    const pictures = bandPatterns.map((pattern) => JSON.stringify(paths(pattern)))
    expect(new Set(pictures).size).toBe(10)
  })

  it.each(banded)('shows each order of the gap of %s once, and no other', (pattern) => {
    // Second route: a fine square raster of the ring instead of the polar grid.
    const orders = new Set<number>()
    for (let i = -400; i <= 400; i += 1) {
      for (let j = -400; j <= 400; j += 1) {
        const x = i / 400
        const y = j / 400
        const r = Math.hypot(x, y)
        if (r < innerRatio || r > 1) continue
        const gap = gapBands(pattern, x, y)
        // Half width of the flank as drawn, less a margin: slivers at the very edge may go
        // either way, since grid and raster end at different points.
        if (Math.abs(gap - Math.round(gap)) < 0.29 - 0.02) orders.add(Math.round(gap))
      }
    }
    const drawn = paths(pattern)
      .filter((path) => path.fill === 'half')
      .map((path) => Number(path.part?.replace('band ', '')))
    expect(new Set(drawn).size).toBe(drawn.length)
    for (const order of orders) expect(drawn).toContain(order)
    expect(drawn.length - orders.size).toBeLessThanOrEqual(1) // one sliver, see above
    expect(orders.size).toBeGreaterThan(2)
  })

  it.each(banded)('is dark where the gap of %s is a whole number of bands', (pattern) => {
    const isDark = darkness(pattern)
    let checked = 0
    for (let step = 0; step < 120; step += 1) {
      const angle = step * 2.399963 // golden angle: spreads the points over the ring
      const r = innerRatio + (1 - innerRatio) * ((step + 0.5) / 120)
      const x = r * Math.cos(angle)
      const y = r * Math.sin(angle)
      const gap = gapBands(pattern, x, y)
      const off = Math.abs(gap - Math.round(gap))
      // The edge of the dark band lies at 0.17; 0.07 to either side covers the 0.27 px by which
      // outlines are thinned, where bands are narrowest (about 9 px a band).
      if (off < 0.1) {
        expect(isDark(x, y), `${x}, ${y}`).toBe(true)
        checked += 1
      } else if (off > 0.24) {
        expect(isDark(x, y), `${x}, ${y}`).toBe(false)
        checked += 1
      }
    }
    expect(checked).toBeGreaterThan(60)
  })

  it('lets convex bands bulge away from the line of contact and concave ones towards it', () => {
    // A band follows equal gap. Contact lies at the bottom: where the gap at the side equals
    // the gap at the middle, the side is lower on a convex face and higher on a concave one.
    const level = (pattern: BandPattern, x: number): number => {
      const aim = gapBands(pattern, 0, 0.6)
      let low = -0.2
      let high = 1.4
      for (let turn = 0; turn < 60; turn += 1) {
        const middle = (low + high) / 2
        if (gapBands(pattern, x, middle) < aim) low = middle
        else high = middle
      }
      return low
    }
    expect(level('convex', 0.6)).toBeLessThan(0.55)
    expect(level('concave', 0.6)).toBeGreaterThan(0.65)
    expect(level('straight', 0.6)).toBeCloseTo(0.6, 9) // bisection to 2^-60
  })

  it('bends convex and concave pictures as mirror images about the level axis', () => {
    for (const [x, y] of [
      [0.3, 0.5],
      [-0.7, 0.2],
      [0.1, -0.8],
    ] as const) {
      // wedge·(−y) − h(x, −y) with h changed in sign is minus the gap at (x, y)
      expect(gapBands('concave', x, -y)).toBeCloseTo(-gapBands('convex', x, y), 12)
    }
  })

  it('shows no bands, only smears, for an unreadable face', () => {
    const parts = paths('unreadable').map((path) => path.part)
    expect(parts).toEqual(['land', 'smear', 'spot', 'edges'])
    expect(() => gapBands('unreadable', 0, 0)).toThrow(RangeError)
  })

  it.each(bandPatterns)(
    'keeps %s on its canvas, in tenths of a pixel and under 6 kB',
    (pattern) => {
      const all = paths(pattern)
      let length = 0
      for (const path of all) {
        length += path.d.length
        for (const value of coordinates(path.d)) {
          expect(value).toBeGreaterThanOrEqual(0)
          expect(value).toBeLessThanOrEqual(sizePx)
          expect(Math.abs(value * 100 - Math.round(value * 100))).toBeLessThan(1e-9) // two decimals
        }
      }
      expect(length).toBeGreaterThan(800)
      expect(length).toBeLessThan(6000)
    },
  )

  it('refuses sizes and rings that cannot be drawn', () => {
    expect(() => bandPicture({ pattern: 'convex', sizePx: 20 })).toThrow(
      'bandPicture requires sizePx from 48 to 1000, got 20',
    )
    expect(() => bandPicture({ pattern: 'convex', sizePx: 99, innerRatio: 1 })).toThrow(
      'bandPicture requires innerRatio from 0.2 to 0.9, got 1',
    )
    expect(() => bandPicture({ pattern: 'convex', sizePx: Number.NaN })).toThrow(RangeError)
  })
})
