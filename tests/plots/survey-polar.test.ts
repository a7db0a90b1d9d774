import { describe, expect, it } from 'vitest'
import type { Drawing } from '../../src/plots/drawing.ts'
import { surveyPolar } from '../../src/plots/survey-polar.ts'
import { coordinates, subpaths } from './path-points.ts'
import { pathsOf, textsOf } from './shapes-of.ts'
import { expectOnCanvas } from './stays-on-canvas.ts'
import { offCircle, polarOptions } from './survey-polar-options.ts'

const centre = 160
/** Radius of a circle drawn of two arcs, about the middle of the plot. */
const radiusOf = (d: string) => coordinates(d)[2] as number
/** Middle of a mark that is symmetrical. */
const middleOf = (d: string) => {
  const all = coordinates(d)
  // Arcs give their radii too: only the ends count, first of M and of each A.
  const [x1, y1, , , x2] = all as [number, number, number, number, number]
  return { x: (x1 + x2) / 2, y: y1 }
}
/** Middles of the marks of the first turn; the legend shows one more, below the plot. */
const readingsOf = (drawing: Drawing) =>
  pathsOf(drawing, 'reading 1')
    .map((one) => middleOf(one.d))
    .filter((one) => one.y < drawing.widthPx)
const flat = offCircle({ meanUm: 3, eccentricityUm: 0, directionDeg: 0 })

