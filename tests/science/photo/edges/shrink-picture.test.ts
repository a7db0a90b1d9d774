import { describe, expect, it } from 'vitest'
import { shrinkPicture } from '../../../../src/science/photo/edges/shrink-picture.ts'

const picture = (width: number, height: number, byte: (i: number) => number) => ({
  data: Uint8Array.from({ length: 3 * width * height }, (_, i) => byte(i)),
  width,
  height,
})

describe('shrinkPicture', () => {
  it('gives linear light: 188 is 0.5029 by the sRGB curve', () => {
    // ((188 / 255 + 0.055) / 1.055)^2.4, IEC 61966-2-1, worked by hand.
    const { light, scale } = shrinkPicture(
      picture(20, 16, () => 188),
      64,
    )
    expect(light[0]).toBeCloseTo(0.5029, 4)
    expect(scale).toBe(1)
  })

  it('averages light, not bytes', () => {
    // Columns of 0 and 255 in turn: half of the light.
    const striped = picture(64, 32, (i) => (Math.floor(i / 3) % 2 === 0 ? 0 : 255))
    const small = shrinkPicture(striped, 32)
    expect([small.width, small.height, small.scale]).toEqual([32, 16, 0.5])
    for (const value of small.light) expect(value).toBeCloseTo(0.5, 6) // Float32
  })

  it('keeps all light where the scale is no whole number', () => {
    const uneven = picture(50, 50, (i) => (7 * i) % 256)
    const small = shrinkPicture(uneven, 32)
    const even = shrinkPicture(
      picture(50, 50, () => 100),
      32,
    )
    expect(Math.max(...even.light) - Math.min(...even.light)).toBeLessThan(1e-6)
    expect(small.light).toHaveLength(32 * 32)
  })

  it('keeps the channel in which light differs most', () => {
    const green = picture(40, 40, (i) =>
      i % 3 === 1 ? (Math.floor(i / 3) % 40 < 20 ? 20 : 200) : 90,
    )
    const { light } = shrinkPicture(green, 64)
    expect(Math.max(...light) - Math.min(...light)).toBeGreaterThan(0.5)
  })

  it('refuses data of another size', () => {
    expect(() => shrinkPicture({ data: new Uint8Array(5), width: 2, height: 1 }, 64)).toThrow(
      RangeError,
    )
    expect(() =>
      shrinkPicture(
        picture(2, 2, () => 0),
        15,
      ),
    ).toThrow(RangeError)
  })
})
