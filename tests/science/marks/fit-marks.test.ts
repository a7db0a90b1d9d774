import { describe, expect, it } from 'vitest'
import { fitMarks } from '../../../src/science/marks/fit-marks.ts'
import { surfaceFigures } from '../../../src/science/surface/surface-figures.ts'
import { surfaceMap } from '../../../src/science/surface/surface-map.ts'
import { madeFace, madeMarks } from './made-marks.ts'

const options = { radiusRatio: 0.7, tiltBands: 8, towardsDeg: 40 }
const figures = (gap: Float64Array, radiusRatio: number) =>
  surfaceFigures(
    surfaceMap(
      {
        radiusRatio,
        level: 4,
        coefficients: Array.from(gap.subarray(1), (v, k) => (k < 2 ? 0 : -v)),
        seenFrom: radiusRatio,
        seenTo: 1,
      },
      { ringCount: 17, angleCount: 180 },
    ),
  )

describe('fitMarks', () => {
  it('finds a saddle again from many marks without noise', () => {
    const face = madeFace((r, a) => 0.5 * r * r * Math.cos(2 * a), options)
    const fit = fitMarks(madeMarks(face, { count: 300, seed: 1, missBands: 0 }), 0.7)
    const got = figures(fit.gap, 0.7)
    // It still allows each mark its usual 0.06 band; 300 of them leave about 0.06 / sqrt(300 / 46).
    expect(Math.abs(got.peakToValley - 1)).toBeLessThan(0.03)
    expect(fit.gap[1]).toBeCloseTo(4 * Math.cos((40 * Math.PI) / 180), 1) // half the tilt
    expect(fit.noiseFactor).toBe(1)
  })

  it('tells a dish from a dome by the signs of its orders', () => {
    const dome = madeFace((r) => -2 * r * r, options)
    const marks = madeMarks(dome, { count: 40, seed: 2 })
    expect(figures(fitMarks(marks, 0.7).gap, 0.7).taper).toBeLessThan(-0.6) // true -1.02
    const mirrored = marks.map((mark) => ({ ...mark, order: -mark.order }))
    expect(figures(fitMarks(mirrored, 0.7).gap, 0.7).taper).toBeGreaterThan(0.6)
  })

  it('turns with the marks and does not mind where the counting began', () => {
    const face = madeFace((r, a) => 0.4 * r * r * Math.cos(2 * a) - r, options)
    const marks = madeMarks(face, { count: 30, seed: 3 })
    const once = fitMarks(marks, 0.7)
    const other = fitMarks(
      marks.map(({ x, y, order }) => ({ x: -y, y: x, order: order + 100 })),
      0.7,
    )
    const [a, b] = [figures(once.gap, 0.7), figures(other.gap, 0.7)]
    expect(b.peakToValley).toBeCloseTo(a.peakToValley, 6) // orders of 100 lose digits in the fit
    expect(b.taper).toBeCloseTo(a.taper, 6)
    expect((other.gap[0] as number) - (once.gap[0] as number)).toBeCloseTo(100, 6)
  })

  it('sees that noise is larger than usual', () => {
    const face = madeFace((r) => r * r, options)
    const calm = fitMarks(madeMarks(face, { count: 60, seed: 5 }), 0.7)
    const shaky = fitMarks(madeMarks(face, { count: 60, seed: 5, missBands: 0.25 }), 0.7)
    expect(calm.noiseFactor).toBe(1)
    expect(shaky.noiseFactor).toBeGreaterThan(2)
  })

  it('is surprised by one mark of a wrong order, and by that one most', () => {
    const face = madeFace((r, a) => 0.3 * r * r * Math.cos(2 * a), options)
    const marks = madeMarks(face, { count: 40, seed: 6 })
    const calm = Math.max(...fitMarks(marks, 0.7).surprises.map((one) => Math.abs(one.ratio)))
    expect(calm).toBeLessThan(4)
    const wrong = marks.map((mark, i) => (i === 17 ? { ...mark, order: mark.order + 1 } : mark))
    const ratios = fitMarks(wrong, 0.7).surprises.map((one) => Math.abs(one.ratio))
    expect(ratios.indexOf(Math.max(...ratios))).toBe(17)
    expect(ratios[17]).toBeGreaterThan(4)
  })

  it('gives the leave-one-out residual that leaving the mark out gives', () => {
    const face = madeFace((r) => 0.5 * r, options)
    const marks = madeMarks(face, { count: 25, seed: 7 })
    const all = fitMarks(marks, 0.7)
    const left = fitMarks(marks.slice(1), 0.7)
    // Only where both chose the same sizes is one the other's twin.
    expect(left.scaleBands).toBe(all.scaleBands)
    const [first] = marks
    const twin = fitMarks(
      [...marks.slice(1), { x: first?.x ?? 0, y: first?.y ?? 0, order: 1e3 }],
      0.7,
    )
    expect(Math.abs(twin.surprises.at(-1)?.bands ?? 0)).toBeGreaterThan(900)
    expect(Math.abs(all.surprises[0]?.bands ?? 9)).toBeLessThan(0.4)
  })

  it('gives the same numbers every time', () => {
    const marks = madeMarks(
      madeFace((r) => r, options),
      { count: 20, seed: 9 },
    )
    expect(fitMarks(marks, 0.7)).toEqual(fitMarks(marks, 0.7))
  })

  it('refuses 19 marks', () => {
    const marks = madeMarks(
      madeFace((r) => r, options),
      { count: 19, seed: 9 },
    )
    expect(() => fitMarks(marks, 0.7)).toThrow('fitMarks requires count of marks from 20')
  })
})
