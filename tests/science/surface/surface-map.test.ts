import { describe, expect, it } from 'vitest'
import { annularTerms } from '../../../src/science/surface/annular-terms.ts'
import { surfaceMap } from '../../../src/science/surface/surface-map.ts'

const surface = {
  radiusRatio: 0.6,
  level: 2,
  coefficients: annularTerms(2).map((t) =>
    t.angularOrder === 0 && t.radialOrder === 1 ? 0.5 : t.angularOrder === 2 && !t.isSine ? 0.1 : 0,
  ),
  seenFrom: 0.6,
  seenTo: 1,
}

describe('surfaceMap', () => {
  it('gives rings from the inner to the outer edge and rays from the right', () => {
    const map = surfaceMap(surface, { ringCount: 5, angleCount: 8 })
    expect(map.radii).toEqual([0.6, 0.7, 0.8, 0.9, 1].map((r) => expect.closeTo(r, 12)))
    expect(map.anglesDeg).toEqual([0, 45, 90, 135, 180, 225, 270, 315])
    map.heights.forEach((row, i) => {
      row.forEach((height, j) => {
        // Two degrees along the radius carry two waves around at level 2: 1 and t.
        const t = -1 + i / 2
        const expected = 0.5 * t + 0.1 * (1 + t) * Math.cos((2 * Math.PI * j * 2) / 8)
        expect(height).toBeCloseTo(expected, 12) // rounding
      })
    })
  })

  it('refuses coefficients of another level', () => {
    const wrong = { ...surface, level: 3 }
    expect(() => surfaceMap(wrong, { ringCount: 3, angleCount: 4 })).toThrow('30 coefficients')
  })
})
