import { describe, expect, it } from 'vitest'
import { bandHeightUm } from '../../../src/science/optics/band-height-um.ts'
import { bandOrder } from '../../../src/science/optics/band-order.ts'

describe('bandOrder', () => {
  it('gives nine bands over the gap of the army lesson, and the bands of a 0.90 um gap', () => {
    // US Army lesson MM0478: nine bands of 11.6 uin = 104.4 uin = 2.65176 um, a sodium lamp.
    expect(bandOrder({ gapUm: 2.65176, wavelengthNm: 589.2938 })).toBeCloseTo(9, 2) // 11.6 is rounded
    // A table of the trade's lamps: 0.90 um is 3.06 bands of helium, 3.30 of mercury green.
    expect(bandOrder({ gapUm: 0.9, wavelengthNm: 587.5618 })).toBeCloseTo(3.06, 2) // printed digits
    expect(bandOrder({ gapUm: 0.9, wavelengthNm: 546.074 })).toBeCloseTo(3.3, 2) // printed digits
  })

  it('is the gap over the height of a band, at every angle', () => {
    for (const viewingAngleDeg of [0, 10, 30, 60, 80]) {
      const height = bandHeightUm({ wavelengthNm: 587.5618, viewingAngleDeg })
      const order = bandOrder({ gapUm: 1.3, wavelengthNm: 587.5618, viewingAngleDeg })
      expect(order).toBeCloseTo(1.3 / height, 12) // two routes of the same formula: rounding alone
    }
  })

  it('falls as the eye is lowered and as the gap closes', () => {
    const seen = (gapUm: number, viewingAngleDeg: number) =>
      bandOrder({ gapUm, wavelengthNm: 589, viewingAngleDeg })
    expect(seen(1, 30)).toBeLessThan(seen(1, 0))
    expect(seen(0.9, 0)).toBeLessThan(seen(1, 0))
    expect(seen(0, 45)).toBe(0)
  })

  it('refuses what it can not answer', () => {
    const wavelengthNm = 589
    expect(() => bandOrder({ gapUm: -0.1, wavelengthNm })).toThrow(
      'bandOrder requires gapUm from 0 to 1000, got -0.1',
    )
    expect(() => bandOrder({ gapUm: 1, wavelengthNm: 100 })).toThrow(RangeError)
    expect(() => bandOrder({ gapUm: 1, wavelengthNm, viewingAngleDeg: 81 })).toThrow(RangeError)
    expect(() => bandOrder({ gapUm: Number.NaN, wavelengthNm })).toThrow(RangeError)
  })
})