describe('surveyPolar', () => {
  it('keeps on its canvas on a phone and on a sheet, with a limit near, far and far below', () => {
    for (const sizePx of [280, 320, 700]) {
      for (const limitUm of [null, 1, 50, 4000]) {
        expectOnCanvas(surveyPolar({ ...polarOptions, sizePx, limitUm }))
      }
    }
  })

  it('lays 0 on top, angles clockwise, and what reads higher further out', () => {
    const marks = readingsOf(surveyPolar(polarOptions))
    const [top, , right, , , , left] = marks
    // Coordinates are rounded to a hundredth of a pixel.
    expect(top?.x).toBeCloseTo(centre, 1)
    expect(top?.y).toBeLessThan(centre)
    expect(right?.y).toBeCloseTo(centre, 1)
    const [out, inwards] = [(right?.x ?? 0) - centre, centre - (left?.x ?? 0)]
    // Highest and lowest lie as far from the middle circle as the plot allows: 0.66 and 0.30.
    expect(out).toBeCloseTo(124 * 0.96, 1)
    expect(inwards).toBeCloseTo(124 * 0.36, 1)
  })

  it('is mirrored where angles rise the other way', () => {
    const drawing = surveyPolar({ ...polarOptions, isClockwise: false })
    const left = readingsOf(drawing)[2]
    expect((left?.x ?? 0) - centre).toBeCloseTo(-124 * 0.96, 1)
  })

  it('draws the fitted circle through readings that lie on it', () => {
    const drawing = surveyPolar(polarOptions)
    const [line] = pathsOf(drawing, 'fitted')
    const points = subpaths(line?.d ?? '')[0] ?? []
    expect(points.length).toBe(120)
    for (const mark of readingsOf(drawing)) {
      const nearest = Math.min(...points.map((p) => Math.hypot(p.x - mark.x, p.y - mark.y)))
      // Points of the line lie 3 degrees apart and include those of the readings.
      expect(nearest).toBeLessThan(0.02)
    }
  })

  it('points the arrow from the axis to the centre of the fitted circle, in the same scale', () => {
    const [head] = pathsOf(surveyPolar(polarOptions), 'offset head')
    const [x, y] = coordinates(head?.d ?? '')
    expect(x).toBeCloseTo(centre + 124 * 0.3, 1)
    expect(y).toBeCloseTo(centre, 1)
  })

  it('shows neither arrow nor highest place where the direction means nothing', () => {
    const fit = { meanUm: 3, eccentricityUm: 0.4, directionDeg: null }
    const drawing = surveyPolar({ ...polarOptions, points: flat, turns: [flat], fit })
    expect(pathsOf(drawing, 'offset head')).toEqual([])
    expect(pathsOf(drawing, 'highest')).toEqual([])
    expect(textsOf(drawing)).not.toContain('highest')
    expect(pathsOf(drawing, 'fitted')).toHaveLength(1)
  })

  it('holds the readings between the circles of the limit exactly when they keep it', () => {
    const rings = (limitUm: number) => {
      const [outer, inner] = (
        pathsOf(surveyPolar({ ...polarOptions, limitUm }), 'limit')[0]?.d ?? ''
      )
        .split('Z')
        .filter((one) => one !== '')
        .map(radiusOf)
      const marks = readingsOf(surveyPolar({ ...polarOptions, limitUm }))
      const distances = marks.map(({ x, y }) => Math.hypot(x - centre, y - centre))
      return { outer, inner, most: Math.max(...distances), least: Math.min(...distances) }
    }
    const kept = rings(40.5)
    expect(kept.most).toBeLessThan(kept.outer as number)
    expect(kept.least).toBeGreaterThan(kept.inner as number)
    const broken = rings(39.5)
    expect(broken.most).toBeGreaterThan(broken.outer as number)
    expect(broken.least).toBeLessThan(broken.inner as number)
  })

  it('gives each turn marks of its own and lays the closing reading as a cross', () => {
    const turns = Array.from({ length: 7 }, () => polarOptions.points)
    const closing = [{ angleDeg: 0, valueUm: 8 }]
    const drawing = surveyPolar({ ...polarOptions, turns, closing })
    const shapes = [1, 2, 3, 4, 5].map((turn) => pathsOf(drawing, `reading ${turn}`)[0]?.d)
    expect(new Set(shapes).size).toBe(5)
    // One on the plot, one beside its word.
    expect(pathsOf(drawing, 'closing')).toHaveLength(2)
    expect(textsOf(drawing)).toContain('turn 5')
    expect(textsOf(drawing)).not.toContain('turn 6')
  })

  it('draws two circles of the minimum zone as far apart as the zone is wide', () => {
    const zone = { cosineUm: 0, sineUm: 20, innerUm: 4, outerUm: 8 }
    const drawing = surveyPolar({ ...polarOptions, minimumZone: zone, limitUm: 100 })
    const [inner, outer] = subpaths(pathsOf(drawing, 'minimum zone')[0]?.d ?? '')
    const pxPerUm = (124 * 0.3) / 50
    const gaps = (inner ?? []).map((p, i) => {
      const q = outer?.[i] ?? { x: 0, y: 0 }
      return Math.hypot(q.x - p.x, q.y - p.y)
    })
    // Each is the difference of two coordinates rounded to a hundredth of a pixel.
    for (const gap of gaps) expect(gap).toBeCloseTo(4 * pxPerUm, 1)
  })

  it('says by how much heights are enlarged, only where the size of the part is known', () => {
    const pxPerUm = (124 * 0.3) / 20
    const times = Math.round((pxPerUm * 1000 * 25) / (124 * 0.66))
    expect(textsOf(surveyPolar(polarOptions))).toContain(`bar 20, times ${times}`)
    const unknown = surveyPolar({ ...polarOptions, sweptDiameterMm: null })
    expect(textsOf(unknown)).toContain('bar 20')
  })

  it('draws a part without any movement, and one without a fit', () => {
    const drawing = surveyPolar({ ...polarOptions, points: flat, turns: [flat], fit: null })
    expectOnCanvas(drawing)
    expect(pathsOf(drawing, 'fitted')).toEqual([])
  })

  it('labels twelve positions, and only quarters where there are more', () => {
    const many = Array.from({ length: 24 }, (_, i) => ({ angleDeg: i * 15, valueUm: i % 3 }))
    const twelve = many.filter((_, i) => i % 2 === 0)
    const labels = (points: typeof many) =>
      textsOf(surveyPolar({ ...polarOptions, points, turns: [points] })).filter((text) =>
        text.endsWith('degrees'),
      )
    expect(labels(twelve)).toHaveLength(11)
    expect(labels(many)).toEqual(['90 degrees', '180 degrees', '270 degrees'])
  })

  it('refuses a size out of range and a survey without readings', () => {
    expect(() => surveyPolar({ ...polarOptions, sizePx: 200 })).toThrow(RangeError)
    expect(() => surveyPolar({ ...polarOptions, points: [], turns: [] })).toThrow(RangeError)
  })
})
