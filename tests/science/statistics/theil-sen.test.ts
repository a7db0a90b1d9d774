import { describe, expect, it } from 'vitest'
import { theilSen } from '../../../src/science/statistics/theil-sen.ts'
import { readReference } from '../read-reference.ts'
import { seededNormal } from '../seeded-random.ts'

interface Case {
  readonly id: string
  readonly input: { readonly t: number[]; readonly y: number[] }
  readonly expect: { readonly b: number; readonly lo: number; readonly hi: number }
}
const given = readReference<Case[]>('leak/dynamic-cases.json').find((one) => one.id === 'theil-a')!

describe('the line through the median of slopes', () => {
  it('is that of a general numerical library, with its interval', () => {
    const fit = theilSen({ x: given.input.t, y: given.input.y })
    expect(fit.slope).toBeCloseTo(given.expect.b, 12)
    expect(fit.slopeInterval[0]).toBeCloseTo(given.expect.lo, 12)
    expect(fit.slopeInterval[1]).toBeCloseTo(given.expect.hi, 12)
  })

  it('takes no notice of one bad point in four, nor of where zero lies', () => {
    const x = Array.from({ length: 20 }, (_, i) => i * 1.5)
    const y = x.map((one, i) => 4 - 0.7 * one + (i % 5 === 2 ? 30 * (i + 1) : 0))
    expect(theilSen({ x, y }).slope).toBeCloseTo(-0.7, 10)
    const moved = { x: x.map((one) => one + 1e4), y: y.map((one) => one - 500) }
    expect(theilSen(moved).slope).toBeCloseTo(-0.7, 6)
  })

  it('holds the slope in its interval 95 times of 100, within what 2000 trials can tell', () => {
    const normal = seededNormal(12)
    const x = Array.from({ length: 30 }, (_, i) => i)
    let inside = 0
    for (let trial = 0; trial < 2000; trial++) {
      const [low, high] = theilSen({ x, y: x.map((one) => 0.2 * one + normal()) }).slopeInterval
      if (low <= 0.2 && high >= 0.2) inside++
    }
    expect(inside / 2000).toBeGreaterThan(0.935)
    expect(inside / 2000).toBeLessThan(0.965)
  })

  it('refuses what is no line', () => {
    expect(() => theilSen({ x: [1], y: [1] })).toThrow('count of points')
    expect(() => theilSen({ x: [1, 1], y: [1, 2] })).toThrow('two different x')
    expect(() => theilSen({ x: [1, 2], y: [1] })).toThrow('count of values')
    expect(() => theilSen({ x: [1, 2], y: [1, Number.NaN] })).toThrow('value')
  })
})
