import { describe, expect, it } from 'vitest'
import { thermalBowLine } from '../../../src/science/uncertainty/thermal-bow-line.ts'

const ring = { deltaK: 1, expansionPerK: 4e-6, diameterMm: 60, thicknessMm: 10 }

describe('thermalBowLine', () => {
  it.each([
    // Worked by hand from alpha dT D^2 / (8 t), per kelvin; own derivation, two digits.
    ['silicon carbide 60 x 10', { ...ring }, 0.18],
    ['tungsten carbide 60 x 10', { ...ring, expansionPerK: 5e-6 }, 0.225],
    [
      'fused silica flat 100 x 20',
      { ...ring, expansionPerK: 0.55e-6, diameterMm: 100, thicknessMm: 20 },
      0.034,
    ],
    [
      'borosilicate flat 100 x 20',
      { ...ring, expansionPerK: 3.3e-6, diameterMm: 100, thicknessMm: 20 },
      0.206,
    ],
  ] as const)('bows %s by so many um a kelvin', (_, bow, umPerK) => {
    expect(thermalBowLine('thermal-bow', bow).sensitivity).toBeCloseTo(umPerK, 3)
  })

  it('agrees with the sag of the circle that the plate bends to', () => {
    // Second route: radius t / (alpha dT), sag R - sqrt(R^2 - (D / 2)^2).
    const radiusMm = ring.thicknessMm / (ring.expansionPerK * ring.deltaK)
    const sagMm = radiusMm - Math.sqrt(radiusMm ** 2 - (ring.diameterMm / 2) ** 2)
    // A difference of numbers near 2.5e6 mm keeps six digits of 1.8e-4 mm.
    expect(thermalBowLine('x', ring).sensitivity).toBeCloseTo(sagMm * 1000, 5)
  })

  it('grows with the square of the diameter and does not care which side is warmer', () => {
    const of = (more: Partial<typeof ring>) => thermalBowLine('x', { ...ring, ...more })
    expect(of({ diameterMm: 120 }).contribution / of({}).contribution).toBeCloseTo(4, 12)
    expect(of({ deltaK: -1 })).toEqual(of({}))
    expect(of({ deltaK: 3 }).value).toBeCloseTo(Math.sqrt(3), 12) // a / sqrt 3; rounding
  })

  it.each([{ deltaK: 1001 }, { expansionPerK: 0.1 }, { diameterMm: 0 }, { thicknessMm: 0 }])(
    'refuses %o',
    (wrong) => {
      expect(() => thermalBowLine('x', { ...ring, ...wrong })).toThrow(/^thermalBowLine requires /)
    },
  )
})
