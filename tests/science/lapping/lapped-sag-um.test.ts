import { describe, expect, it } from 'vitest'
import { lappedSagUm } from '../../../src/science/lapping/lapped-sag-um.ts'
import { heightToBands } from '../../../src/science/optics/height-to-bands.ts'

describe('lappedSagUm', () => {
  it('gives 0.62 µm, 2.1 helium bands, for 25 µm over 380 mm and a ring of 60 mm', () => {
    // Worked by hand in a collection of trade facts: 25 × (60 / 380)² = 0.6233.
    const sagUm = lappedSagUm({ plateSagUm: -25, plateDiameterMm: 380, partDiameterMm: 60 })
    expect(sagUm).toBeCloseTo(0.62, 2) // two digits are printed
    const bands = heightToBands({ heightUm: sagUm, wavelengthNm: 587.6 })
    expect(bands).toBeCloseTo(2.1, 1) // one digit is printed
  })

  it('gives the same in inches: 0.001 in over 15 in, a ring of 60 mm', () => {
    // 25.4 × (60 / 381)² = 0.62992.
    const inches = { plateSagUm: -25.4, plateDiameterMm: 381, partDiameterMm: 60 }
    expect(lappedSagUm(inches)).toBeCloseTo(0.62992, 5) // worked to five decimals
  })

  it('follows the sphere of the plate, to what a parabola leaves out', () => {
    // Second route: the radius of the plate from chord and sag, then the sag of the ring on it.
    const [sagMm, halfPlate, halfPart] = [0.025, 190, 30]
    const radius = (halfPlate ** 2 + sagMm ** 2) / (2 * sagMm)
    const partUm = (radius - Math.sqrt(radius ** 2 - halfPart ** 2)) * 1000
    const ours = lappedSagUm({ plateSagUm: 25, plateDiameterMm: 380, partDiameterMm: 60 })
    // The subtraction of two radii of 7e5 mm leaves 1e-7 µm of rounding; the parabola less.
    expect(ours).toBeCloseTo(-partUm, 6)
  })

  it('turns its sign with the plate, and is nought on a flat one', () => {
    const of = { plateDiameterMm: 380, partDiameterMm: 80 }
    expect(lappedSagUm({ ...of, plateSagUm: 10 })).toBe(-lappedSagUm({ ...of, plateSagUm: -10 }))
    expect(lappedSagUm({ ...of, plateSagUm: 10 })).toBeLessThan(0)
    expect(Object.is(lappedSagUm({ ...of, plateSagUm: 0 }), 0)).toBe(true)
  })

  it('grows with the square of the ring, up to the whole plate', () => {
    const of = { plateSagUm: -8, plateDiameterMm: 400 }
    const small = lappedSagUm({ ...of, partDiameterMm: 50 })
    expect(lappedSagUm({ ...of, partDiameterMm: 100 })).toBeCloseTo(4 * small, 12) // rounding
    expect(lappedSagUm({ ...of, partDiameterMm: 400 })).toBe(8)
  })

  it.each([
    { plateSagUm: 1001, plateDiameterMm: 380, partDiameterMm: 60 },
    { plateSagUm: Number.NaN, plateDiameterMm: 380, partDiameterMm: 60 },
    { plateSagUm: 1, plateDiameterMm: 0.5, partDiameterMm: 60 },
    { plateSagUm: 1, plateDiameterMm: 380, partDiameterMm: 0 },
    { plateSagUm: 1, plateDiameterMm: 50, partDiameterMm: 60 },
  ])('refuses %o', (input) => {
    expect(() => lappedSagUm(input)).toThrow(RangeError)
  })
})
