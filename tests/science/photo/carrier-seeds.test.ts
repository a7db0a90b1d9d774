import { describe, expect, it } from 'vitest'
import { carrierSeeds } from '../../../src/science/photo/carrier-seeds.ts'
import { planeImage } from '../../../src/science/photo/plane-image.ts'
import { bandLand } from './band-land.ts'

const imageOf = (gap: (x: number, y: number) => number) => {
  const { samples, relative } = bandLand({ radiusRatio: 0.6, wanted: 6000, gap })
  return planeImage(samples, relative, 128)
}

describe('carrierSeeds', () => {
  it.each([
    { u: 4, v: 2.5 },
    { u: -3, v: 5 },
    { u: 0.5, v: -6 },
  ])('finds the plane and its phase: $u, $v', ({ u, v }) => {
    const image = imageOf((x, y) => u * x + v * y + 0.3)
    const [best] = carrierSeeds(image, { radiusRatio: 0.6, isThorough: false, wanted: 6 })
    const sign = Math.sign((best?.gap[1] ?? 0) * u + (best?.gap[2] ?? 0) * v)
    // A bin is 1 / 2.8 bands per radius wide, so half a bin is 0.18.
    expect(Math.abs(sign * (best?.gap[1] ?? 0) - u)).toBeLessThan(0.19)
    expect(Math.abs(sign * (best?.gap[2] ?? 0) - v)).toBeLessThan(0.19)
    const phase = sign * (best?.gap[0] ?? 0) - 0.3
    // The plane is known to half a bin; the middle of the ring keeps its phase.
    expect(Math.abs(phase - Math.round(phase))).toBeLessThan(0.1)
  })

  it('gives guesses that differ, the best one first', () => {
    const image = imageOf((x, y) => 3 * x + 2 * y + 0.8 * (x * x - y * y))
    const seeds = carrierSeeds(image, { radiusRatio: 0.6, isThorough: false, wanted: 6 })
    expect(seeds.length).toBeGreaterThan(3)
    seeds.slice(1).forEach((seed, i) => {
      expect(seed.score).toBeLessThanOrEqual(seeds[i]?.score ?? 0)
    })
    const first = seeds[0]?.gap ?? new Float64Array(9)
    for (const { gap } of seeds.slice(1)) {
      const apart = Math.hypot(...gap.slice(1).map((value, k) => value - (first[k + 1] ?? 0)))
      expect(apart).toBeGreaterThan(0.3)
    }
  })
})
