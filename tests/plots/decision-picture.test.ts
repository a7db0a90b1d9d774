import { describe, expect, it } from 'vitest'
import { decisionPicture } from '../../src/plots/decision-picture.ts'
import type { DecisionPictureOptions } from '../../src/plots/decision-picture-options.ts'
import type { Drawing, LineShape, PathShape, TextShape } from '../../src/plots/drawing.ts'
import { hatchPath } from '../../src/plots/hatch-path.ts'
import { coordinates } from './path-points.ts'

const labels = {
  lowerLimit: 'at least 1.00',
  upperLimit: 'at most 2.00',
  lowerAcceptance: 'accepted from 1.24',
  upperAcceptance: 'accepted to 1.76',
  value: '1.90 ± 0.24',
  beyond: '20.2 % of what is known lies beyond',
}
const near: DecisionPictureOptions = {
  value: 1.9,
  standardUncertainty: 0.12,
  expandedUncertainty: 0.24,
  lowerLimit: null,
  upperLimit: 2,
  acceptanceLimits: { lower: null, upper: 1.76 },
  labels,
  widthPx: 320,
}
const two: DecisionPictureOptions = {
  ...near,
  lowerLimit: 1,
  acceptanceLimits: { lower: 1.24, upper: 1.76 },
  rejectionLimits: { lower: 0.76, upper: 2.24 },
}
/** Beside plain ones, what would break a scale or a row of words. */
const cases: readonly DecisionPictureOptions[] = [
  near,
  two,
  { ...near, value: 0.2, isNonNegative: true },
  { ...near, value: 90 },
  { ...near, value: -90 },
  { ...near, standardUncertainty: 40, expandedUncertainty: 80 },
  { ...near, standardUncertainty: 0, expandedUncertainty: 0 },
  { ...near, standardUncertainty: 1e-9, expandedUncertainty: 2e-9 },
  { ...near, value: 2, upperLimit: 2, standardUncertainty: 0, expandedUncertainty: 0 },
  { ...two, value: 90 },
  { ...two, value: -90 },
  { ...two, acceptanceLimits: { lower: 1.8, upper: 1.2 } },
  { ...two, acceptanceLimits: { lower: 1, upper: 2 } },
  { ...near, lowerLimit: 1, upperLimit: null, acceptanceLimits: { lower: 1.24, upper: null } },
]

const paths = (drawing: Drawing, part: string) =>
  drawing.shapes.filter((one): one is PathShape => one.kind === 'path' && one.part === part)
const lines = (drawing: Drawing, strokePx: number) =>
  drawing.shapes.filter((one): one is LineShape => one.kind === 'line' && one.strokePx === strokePx)
const texts = (drawing: Drawing) =>
  drawing.shapes.filter((one): one is TextShape => one.kind === 'text')
const xs = (d: string) => coordinates(d).filter((_, index) => index % 2 === 0)

