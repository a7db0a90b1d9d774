import { describe, expect, it } from 'vitest'
import { gradientSeed } from '../../../src/science/photo/gradient-seed.ts'

describe('gradientSeed', () => {
  it('makes the signs agree and gives the surface with these slopes', () => {
    // gap = 5 x + 3 y + 0.6 (x^2 - y^2): two waves around with r^2, of which the terms hold most.
    const list = Array.from({ length: 40 }, (_, i) => {
      const angle = (2 * Math.PI * i) / 40
      const [x, y] = [0.8 * Math.cos(angle), 0.8 * Math.sin(angle)]
      const sign = (i * 7) % 3 === 0 ? -1 : 1
      const [u, v] = [sign * (5 + 1.2 * x), sign * (3 - 1.2 * y)]
      return { x, y, u, v, strength: 1, window: 0.16 }
    })
    const gap = gradientSeed(list, 0.6) ?? new Float64Array(16)
    const sign = Math.sign(gap[1] ?? 0)
    // The prior pulls the form by about a tenth; that is close enough for a guess.
    expect(Math.abs(sign * (gap[1] ?? 0) - 5)).toBeLessThan(0.2)
    expect(Math.abs(sign * (gap[2] ?? 0) - 3)).toBeLessThan(0.2)
    expect(gap[0]).toBe(0)
  })

  it('gives nothing from fewer than twelve places', () => {
    const one = { x: 0.8, y: 0, u: 3, v: 0, strength: 1, window: 0.16 }
    expect(gradientSeed(Array(11).fill(one), 0.6)).toBeNull()
  })
})
