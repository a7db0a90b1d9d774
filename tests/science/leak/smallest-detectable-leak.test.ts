import { describe, expect, it } from 'vitest'
import { smallestDetectableLeak } from '../../../src/science/leak/smallest-detectable-leak.ts'
import { seededNormal } from '../seeded-random.ts'

describe('smallestDetectableLeak', () => {
  it('is twice the one-sided 95 percent point of the normal', () => {
    // 1.645 + 1.645; the point itself is 1.64485.
    expect(smallestDetectableLeak(1)).toBeCloseTo(2 * 1.64485, 3)
  })

  it('tells such a leak from none with 5 percent of errors each way', () => {
    const normal = seededNormal(77)
    const limit = smallestDetectableLeak(1)
    let alarms = 0
    let misses = 0
    for (let i = 0; i < 40_000; i++) {
      if (normal() > limit / 2) alarms++
      if (limit + normal() <= limit / 2) misses++
    }
    // Standard error of a 5 % rate from 40 000: 0.11 %; four of those.
    expect(Math.abs(alarms / 40_000 - 0.05)).toBeLessThan(0.0045)
    expect(Math.abs(misses / 40_000 - 0.05)).toBeLessThan(0.0045)
  })

  it('scales, and refuses a negative or missing uncertainty', () => {
    expect(smallestDetectableLeak(2)).toBe(2 * smallestDetectableLeak(1))
    expect(() => smallestDetectableLeak(-1)).toThrow(RangeError)
    expect(() => smallestDetectableLeak(Number.NaN)).toThrow(RangeError)
  })
})
