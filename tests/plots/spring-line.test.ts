import { describe, expect, test } from 'vitest'
import { springLine } from '../../src/plots/spring-line.ts'
import { coordinates } from './path-points.ts'
import { pathsOf, textsOf } from './shapes-of.ts'
import { expectOnCanvas } from './stays-on-canvas.ts'

const options = {
  freeLengthMm: 20,
  loadPerMmN: 18,
  points: [
    { lengthMm: 16, loadN: 72 },
    { lengthMm: 12, loadN: 144 },
  ],
  workingLengthMm: 14,
  solidLengthMm: 9,
  design: { loadN: 110, toleranceN: 11 },
  widthPx: 320,
  texts: {
    lengthAxis: 'Length, mm',
    loadAxis: 'Load, N',
    free: 'free 20',
    working: 'working 14',
    solid: 'solid 9',
    load: '108 N',
    design: 'asked for 110 N',
  },
} as const

/** Middle of a ring, from the ends of its two half arcs. */
function middleOf(d: string): { readonly x: number; readonly y: number } {
  const [x1 = 0, y = 0] = coordinates(d.slice(0, d.indexOf('A')))
  const radius = Number(/A([\d.]+)/.exec(d)?.[1])
  return { x: x1 + radius, y }
}

describe('the line of springs', () => {
  test('stays on its canvas and says all that it shows', () => {
    const drawing = springLine(options)
    expectOnCanvas(drawing)
    expect(drawing.widthPx).toBe(320)
    expect(textsOf(drawing).toSorted()).toEqual(Object.values(options.texts).toSorted())
  })

  test('has its points on itself, working point last', () => {
    const dots = pathsOf(springLine(options), 'dot').map((one) => middleOf(one.d))
    const [first, second, working] = dots
    expect(dots).toHaveLength(3)
    // 16, 14 and 12 mm are as far apart, and on one line; coordinates have two decimals.
    expect(working!.x).toBeCloseTo((first!.x + second!.x) / 2, 1)
    expect(working!.y).toBeCloseTo((first!.y + second!.y) / 2, 1)
    expect(first!.x).toBeGreaterThan(second!.x)
    expect(first!.y).toBeGreaterThan(second!.y)
  })

  test('shows a band only with a tolerance, and a wall only where solid is known', () => {
    const counts = (changes: object) => {
      const drawing = springLine({ ...options, ...changes })
      return [pathsOf(drawing, 'band').length, pathsOf(drawing, 'solid').length]
    }
    expect(counts({})).toEqual([1, 1])
    expect(counts({ design: { loadN: 110, toleranceN: null } })).toEqual([0, 1])
    expect(counts({ design: null, solidLengthMm: null })).toEqual([0, 0])
  })

  test('stays on its canvas where nothing presses, or the springs are pressed flat', () => {
    expectOnCanvas(springLine({ ...options, workingLengthMm: 20, design: null, points: [] }))
    expectOnCanvas(springLine({ ...options, workingLengthMm: 23 }))
    expectOnCanvas(springLine({ ...options, workingLengthMm: 9 }))
    expectOnCanvas(springLine({ ...options, design: { loadN: 5, toleranceN: 10 } }))
  })

  test('refuses widths and numbers that it can not draw', () => {
    expect(() => springLine({ ...options, widthPx: 200 })).toThrow(RangeError)
    expect(() => springLine({ ...options, freeLengthMm: Number.NaN })).toThrow(RangeError)
  })
})
