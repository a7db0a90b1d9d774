import { describe, expect, it } from 'vitest'
import { annularTerms } from '../../../src/science/surface/annular-terms.ts'
import { combineSurfaces } from '../../../src/science/surface/combine-surfaces.ts'
import { seededNormal } from '../seeded-random.ts'

const made = (seed: number, level = 4) => {
  const normal = seededNormal(seed)
  const coefficients = annularTerms(level).map(() => normal())
  return { radiusRatio: 0.7, level, coefficients, seenFrom: 0.71, seenTo: 0.99 }
}

describe('combineSurfaces', () => {
  it('gives the mean for equal weights and the one alone for itself', () => {
    const [a, b] = [made(1), made(2)]
    const both = combineSurfaces([a, b], [5, 5]).coefficients
    both.forEach((value, k) => {
      const mean = ((a.coefficients[k] as number) + (b.coefficients[k] as number)) / 2
      expect(value).toBeCloseTo(mean, 12) // rounding
    })
    expect(combineSurfaces([a], [1])).toEqual(a)
  })

  it('scatters least with weights 1 / u^2, as the weighted mean of two readings does', () => {
    // Readings of 0 with u 0.1 and 0.3: the mean has 1 / sqrt(1/0.01 + 1/0.09) = 0.0949.
    const normal = seededNormal(7)
    const level = 1
    const noisy = (u: number) => ({
      ...made(1, level),
      coefficients: annularTerms(level).map(() => u * normal()),
    })
    const values = Array.from({ length: 500 }, () =>
      combineSurfaces([noisy(0.1), noisy(0.3)], [100, 1 / 0.09]),
    ).flatMap((one) => one.coefficients)
    const sd = Math.sqrt(values.reduce((a, v) => a + v * v, 0) / values.length)
    // 4000 values know it to 1 / sqrt(8000) = 1.1 %; four of these.
    expect(Math.abs(sd / 0.0949 - 1)).toBeLessThan(0.045)
  })

  it('lifts a coarse surface to the level of a fine one, and keeps what both have seen', () => {
    const coarse = { ...made(3, 2), seenFrom: 0.73 }
    const fine = { ...made(4), seenTo: 0.97 }
    const got = combineSurfaces([coarse, fine], [1, 1])
    expect([got.level, got.seenFrom, got.seenTo]).toEqual([4, 0.73, 0.97])
    expect(got.coefficients).toHaveLength(annularTerms(4).length)
    expect(got.coefficients.at(-1)).toBeCloseTo((fine.coefficients.at(-1) as number) / 2, 12)
  })

  it('refuses faces of different form, no weight, none at all and wrong lengths', () => {
    const a = made(1)
    expect(() => combineSurfaces([a, { ...a, radiusRatio: 0.75 }], [1, 1])).toThrow('radiusRatio')
    expect(() => combineSurfaces([a], [0])).toThrow('weight')
    expect(() => combineSurfaces([], [])).toThrow('count of surfaces')
    expect(() => combineSurfaces([a, a], [1])).toThrow('count of weights')
    expect(() => combineSurfaces([{ ...a, level: 3 }], [1])).toThrow('count of coefficients')
  })
})
