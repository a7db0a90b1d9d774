import { describe, expect, it } from 'vitest'
import type { PhotoReading } from '../../../src/science/photo/photo-reading.ts'
import { type PhotoOptions, readPhoto } from '../../../src/science/photo/read-photo.ts'
import { surfaceMap } from '../../../src/science/surface/surface-map.ts'
import { paintRing, placesOn } from './paint-ring.ts'

const outer = { cx: 203.2, cy: 197.6, rx: 170, ry: 168, rotationDeg: 40 }
const inner = { ...outer, rx: 0.7 * 170, ry: 0.7 * 168 }
const edges = { outer: placesOn(outer, 8, 1.5), inner: placesOn(inner, 8, 1.5) }
/** A dish: high at both edges of the ring less in the middle, and a saddle. */
const height = (x: number, y: number) => 0.9 * Math.hypot(x, y) + 0.15 * (x * x - y * y)
const gapOf = (x: number, y: number) => 4 * x + 2 * y + 0.2 - height(x, y) * (168 / 170)
const painted = { width: 400, height: 400, outer, radiusRatio: 0.7, chamfer: 0.02 }
const picture = paintRing({ ...painted, gap: gapOf })
const read = (options: Partial<PhotoOptions> = {}): PhotoReading => {
  const answer = readPhoto(picture, { ...edges, ...options })
  if (answer.kind !== 'read') throw new Error(answer.reason)
  return answer
}

