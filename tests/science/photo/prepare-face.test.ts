import { describe, expect, it } from 'vitest'
import type { Ellipse } from '../../../src/science/photo/ellipse.ts'
import { prepareFace } from '../../../src/science/photo/prepare-face.ts'
import { paintRing, placesOn } from './paint-ring.ts'

const outer = { cx: 203.2, cy: 197.6, rx: 165, ry: 162, rotationDeg: 40 }
const scaled = (ellipse: Ellipse, by: number) => {
  return { ...ellipse, rx: by * ellipse.rx, ry: by * ellipse.ry }
}
const gap = (x: number, y: number) => 4 * x + 2 * y
const picture = paintRing({ width: 400, height: 400, outer, radiusRatio: 0.7, gap, chamfer: 0.02 })
const edges = { outer: placesOn(outer, 8, 1.5), inner: placesOn(scaled(outer, 0.7), 8, 1.5) }
const white = { ...picture, data: new Uint8Array(picture.data.length).fill(255) }

describe('prepareFace', () => {
  it('finds ratio and view from places set by hand', () => {
    const face = prepareFace(picture, edges)
    if (face.kind !== 'face') throw new Error(face.reason)
    expect(face.outer.isSnapped && face.inner.isSnapped).toBe(true)
    // Both edges are followed to about a tenth of a pixel of 165.
    expect(Math.abs(face.radiusRatio - 0.7)).toBeLessThan(0.0015)
    expect(Math.abs(face.axisRatio - 162 / 165)).toBeLessThan(0.0015)
  })

  it('takes ellipses as well as places', () => {
    const given = prepareFace(picture, { outer, inner: scaled(outer, 0.7) })
    expect(given.kind).toBe('face')
  })

  it.each([
    ['edges-not-found', picture, { ...edges, outer: [] }],
    ['edges-not-found', picture, { outer: edges.inner, inner: edges.outer }],
    ['edges-not-found', picture, { ...edges, inner: { ...scaled(outer, 0.7), cx: 260 } }],
    ['edges-not-found', picture, { ...edges, inner: { ...outer, rx: 0 } }],
    [
      'face-cut-by-frame',
      picture,
      { outer: { ...outer, cx: 120 }, inner: { ...outer, cx: 120, rx: 110, ry: 110 } },
    ],
    ['face-too-small', picture, { outer: scaled(outer, 0.85), inner: scaled(outer, 0.6) }],
    [
      'view-too-oblique',
      picture,
      { outer: { ...outer, ry: 145 }, inner: { ...outer, rx: 110, ry: 100 } },
    ],
    ['overexposed', white, edges],
  ] as const)('refuses as %s', (reason, shown, set) => {
    expect(prepareFace(shown, set)).toMatchObject({ kind: 'refused', reason })
  })
})
