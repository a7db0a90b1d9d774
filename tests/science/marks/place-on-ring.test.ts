import { describe, expect, it } from 'vitest'
import { placeOnRing } from '../../../src/science/marks/place-on-ring.ts'
import { ringMap } from '../../../src/science/photo/ring-map.ts'

const outer = { cx: 400, cy: 300, rx: 200, ry: 194, rotationDeg: 30 }
const inner = { ...outer, rx: 160, ry: 155.2 }
const edges = { outer, inner, radiusRatio: 0.8 }

describe('placeOnRing', () => {
  it('turns a circle in the picture into the unit circle, y upwards', () => {
    const round = { cx: 20, cy: 20, rx: 10, ry: 10, rotationDeg: 0 }
    const circles = { outer: round, inner: { ...round, rx: 5, ry: 5 }, radiusRatio: 0.5 }
    const up = placeOnRing({ x: 20, y: 12.5 }, circles)
    expect([up.x, up.y]).toEqual([expect.closeTo(0, 10), expect.closeTo(0.75, 10)]) // rounding
  })

  it('gives every point of a land seen obliquely its place back', () => {
    const map = ringMap(outer)
    for (const r of [0.79, 0.8, 0.9, 1, 1.02]) {
      for (let deg = 0; deg < 360; deg += 17) {
        const [x, y] = [r * Math.cos((deg * Math.PI) / 180), r * Math.sin((deg * Math.PI) / 180)]
        const pixel = {
          x: map.cx + map.xx * x + map.xy * y,
          y: map.cy - (map.xy * x + map.yy * y),
        }
        const got = placeOnRing(pixel, edges)
        expect(got.x).toBeCloseTo(x, 10) // 60 halvings and rounding
        expect(got.y).toBeCloseTo(y, 10)
      }
    }
  })

  it('puts each edge on its circle, also where the inner one lies a little aside', () => {
    const aside = { ...inner, cx: 403, cy: 298, rx: 161 }
    for (const [ellipse, radius] of [
      [outer, 1],
      [aside, 0.8],
    ] as const) {
      const map = ringMap(ellipse)
      for (let deg = 0; deg < 360; deg += 30) {
        const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)]
        const pixel = { x: map.cx + map.xx * c + map.xy * s, y: map.cy - map.xy * c - map.yy * s }
        const got = placeOnRing(pixel, { ...edges, inner: aside })
        expect(Math.hypot(got.x, got.y)).toBeCloseTo(radius, 9) // 60 halvings and rounding
      }
    }
  })

  it('answers a point far outside as lying beyond the land, and one in the bore as within', () => {
    const far = placeOnRing({ x: 4000, y: 300 }, edges)
    expect(Math.hypot(far.x, far.y)).toBeGreaterThan(1.05)
    const bore = placeOnRing({ x: 401, y: 300 }, edges)
    expect(Math.hypot(bore.x, bore.y)).toBeLessThan(0.75)
  })

  it('refuses a ratio out of range and an axis of no length', () => {
    expect(() => placeOnRing({ x: 0, y: 0 }, { ...edges, radiusRatio: 1 })).toThrow('radiusRatio')
    const flat = { ...outer, ry: 0 }
    expect(() => placeOnRing({ x: 0, y: 0 }, { ...edges, outer: flat })).toThrow('half axis')
  })
})