// Each reading takes a second or two, longer beside other work.
describe('readPhoto', { timeout: 60_000 }, () => {
  const reading = read({ wedge: { opensTowardsDeg: 30 } })

  it('gives the flatness of the surface that was painted, within its uncertainty', () => {
    // Over rings and rays: 0.9 (1 - r) + waves, plane 0 by symmetry.
    let [highest, lowest] = [-9, 9]
    for (let i = 0; i <= 40; i++) {
      for (let j = 0; j < 90; j++) {
        const r = 0.7 + (0.3 * i) / 40
        const value = height(r * Math.cos((j * Math.PI) / 45), r * Math.sin((j * Math.PI) / 45))
        highest = Math.max(highest, value)
        lowest = Math.min(lowest, value)
      }
    }
    const error = reading.peakToValleyBands - (highest - lowest)
    expect(Math.abs(error)).toBeLessThan(2 * reading.standardUncertaintyBands)
    // Without noise the reading is better than that: edges to a tenth of a pixel of 170.
    expect(Math.abs(error)).toBeLessThan(0.03)
  })

  it('gives the right side up by what was seen of the wedge', () => {
    const map = surfaceMap(reading.surface, { ringCount: 2, angleCount: 24 })
    const mean = (row: readonly number[] = []) => row.reduce((a, b) => a + b, 0) / row.length
    expect(reading.isSignKnown).toBe(true)
    // The outer edge is higher by 0.9 x 0.3.
    expect(Math.abs(mean(map.heights[1]) - mean(map.heights[0]) - 0.27)).toBeLessThan(0.03)
    const other = read({ wedge: { opensTowardsDeg: 210 } })
    expect(other.surface.coefficients.map((c) => 0 - c)).toEqual([...reading.surface.coefficients])
    expect(other.peakToValleyBands).toBe(reading.peakToValleyBands)
    expect(read().isSignKnown).toBe(false)
  })

  it('names the tilt that it took away', () => {
    // 2 hypot(4, 2) bands over the diameter; the saddle adds nothing, the cone nothing.
    expect(Math.abs(reading.tiltBands - 2 * Math.hypot(4, 2))).toBeLessThan(0.05)
    expect(Math.abs(reading.tiltDirectionDeg - 26.57)).toBeLessThan(1)
  })

  it('draws dark bands where the picture is dark', () => {
    expect(reading.bandLines.length).toBeGreaterThan(8)
    for (const { points } of reading.bandLines) {
      for (const [px, py] of points) {
        const red = picture.data[3 * (Math.round(py) * 400 + Math.round(px))] ?? 255
        // Bright bands are 0.6 of full light, byte 203; dark ones 0.2, byte 124.
        expect(red).toBeLessThan(160)
      }
    }
  })

  it('gives the same answer again, bit for bit', () => {
    expect(read({ wedge: { opensTowardsDeg: 30 } })).toEqual(reading)
  })

  it('takes the angle of view that was told', () => {
    const told = read({ viewingAngleDeg: 20 })
    const ratio = told.peakToValleyBands / reading.peakToValleyBands
    // From the followed edge 168 / 170, known to a thousandth, to cos 20 degrees.
    expect(Math.abs(ratio - 168 / 170 / Math.cos(Math.PI / 9))).toBeLessThan(0.003)
  })

  it.each([
    ['no-clear-bands', () => 0.25, {}],
    ['too-few-bands', (x: number, y: number) => 1.5 * x + y, {}],
    ['edges-not-found', gapOf, { radiusRatio: 0.8 }],
    [
      'model-does-not-fit',
      (x: number, y: number) => gapOf(x, y) + (y > 0.5 * x && x > -y ? 0.5 : 0),
      {},
    ],
  ] as const)('refuses as %s', (reason, gap, options) => {
    const answer = readPhoto(paintRing({ ...painted, gap }), { ...edges, ...options })
    expect(answer).toMatchObject({ kind: 'refused', reason })
  })

  it('names a hand over the face, and a lamp of many colours', () => {
    // Over 110 degrees from the middle on, so that edges enough are left to be followed.
    const hand = picture.data.map((byte, i) => {
      const [dx, dy] = [(Math.floor(i / 3) % 400) - outer.cx, outer.cy - Math.floor(i / 1200)]
      return Math.abs(Math.atan2(dx, dy)) < (55 * Math.PI) / 180 ? 60 : byte
    })
    const covered = readPhoto({ ...picture, data: hand }, { outer, inner })
    expect(covered).toMatchObject({ kind: 'refused', reason: 'face-partly-hidden' })
    // Over half of both edges: a hand, or edges that lie wrong; the words name both.
    const sheet = picture.data.map((byte, i) => (i < 1.5 * 400 * 400 ? 60 : byte))
    const lost = readPhoto({ ...picture, data: sheet }, { outer, inner })
    expect(lost).toMatchObject({ kind: 'refused', reason: 'model-does-not-fit' })
    // Green and blue see 13 and 31 % more bands than red.
    const blue = paintRing({ ...painted, gap: (x, y) => 1.31 * gapOf(x, y) }).data
    const green = paintRing({ ...painted, gap: (x, y) => 1.13 * gapOf(x, y) }).data
    const white = picture.data.map((byte, i) =>
      i % 3 === 0 ? byte : ((i % 3 === 1 ? green : blue)[i - (i % 3)] as number),
    )
    const manifold = readPhoto({ ...picture, data: white }, edges)
    expect(manifold).toMatchObject({ kind: 'refused', reason: 'lamp-of-many-colours' })
  })

  it('refuses edges that lie nearly on each other, or on nothing, and never fails', () => {
    const stripes = new Uint8Array(3 * 400 * 400).map((_, i) => (Math.floor(i / 37) % 2) * 255)
    const burnt = picture.data.map((byte, i) => (i % 1200 < 640 ? 255 : byte))
    const size = { width: 400, height: 400 }
    for (const data of [stripes, burnt]) {
      for (const ratio of [0.3, 0.96, 0.964, 0.97, 0.974, 0.98]) {
        const within = { ...outer, rx: ratio * outer.rx, ry: ratio * outer.ry }
        expect(readPhoto({ ...size, data }, { outer, inner: within }).kind).toBe('refused')
      }
    }
    const beside = { ...outer, cx: 900 }
    const both = { outer: beside, inner: { ...inner, cx: 900 } }
    expect(readPhoto(picture, both)).toMatchObject({ reason: 'face-cut-by-frame' })
  })

  it('refuses every kind of empty picture instead of failing', () => {
    for (const byte of [0, 128, 255]) {
      const data = new Uint8Array(3 * 400 * 400).fill(byte)
      expect(readPhoto({ data, width: 400, height: 400 }, edges).kind).toBe('refused')
    }
  })
})
