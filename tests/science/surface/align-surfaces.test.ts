import { describe, expect, it } from 'vitest'
import { alignSurfaces } from '../../../src/science/surface/align-surfaces.ts'
import { annularTerms } from '../../../src/science/surface/annular-terms.ts'
import { turnSurface } from '../../../src/science/surface/turn-surface.ts'
import { seededNormal } from '../seeded-random.ts'

const made = (seed: number) => {
  const normal = seededNormal(seed)
  return {
    radiusRatio: 0.75,
    level: 4,
    coefficients: annularTerms(4).map(({ angularOrder: m, radialOrder: p }) => {
      return normal() / (1 + m * m + p * p)
    }),
    seenFrom: 0.76,
    seenTo: 0.99,
  }
}
const opposite = (surface: ReturnType<typeof made>) => ({
  ...surface,
  coefficients: surface.coefficients.map((v) => -v),
})
const known = { areSignsKnown: true }
const saddle = {
  ...made(1),
  coefficients: annularTerms(4).map((t) =>
    t.angularOrder === 2 && t.radialOrder === 0 && !t.isSine ? 1 : 0,
  ),
}

describe('alignSurfaces', () => {
  it.each([0, 12.3, 90, 181.7, 359.6])('finds a turn by %f degrees back', (turn) => {
    const surface = made(2)
    const got = alignSurfaces(turnSurface(surface, turn), surface, known)
    const apart = Math.abs(((got.turnDeg - turn + 540) % 360) - 180)
    expect(apart).toBeLessThan(0.05) // the parabola over three degrees
    expect(got.likeness).toBeGreaterThan(0.999)
    // Mostly two lobes: half a turn on it is nearly as alike.
    expect(got.rivalLikeness).toBeLessThan(got.likeness - 0.05)
  })

  it('finds a face that was read upside down where signs are not known', () => {
    const surface = made(3)
    const got = alignSurfaces(turnSurface(opposite(surface), 40), surface, { areSignsKnown: false })
    expect(got.isOpposite).toBe(true)
    expect(got.turnDeg).toBeCloseTo(40, 1) // as above
    expect(alignSurfaces(surface, surface, { areSignsKnown: false }).isOpposite).toBe(false)
  })

  it('says that a saddle fits at two turns, and by changed sign at two more', () => {
    const got = alignSurfaces(saddle, saddle, known)
    expect(got.rivalLikeness).toBeCloseTo(1, 6) // half a turn on
    const turned = alignSurfaces(turnSurface(saddle, 90), saddle, { areSignsKnown: false })
    expect(Math.min(turned.likeness, turned.rivalLikeness)).toBeCloseTo(1, 6)
  })

  it('stays alike under a little noise, and is not fooled by size', () => {
    const [surface, noise] = [made(4), made(5)]
    const noisy = {
      ...surface,
      coefficients: surface.coefficients.map((v, k) => 3 * v + 0.2 * (noise.coefficients[k] ?? 0)),
    }
    const got = alignSurfaces(noisy, surface, known)
    expect(Math.min(got.turnDeg, 360 - got.turnDeg)).toBeLessThan(3) // a fifteenth of noise
    expect(got.likeness).toBeGreaterThan(0.98)
  })

  it('refuses a surface without height', () => {
    const flat = { ...saddle, coefficients: saddle.coefficients.map(() => 0) }
    expect(() => alignSurfaces(flat, saddle, known)).toThrow('height of a surface')
  })
})
