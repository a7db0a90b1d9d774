import { describe, expect, it } from 'vitest'
import { markPrior } from '../../../src/science/marks/mark-prior.ts'
import { annularTerms } from '../../../src/science/surface/annular-terms.ts'

describe('markPrior', () => {
  it('leaves the constant and the plane free and holds every other term', () => {
    const terms = annularTerms(4)
    const precisions = markPrior(terms, 0.5)
    expect(precisions).toHaveLength(terms.length + 1)
    expect([...precisions.slice(0, 3)]).toEqual([0, 0, 0])
    for (const one of precisions.slice(3)) expect(one).toBeGreaterThan(0)
  })

  it('expects less of finer terms', () => {
    const at = (angularOrder: number, radialOrder: number) =>
      markPrior([{ angularOrder, radialOrder, isSine: true }], 1)[1] as number
    expect(at(3, 0)).toBeGreaterThan(at(2, 0))
    expect(at(2, 1)).toBeGreaterThan(at(2, 0))
    expect(at(2, 0)).toBeCloseTo(1.72 ** 2, 12) // 1 + 0.18 x 4, squared
  })

  it('goes with the square of its scale', () => {
    const terms = annularTerms(2)
    const [one, twice] = [markPrior(terms, 1), markPrior(terms, 2)]
    one.forEach((value, k) => {
      expect(twice[k]).toBeCloseTo(value / 4, 12) // rounding
    })
  })

  it('refuses a scale of 0', () => {
    expect(() => markPrior([], 0)).toThrow('scaleBands')
  })
})
