import { describe, expect, it } from 'vitest'
import { findEdges } from '../../../src/science/photo/find-edges.ts'
import { paintRing } from './paint-ring.ts'

const outer = { cx: 341.3, cy: 298.8, rx: 240, ry: 236, rotationDeg: 25 }
const ring = {
  width: 700,
  height: 600,
  outer,
  radiusRatio: 0.72,
  gap: (x: number, y: number) => 4 * x + 2.5 * y + 0.5 * (x * x - y * y) + 0.2,
}
const radius = ({ rx, ry }: { rx: number; ry: number }) => Math.sqrt(rx * ry)

describe('findEdges', () => {
  it('finds both edges of a land to a pixel, where nobody set them', () => {
    const found = findEdges(paintRing(ring))
    if (found === null) throw new Error('the edges were not found')
    // A quarter of a per cent of the radius is half a pixel here; a taper needs no better.
    expect(Math.abs(radius(found.outer) - radius(outer))).toBeLessThan(0.6)
    expect(Math.abs(radius(found.inner) - 0.72 * radius(outer))).toBeLessThan(0.6)
    expect(Math.hypot(found.outer.cx - outer.cx, found.outer.cy - outer.cy)).toBeLessThan(0.6)
  })

  it('finds them in pixels of a picture that is larger than it looks at', () => {
    const twice = { cx: 683, cy: 598, rx: 480, ry: 472, rotationDeg: 25 }
    const found = findEdges(paintRing({ ...ring, width: 1400, height: 1200, outer: twice }))
    if (found === null) throw new Error('the edges were not found')
    expect(Math.abs(radius(found.outer) - radius(twice))).toBeLessThan(1.2)
    expect(Math.hypot(found.outer.cx - twice.cx, found.outer.cy - twice.cy)).toBeLessThan(1.2)
  })

  it('finds none on an even grey, in stripes without a ring, and on a ring without bands', () => {
    const grey = { data: new Uint8Array(3 * 200 * 200).fill(90), width: 200, height: 200 }
    expect(findEdges(grey)).toBeNull()
    const stripes = { ...grey, data: grey.data.map((_, i) => 60 + 50 * (Math.floor(i / 30) % 2)) }
    expect(findEdges(stripes)).toBeNull()
    expect(findEdges(paintRing({ ...ring, swing: 0 }))).toBeNull()
  })
})
