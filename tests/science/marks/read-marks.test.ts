import { describe, expect, it } from 'vitest'
import { type PictureMark, readMarks } from '../../../src/science/marks/read-marks.ts'
import { surfaceFigures } from '../../../src/science/surface/surface-figures.ts'
import { surfaceMap } from '../../../src/science/surface/surface-map.ts'
import { type MadeFace, madeFace, madeMarks } from './made-marks.ts'

const outer = { cx: 800, cy: 600, rx: 500, ry: 500, rotationDeg: 0 }
const edges = (radiusRatio: number) => ({
  outer,
  inner: { ...outer, rx: 500 * radiusRatio, ry: 500 * radiusRatio },
  radiusRatio,
  doOrdersRiseWithGap: true,
})
const pictured = (face: MadeFace, count: number, seed: number): PictureMark[] =>
  madeMarks(face, { count, seed }).map(({ x, y, order }) => ({
    x: 800 + 500 * x,
    y: 600 - 500 * y,
    order,
  }))
const mustRead = (...asked: Parameters<typeof readMarks>) => {
  const got = readMarks(...asked)
  if (got.kind === 'refused') throw new Error(got.reason)
  return got
}
const figuresOf = (got: ReturnType<typeof mustRead>) =>
  surfaceFigures(surfaceMap(got.surface, { ringCount: 17, angleCount: 180 }))

const tilted = { radiusRatio: 0.7, tiltBands: 8, towardsDeg: 40 }
const saddle = madeFace((r, a) => 0.5 * r * r * Math.cos(2 * a), tilted)

