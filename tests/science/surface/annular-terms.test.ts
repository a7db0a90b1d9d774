import { describe, expect, it } from 'vitest'
import { annularTerms } from '../../../src/science/surface/annular-terms.ts'

describe('annularTerms', () => {
  it.each([1, 2, 3, 4])('begins with the plane and names no term twice at level %i', (level) => {
    const terms = annularTerms(level)
    expect(terms.slice(0, 2)).toEqual([
      { angularOrder: 1, radialOrder: 0, isSine: false },
      { angularOrder: 1, radialOrder: 0, isSine: true },
    ])
    const names = new Set(terms.map((term) => JSON.stringify(term)))
    expect(names.size).toBe(terms.length)
  })

  it('holds no constant height and no sine of nothing', () => {
    const round = annularTerms(4).filter((term) => term.angularOrder === 0)
    expect(round.map((term) => term.radialOrder)).toEqual([1, 2, 3, 4, 5, 6])
    expect(round.some((term) => term.isSine)).toBe(false)
  })

  it('begins each level with the terms of the level below', () => {
    for (let level = 1; level < 4; level++) {
      const coarse = annularTerms(level)
      const finer = annularTerms(level + 1)
      expect(finer.slice(0, coarse.length)).toEqual(coarse)
      expect(finer.length).toBeGreaterThan(coarse.length)
    }
  })

  it('has the counts of waves and degrees that its table says', () => {
    // One term a degree for the round ones, two for every wave: 6 + 2 (4 + 4 + 3 + 3 + 2 + 2 + 1 + 1)
    expect(annularTerms(4)).toHaveLength(46)
    expect(annularTerms(4).filter((term) => term.angularOrder === 2)).toHaveLength(8)
  })

  it.each([0, 5, 1.5, Number.NaN])('refuses level %d', (level) => {
    expect(() => annularTerms(level)).toThrow('annularTerms requires level')
  })
})
