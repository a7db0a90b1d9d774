import { describe, expect, test } from 'vitest'
import type { LineShape } from '../../src/plots/drawing.ts'
import { limitComparison } from '../../src/plots/limit-comparison.ts'

const upper = (value: number) => ({ lower: null, upper: value, text: `${value}` })
const posts = (limits: Parameters<typeof limitComparison>[0]) =>
  limitComparison(limits, 240)
    .shapes.filter((one): one is LineShape => one.kind === 'line')
    .map((one) => one.x1)

describe('limits drawn to one scale', () => {
  test('are in proportion: five times as large is five times as long', () => {
    const [large, small] = posts([upper(250), upper(50)])
    // Places are rounded to a tenth of a pixel and finer.
    expect(large! / small!).toBeCloseTo(5, 1)
  })

  test('do not depend on the unit', () => {
    expect(posts([upper(0.25), upper(0.05)])).toEqual(posts([upper(250), upper(50)]))
  })

  test('have a post at each side that they have', () => {
    expect(posts([{ lower: 10, upper: 20, text: '' }])).toHaveLength(2)
    expect(posts([{ lower: 10, upper: null, text: '' }, upper(20)])).toHaveLength(2)
  })

  test('stay within the drawing, and their texts begin behind them', () => {
    const { shapes, widthPx, heightPx } = limitComparison([upper(1), upper(3)], 240)
    for (const one of shapes) {
      if (one.kind === 'line') expect(Math.max(one.x1, one.x2)).toBeLessThan(widthPx)
      if (one.kind === 'text') expect(one.y).toBeLessThan(heightPx)
    }
    expect(heightPx).toBe(44)
  })

  test('are refused without a side, beyond numbers, and on no room', () => {
    const none = { lower: null, upper: null, text: '' }
    expect(() => limitComparison([], 240)).toThrow('limits from 1 to 12')
    expect(() => limitComparison([none], 240)).toThrow('limits from 0 to any')
    expect(() => limitComparison([upper(-1)], 240)).toThrow('limits from 0 to any')
    expect(() => limitComparison([upper(Number.NaN)], 240)).toThrow('limits from 0 to any')
    expect(() => limitComparison([upper(1)], 100)).toThrow('widthPx from 160 to 1200')
  })
})