describe('decisionPicture', () => {
  it.each(cases)('keeps to its canvas at $widthPx px: $value in $acceptanceLimits', (options) => {
    for (const widthPx of [240, 320, 700]) {
      const drawing = decisionPicture({ ...options, widthPx })
      expect(drawing.shapes.length).toBeGreaterThan(8)
      for (const shape of drawing.shapes) {
        const places =
          shape.kind === 'path'
            ? coordinates(shape.d)
            : shape.kind === 'line'
              ? [shape.x1, shape.y1, shape.x2, shape.y2]
              : [shape.x, shape.y]
        for (const [index, place] of places.entries()) {
          expect(place).toBeGreaterThanOrEqual(0)
          expect(place).toBeLessThanOrEqual(index % 2 === 0 ? widthPx : drawing.heightPx)
        }
      }
    }
  })

  it.each(cases)('lets no words overlap: $value in $acceptanceLimits', (options) => {
    const boxes = texts(decisionPicture(options)).map(({ x, y, text, anchor }) => {
      // Half an em of 13 px a letter: a little wider than the typeface is.
      const width = text.length * 6
      const left = { start: x, middle: x - width / 2, end: x - width }[anchor]
      return { left, right: left + width, y }
    })
    for (const [index, a] of boxes.entries()) {
      expect(a.left).toBeGreaterThanOrEqual(-2) // estimated letters
      expect(a.right).toBeLessThanOrEqual(options.widthPx + 2)
      for (const b of boxes.slice(index + 1)) {
        const isApart = a.right <= b.left || b.right <= a.left || Math.abs(a.y - b.y) >= 13
        expect(isApart).toBe(true)
      }
    }
  })

  it('stands posts and dashed lines in proportion to the limits', () => {
    const drawing = decisionPicture(two)
    const [lower, upper] = lines(drawing, 3).map((post) => post.x1)
    const [from, to] = lines(drawing, 1.5).map((dashed) => dashed.x1)
    const scale = (upper! - lower!) / (2 - 1)
    // places are rounded to 0.01 px
    expect(from! - lower!).toBeCloseTo(0.24 * scale, 1)
    expect(upper! - to!).toBeCloseTo(0.24 * scale, 1)
    expect(lines(drawing, 1.5).every((dashed) => dashed.dash === 'dashed')).toBe(true)
  })

  it('spans whiskers of the expanded uncertainty about the result', () => {
    const drawing = decisionPicture(two)
    const [lower, upper] = lines(drawing, 3).map((post) => post.x1)
    const [whisker] = lines(drawing, 2)
    expect(whisker!.x2 - whisker!.x1).toBeCloseTo(0.48 * (upper! - lower!), 1) // rounded places
    const dot = xs(paths(drawing, 'result')[0]!.d)
    // The dot's path begins at its left.
    expect(dot[0]! + 5).toBeCloseTo((whisker!.x1 + whisker!.x2) / 2, 1)
  })

  it('fills the dot within the limits only', () => {
    const fill = (value: number) => paths(decisionPicture({ ...two, value }), 'result')[0]?.fill
    expect([0.99, 1, 2, 2.01].map(fill)).toEqual(['paper', 'ink', 'ink', 'paper'])
  })

  it('fills of the bell just what lies beyond the limits', () => {
    const drawing = decisionPicture(near)
    const [post] = lines(drawing, 3)
    const [beyond] = paths(drawing, 'beyond')
    expect(Math.min(...xs(beyond!.d))).toBe(post!.x1)
    expect(Math.max(...xs(paths(drawing, 'within')[0]!.d))).toBe(post!.x1)
    expect(paths(decisionPicture({ ...near, value: 0.2 }), 'beyond')).toEqual([])
    const far = decisionPicture({ ...near, value: 90 })
    expect([paths(far, 'within').length, paths(far, 'beyond').length]).toEqual([0, 1])
    const wide = { ...two, standardUncertainty: 1, expandedUncertainty: 2 }
    expect(paths(decisionPicture(wide), 'beyond')).toHaveLength(2)
  })

  it('cuts the bell at 0 where nothing is below', () => {
    const at0 = { ...near, value: 0.1, standardUncertainty: 0.2, expandedUncertainty: 0.4 }
    const left = (isNonNegative: boolean) =>
      Math.min(...xs(paths(decisionPicture({ ...at0, isNonNegative }), 'within')[0]!.d))
    expect(left(true)).toBeGreaterThan(left(false) + 20)
  })

  it('shows no bell without uncertainty', () => {
    const exact = decisionPicture({ ...near, standardUncertainty: 0, expandedUncertainty: 0 })
    expect([...paths(exact, 'within'), ...paths(exact, 'beyond')]).toEqual([])
  })

  it('hatches the guard band from the dashed line to the post, and the outer one beyond', () => {
    const drawing = decisionPicture(two)
    const [lower, upper] = lines(drawing, 3).map((post) => post.x1)
    const [from, to] = lines(drawing, 1.5).map((dashed) => dashed.x1)
    const spans = (part: string) =>
      paths(drawing, part).map((one) => [Math.min(...xs(one.d)), Math.max(...xs(one.d))])
    // Slanted lines begin and end up to their distance of 5 px inside the band.
    for (const [[start, end], [a, b]] of [
      [spans('guard')[0]!, [lower!, from!]],
      [spans('guard')[1]!, [to!, upper!]],
    ] as const) {
      expect(start! - a!).toBeGreaterThanOrEqual(0)
      expect(start! - a!).toBeLessThan(5)
      expect(b! - end!).toBeGreaterThanOrEqual(0)
      expect(b! - end!).toBeLessThan(5)
    }
    expect(spans('outer-guard')).toHaveLength(2)
    expect(spans('outer-guard')[1]![0]!).toBeGreaterThanOrEqual(upper!)
  })

  it('accepts nothing where the limits of acceptance cross', () => {
    const empty = decisionPicture({ ...two, acceptanceLimits: { lower: 1.8, upper: 1.2 } })
    expect(paths(empty, 'accepted')).toEqual([])
    expect(paths(empty, 'guard')).toHaveLength(1)
    expect(lines(empty, 1.5)).toEqual([])
    expect(texts(empty).map((one) => one.text)).not.toContain(labels.upperAcceptance)
  })

  it('draws no guard band by simple acceptance', () => {
    const simple = decisionPicture({ ...two, acceptanceLimits: { lower: 1, upper: 2 } })
    expect(paths(simple, 'guard')).toEqual([])
    expect(lines(simple, 1.5)).toEqual([])
    expect(paths(simple, 'accepted')).toHaveLength(1)
  })

  it('says the same without any tone', () => {
    const bare = (options: DecisionPictureOptions) =>
      JSON.stringify(
        decisionPicture(options).shapes.map((one) =>
          one.kind === 'path' ? [one.d, one.dash] : one.kind,
        ),
      )
    const guarded = bare(near)
    expect(bare({ ...near, acceptanceLimits: { lower: null, upper: 2 } })).not.toBe(guarded)
    expect(bare({ ...near, rejectionLimits: { lower: null, upper: 2.24 } })).not.toBe(guarded)
  })

  it.each([
    { upperLimit: null },
    { value: Number.NaN },
    { expandedUncertainty: Number.POSITIVE_INFINITY },
    { widthPx: 200 },
    { widthPx: Number.NaN },
  ])('refuses %o', (wrong) => {
    const options = { ...near, acceptanceLimits: { lower: null, upper: null }, ...wrong }
    expect(() => decisionPicture(options)).toThrow(RangeError)
  })
})

describe('hatchPath', () => {
  const box = { x: 10, y: 20, width: 30, height: 12 }

  it('stays in its box and slants the way it is told', () => {
    for (const slant of ['rising', 'falling'] as const) {
      const values = coordinates(hatchPath(box, slant))
      expect(values.length).toBeGreaterThan(20)
      for (let index = 0; index < values.length; index += 4) {
        const [x1, y1, x2, y2] = values.slice(index, index + 4) as [number, number, number, number]
        for (const x of [x1, x2]) expect(x >= 10 && x <= 40).toBe(true)
        for (const y of [y1, y2]) expect(y >= 20 && y <= 32).toBe(true)
        expect(x2 - x1).toBeCloseTo(slant === 'rising' ? y1 - y2 : y2 - y1, 9) // rounding
      }
    }
  })

  it('has nothing to draw without width and refuses less', () => {
    expect(hatchPath({ ...box, width: 0 }, 'rising')).toBe('')
    expect(() => hatchPath({ ...box, width: -1 }, 'rising')).toThrow(
      'hatchPath requires width from 0, got -1 by 12',
    )
    expect(() => hatchPath({ ...box, x: Number.NaN }, 'rising')).toThrow(RangeError)
  })
})
