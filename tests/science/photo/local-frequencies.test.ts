import { describe, expect, it } from 'vitest'
import { localFrequencies } from '../../../src/science/photo/local-frequencies.ts'
import { planeImage } from '../../../src/science/photo/plane-image.ts'
import { bandLand } from './band-land.ts'

describe('localFrequencies', () => {
  it('gives the slope of the gap at each place, up to its sign', () => {
    const gap = (x: number, y: number) => 6 * x + 4 * y + x * x - y * y
    const { samples, relative } = bandLand({ radiusRatio: 0.5, wanted: 9000, gap })
    const image = planeImage(samples, relative, 128)
    const found = localFrequencies(image, { radiusRatio: 0.5, window: 0.16 })
    expect(found.length).toBeGreaterThan(60)
    const off = found.map(({ x, y, u, v }) => {
      const [gx, gy] = [6 + 2 * x, 4 - 2 * y]
      return Math.min(Math.hypot(u - gx, v - gy), Math.hypot(u + gx, v + gy))
    })
    off.sort((a, b) => a - b)
    // A window of 0.16 resolves 1 / (2 pi 0.16) = 1 band per radius; its top is known to a third.
    expect(off[Math.floor(off.length / 2)]).toBeLessThan(0.35)
  })

  it('finds no frequency where there is no light', () => {
    const image = { size: 128, pitch: 2.8 / 128, values: new Float64Array(128 * 128) }
    expect(localFrequencies(image, { radiusRatio: 0.5, window: 0.16 })).toEqual([])
  })
})
