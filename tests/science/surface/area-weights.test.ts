import { describe, expect, it } from 'vitest'
import { areaWeights } from '../../../src/science/surface/area-weights.ts'

const rings = (count: number) =>
  Array.from({ length: count }, (_, i) => 0.5 + (0.5 * i) / (count - 1))

describe('areaWeights', () => {
  it('gives the strips of a ring from 1 to 3 in halves: 1 to 2 is 3/8 of its area', () => {
    expect(areaWeights([1, 3])).toEqual([3 / 8, 5 / 8])
  })

  it('adds up to the whole area, even or uneven', () => {
    for (const radii of [rings(17), [1, 1.1, 2, 7], [0.3, 0.31]]) {
      const sum = areaWeights(radii).reduce((a, b) => a + b, 0)
      expect(sum).toBeCloseTo(1, 12) // rounding
    }
  })

  it('averages r squared over a ring as the integral does: (1 + eps^2) / 2', () => {
    const radii = rings(2001)
    const mean = areaWeights(radii).reduce((a, w, i) => a + w * (radii[i] as number) ** 2, 0)
    // The rule errs by the square of a step, (0.5 / 2000)^2 = 6e-8.
    expect(Math.abs(mean - 0.625)).toBeLessThan(1e-7)
  })

  it('gives each edge about half of what its neighbour has', () => {
    const weights = areaWeights(rings(101)) as [number, number]
    expect(weights[0] / weights[1]).toBeCloseTo(0.5, 1) // of nearly the same radius
  })

  it('refuses radii that do not rise, one alone, and none', () => {
    expect(() => areaWeights([1])).toThrow('count of radii')
    expect(() => areaWeights([0, 1])).toThrow('radii[0]')
    expect(() => areaWeights([2, 1])).toThrow('radii[1]')
    expect(() => areaWeights([1, 1])).toThrow(RangeError)
    expect(() => areaWeights([1, Number.NaN])).toThrow(RangeError)
  })
})
