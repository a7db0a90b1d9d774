import { describe, expect, it } from 'vitest'
import { annularTerms } from '../../../src/science/surface/annular-terms.ts'
import { surfaceMap } from '../../../src/science/surface/surface-map.ts'
import { turnSurface } from '../../../src/science/surface/turn-surface.ts'
import { seededNormal } from '../seeded-random.ts'

const normal = seededNormal(12)
const surface = {
  radiusRatio: 0.7,
  level: 4,
  coefficients: annularTerms(4).map(() => normal()),
  seenFrom: 0.71,
  seenTo: 0.99,
}
const size = { ringCount: 4, angleCount: 36 }

describe('turnSurface', () => {
  it('moves the map around by whole rays', () => {
    const before = surfaceMap(surface, size).heights
    const after = surfaceMap(turnSurface(surface, 70), size).heights
    before.forEach((row, i) => {
      row.forEach((height, j) => {
        expect(after[i]?.[(j + 7) % 36]).toBeCloseTo(height, 9) // slopes at the edges by differences
      })
    })
  })

  it('comes back after a full turn, or by the same turn the other way', () => {
    for (const turned of [turnSurface(surface, 360), turnSurface(turnSurface(surface, 33), -33)]) {
      turned.coefficients.forEach((value, k) => {
        expect(value).toBeCloseTo(surface.coefficients[k] as number, 12) // rounding
      })
    }
  })

  it('leaves what has no direction as it is', () => {
    const turned = turnSurface(surface, 51)
    annularTerms(4).forEach((term, k) => {
      if (term.angularOrder === 0) expect(turned.coefficients[k]).toBe(surface.coefficients[k])
    })
    expect([turned.seenFrom, turned.seenTo, turned.level]).toEqual([0.71, 0.99, 4])
  })

  it('refuses coefficients of another level and a turn that is no number', () => {
    expect(() => turnSurface({ ...surface, level: 2 }, 10)).toThrow('15 coefficients')
    expect(() => turnSurface(surface, Number.NaN)).toThrow('turnDeg')
  })
})
