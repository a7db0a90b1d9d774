import { describe, expect, it } from 'vitest'
import type { Drawing, TextShape } from '../../src/plots/drawing.ts'
import { type SeenOverlay, seenOverlay } from '../../src/plots/seen-overlay.ts'

const ring = (radiusPx: number, cx = 500, cy = 400) => ({
  cx,
  cy,
  rx: radiusPx,
  ry: radiusPx,
  rotationDeg: 0,
})
/** A short band across the land at an angle. */
const band = (order: number, deg: number, radiusPx: number) => {
  const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)]
  const at = (r: number) => [500 + r * c, 400 - r * s] as const
  return { order, points: [at(radiusPx - 5), at(radiusPx), at(radiusPx + 5)] }
}
const seen = (changes: Partial<SeenOverlay> = {}): SeenOverlay => ({
  widthPx: 1000,
  heightPx: 800,
  outer: ring(300),
  inner: ring(260),
  bandLines: [band(0, 10, 280), band(1, 60, 280), band(2, 120, 280)],
  doubtfulDeg: [],
  arrowsDeg: null,
  arrowTexts: ['A', 'B'],
  ...changes,
})
const labels = (drawing: Drawing) =>
  drawing.shapes.filter((one): one is TextShape => one.kind === 'text')
const radiusOf = ({ x, y, sizePx }: TextShape) => Math.hypot(x - 500, y - 0.35 * sizePx - 400)

describe('seenOverlay', () => {
  it('writes the order of each band beside a narrow land, so that the bands stay in sight', () => {
    const orders = labels(seenOverlay(seen()))
    expect(orders.map((one) => one.text).sort()).toEqual(['0', '1', '2'])
    for (const one of orders) expect(radiusOf(one)).toBeGreaterThan(300 + one.sizePx / 2)
  })

  it('writes it inside where the picture ends', () => {
    const [one] = labels(seenOverlay(seen({ widthPx: 810, bandLines: [band(4, 0, 280)] })))
    expect(one && radiusOf(one)).toBeLessThan(260)
  })

  it('writes it on the band where the land is wide', () => {
    const wide = seen({ inner: ring(100), bandLines: [band(0, 10, 200)] })
    const [one] = labels(seenOverlay(wide))
    // The label is centred on the middle of the line; half a pixel for rounding.
    expect(one && Math.abs(radiusOf(one) - 200)).toBeLessThan(0.5)
  })

  it('labels both places where one band crosses the land, and never two labels over each other', () => {
    const crossing = seen({ bandLines: [band(3, 80, 280), band(3, -80, 280), band(4, 82, 280)] })
    expect(labels(seenOverlay(crossing)).map((one) => one.text)).toEqual(['3', '3'])
  })

  it('rings the places that were marked, with the orders of their bands', () => {
    const marks = [
      { x: 500, y: 120, order: 1 },
      { x: 780, y: 400, order: 1.5 },
    ]
    const drawing = seenOverlay(seen({ bandLines: [], marks }))
    expect(labels(drawing).map((one) => one.text)).toEqual(['1', '1.5'])
    const plain = seenOverlay(seen({ bandLines: [] }))
    // A ring is a light line and a dark one, a label a box and a text.
    expect(drawing.shapes.length - plain.shapes.length).toBe(2 * (2 + 2))
  })

  it('marks a doubtful place outside the face, counter-clockwise from the right', () => {
    const [one] = labels(seenOverlay(seen({ bandLines: [], doubtfulDeg: [90] })))
    expect(one?.text).toBe('?')
    expect(one?.x).toBe(500)
    expect(one?.y).toBeLessThan(100)
  })
})
