import { describe, expect, it } from 'vitest'
import { annularBasis } from '../../../src/science/surface/annular-basis.ts'
import { annularTerms } from '../../../src/science/surface/annular-terms.ts'

const term = (angularOrder: number, radialOrder: number, isSine = false) => ({
  angularOrder,
  radialOrder,
  isSine,
})

describe('annularBasis', () => {
  it('gives the published Legendre polynomials along a radius', () => {
    // P2 = (3 t^2 - 1) / 2 and P4 = (35 t^4 - 30 t^2 + 3) / 8, Abramowitz and Stegun table 22.9.
    for (const t of [-1, -0.4, 0, 0.3, 1]) {
      const r = 0.8 + 0.2 * t // t back to a radius of a ring from 0.6 to 1
      const [second, fourth] = annularBasis({
        terms: [term(0, 2), term(0, 4)],
        radiusRatio: 0.6,
        xs: [r],
        ys: [0],
      })
      // Rounding of t itself, 1e-15, times slopes of at most 10.
      expect(second).toBeCloseTo((3 * t ** 2 - 1) / 2, 13)
      expect(fourth).toBeCloseTo((35 * t ** 4 - 30 * t ** 2 + 3) / 8, 13)
    }
  })

  it('gives the waves around by their angle, against sine and cosine', () => {
    for (const angle of [0.3, 1.9, -2.2]) {
      const point = { xs: [Math.cos(angle)], ys: [Math.sin(angle)] }
      const terms = [term(5, 0), term(5, 0, true)]
      const [cosine, sine] = annularBasis({ terms, radiusRatio: 0.6, ...point })
      expect(cosine).toBeCloseTo(Math.cos(5 * angle), 14) // five steps of rounding
      expect(sine).toBeCloseTo(Math.sin(5 * angle), 14)
    }
  })

  it('gives the coordinates themselves for the plane, on the ring and off it', () => {
    const values = annularBasis({
      terms: annularTerms(4).slice(0, 2),
      radiusRatio: 0.6,
      xs: [0.3, -0.9],
      ys: [0.4, 0.1],
    })
    const coordinates = [0.3, 0.4, -0.9, 0.1]
    coordinates.forEach((value, i) => {
      expect(values[i]).toBeCloseTo(value, 15) // one division and one product
    })
  })

  it('gives terms that are square to each other in t and angle', () => {
    const terms = annularTerms(3).filter((one) => !(one.angularOrder === 1 && !one.radialOrder))
    const sums = new Float64Array(terms.length ** 2)
    // Gauss points of degree 7 on three nodes a half would do; a fine even grid is plainer.
    for (let i = 0; i < 2000; i++) {
      const r = 0.75 + 0.25 * ((2 * i + 1) / 2000 - 1)
      const angles = Array.from({ length: 16 }, (_, j) => (j * Math.PI) / 8)
      const values = annularBasis({
        terms,
        radiusRatio: 0.5,
        xs: angles.map((angle) => r * Math.cos(angle)),
        ys: angles.map((angle) => r * Math.sin(angle)),
      })
      for (let j = 0; j < 16; j++) {
        for (let a = 0; a < terms.length; a++) {
          for (let b = 0; b < a; b++) {
            const at = a * terms.length + b
            const product =
              (values[j * terms.length + a] ?? 0) * (values[j * terms.length + b] ?? 0)
            sums[at] = (sums[at] ?? 0) + product / 32_000
          }
        }
      }
    }
    // The midpoint rule is off by about (1 / 2000)^2 times a second derivative of at most 400.
    for (const sum of sums) expect(Math.abs(sum)).toBeLessThan(1e-4)
  })

  it('refuses points that are not pairs, and rings that are none', () => {
    const input = { terms: annularTerms(1), radiusRatio: 0.5, xs: [1], ys: [1, 2] }
    expect(() => annularBasis(input)).toThrow('annularBasis requires ys length')
    for (const radiusRatio of [0, 1, Number.NaN]) {
      expect(() => annularBasis({ ...input, ys: [1], radiusRatio })).toThrow('radiusRatio')
    }
  })
})