describe('readMarks', () => {
  it('covers the true peak to valley by its U on faces that it never saw', () => {
    const t = (r: number, e: number) => (2 * r - 1 - e) / (1 - e)
    const forms: readonly ((r: number, a: number, e: number) => number)[] = [
      (r) => -1.5 * r * r,
      (r) => 2 * r,
      (r, a) => 0.6 * r * r * Math.cos(2 * a + 1),
      (r, a) => 0.4 * r ** 3 * Math.cos(3 * a),
      (r, a, e) => 0.4 * t(r, e) + 0.3 * Math.cos(2 * a) + 0.2 * Math.cos(3 * a - 1),
      (r, _, e) => -0.6 * t(r, e) ** 2,
    ]
    let [coveredCount, count] = [0, 0]
    for (const [at, form] of forms.entries()) {
      for (let seed = 1; seed <= 5; seed++) {
        const radiusRatio = 0.55 + 0.07 * seed
        const options = { radiusRatio, tiltBands: 5 + 2 * seed, towardsDeg: 70 * seed }
        const face = madeFace((r, a) => form(r, a, radiusRatio), options)
        const size = { ringCount: 33, angleCount: 180 }
        const radii = Array.from({ length: size.ringCount }, (_, i) => {
          return radiusRatio + ((1 - radiusRatio) * i) / 32
        })
        const anglesDeg = Array.from({ length: 180 }, (_, j) => 2 * j)
        const truth = surfaceFigures({
          radii,
          anglesDeg,
          heights: radii.map((r) =>
            anglesDeg.map((d) => form(r, (d * Math.PI) / 180, radiusRatio)),
          ),
        })
        const got = mustRead(pictured(face, 20 + 4 * seed, 100 * at + seed), edges(radiusRatio))
        const off = Math.abs(figuresOf(got).peakToValley - truth.peakToValley)
        coveredCount += off <= got.expandedUncertaintyBands ? 1 : 0
        count++
      }
    }
    expect(count).toBe(30)
    // Nominally 95 %: of 30, 26 or more with a probability of 98 %.
    expect(coveredCount).toBeGreaterThanOrEqual(26)
  })

  it('takes the sign from what rising orders mean', () => {
    const dome = madeFace((r) => -2 * r * r, tilted)
    const marks = pictured(dome, 40, 4)
    const right = mustRead(marks, edges(0.7))
    const turned = mustRead(marks, { ...edges(0.7), doOrdersRiseWithGap: false })
    expect(figuresOf(right).taper).toBeLessThan(-0.6) // true -1.02: the inner edge is high
    expect(figuresOf(turned).taper).toBeCloseTo(-figuresOf(right).taper, 10) // rounding
    expect(right.tiltDirectionDeg).toBeCloseTo(40, -1) // within five degrees
    const apart = Math.abs(turned.tiltDirectionDeg - right.tiltDirectionDeg)
    expect(apart).toBeCloseTo(180, 8) // rounding
  })

  it('finds height, tilt and count of bands of a saddle', () => {
    const marks = pictured(saddle, 60, 5)
    const got = mustRead(marks, edges(0.7))
    expect(Math.abs(figuresOf(got).peakToValley - 1)).toBeLessThan(got.expandedUncertaintyBands)
    expect(got.tiltBands).toBeCloseTo(8, 0) // within half a band
    const whole = marks.map((mark) => mark.order).filter(Number.isInteger)
    expect(got.bandCount).toBe(Math.max(...whole) - Math.min(...whole) + 1)
    expect(got.quality).toBeGreaterThan(0.5)
  })

  it('divides by the cosine of the view, from the ellipse or as stated', () => {
    const marks = pictured(saddle, 30, 6)
    const straight = mustRead(marks, edges(0.7))
    const stated = mustRead(marks, { ...edges(0.7), viewingAngleDeg: 20 })
    const factor = 1 / Math.cos((20 * Math.PI) / 180)
    expect(figuresOf(stated).peakToValley / figuresOf(straight).peakToValley).toBeCloseTo(
      factor,
      10,
    )
    const squeezed = marks.map((mark) => ({ ...mark, y: 600 + 0.95 * (mark.y - 600) }))
    const oblique = {
      ...edges(0.7),
      outer: { ...outer, ry: 475 },
      inner: { ...outer, rx: 350, ry: 332.5 },
    }
    const seen = mustRead(squeezed, oblique)
    expect(figuresOf(seen).peakToValley / figuresOf(straight).peakToValley).toBeCloseTo(1 / 0.95, 8)
  })

  it('refuses edges that are not one ring, and an oblique view', () => {
    const marks = pictured(saddle, 30, 6)
    const reason = (options: Parameters<typeof readMarks>[1]) => {
      const got = readMarks(marks, options)
      return got.kind === 'refused' ? got.reason : got.kind
    }
    expect(reason({ ...edges(0.7), radiusRatio: 0.8 })).toBe('edges-not-one-ring')
    expect(reason({ ...edges(0.7), inner: { ...outer, cx: 840, rx: 350, ry: 350 } })).toBe(
      'edges-not-one-ring',
    )
    const flat = { outer: { ...outer, ry: 460 }, inner: { ...outer, rx: 350, ry: 322 } }
    expect(reason({ ...edges(0.7), ...flat })).toBe('view-too-oblique')
    expect(reason(edges(0.995))).toBe('edges-not-one-ring')
    expect(reason(edges(0.01))).toBe('edges-not-one-ring')
    expect(reason(edges(0.7))).toBe('read')
  })

  it('names the mark whose order is wrong', () => {
    const marks = pictured(saddle, 40, 8)
    const wrong = marks.map((mark, i) => (i === 11 ? { ...mark, order: mark.order - 1 } : mark))
    expect(readMarks(wrong, edges(0.7))).toMatchObject({
      kind: 'refused',
      reason: 'mark-does-not-fit',
      markIndex: 11,
    })
  })

  it('refuses 19 marks and takes 20', () => {
    const marks = pictured(saddle, 20, 9)
    expect(readMarks(marks, edges(0.7)).kind).toBe('read')
    expect(readMarks(marks.slice(1), edges(0.7))).toMatchObject({ reason: 'too-few-marks' })
  })

  it('gives the same figures every time, bit for bit', () => {
    const marks = pictured(saddle, 24, 10)
    expect(readMarks(marks, edges(0.7))).toEqual(readMarks(marks, edges(0.7)))
  })
})
