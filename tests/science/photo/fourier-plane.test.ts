import { describe, expect, it } from 'vitest'
import { fourierPlane } from '../../../src/science/photo/fourier-plane.ts'
import { seededNormal } from '../seeded-random.ts'

describe('fourierPlane', () => {
  it('agrees with the sum that defines it', () => {
    const size = 8
    const normal = seededNormal(3)
    const f = Float64Array.from({ length: size * size }, normal)
    const g = Float64Array.from({ length: size * size }, normal)
    const [re, im] = [f.slice(), g.slice()]
    fourierPlane(re, im, size)
    for (let v = 0; v < size; v++) {
      for (let u = 0; u < size; u++) {
        let [sumRe, sumIm] = [0, 0]
        for (let y = 0; y < size; y++) {
          for (let x = 0; x < size; x++) {
            const angle = (-2 * Math.PI * (u * x + v * y)) / size
            const [c, s] = [Math.cos(angle), Math.sin(angle)]
            sumRe += (f[y * size + x] ?? 0) * c - (g[y * size + x] ?? 0) * s
            sumIm += (f[y * size + x] ?? 0) * s + (g[y * size + x] ?? 0) * c
          }
        }
        // Rounding of 64 products of order one.
        expect(re[v * size + u]).toBeCloseTo(sumRe, 12)
        expect(im[v * size + u]).toBeCloseTo(sumIm, 12)
      }
    }
  })

  it('keeps the energy (Parseval)', () => {
    const size = 64
    const re = Float64Array.from({ length: size * size }, seededNormal(5))
    const im = new Float64Array(size * size)
    const energy = (a: Float64Array, b: Float64Array) =>
      a.reduce((sum, value, i) => sum + value * value + (b[i] ?? 0) ** 2, 0)
    const before = energy(re, im)
    fourierPlane(re, im, size)
    expect(energy(re, im) / (size * size) / before).toBeCloseTo(1, 12) // rounding only
  })

  it('refuses sizes that are no powers of two, and lengths that disagree', () => {
    const nine = new Float64Array(9)
    expect(() => fourierPlane(nine, nine, 3)).toThrow('a power of two')
    expect(() => fourierPlane(nine, nine, 4)).toThrow('re length')
    expect(() => fourierPlane(new Float64Array(16), nine, 4)).toThrow('im length')
    expect(() => fourierPlane(nine, nine, 1)).toThrow('size')
  })
})
