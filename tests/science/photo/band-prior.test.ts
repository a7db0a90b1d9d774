import { expect, it } from 'vitest'
import { bandPrior } from '../../../src/science/photo/band-prior.ts'
import { annularTerms } from '../../../src/science/surface/annular-terms.ts'

it('bandPrior leaves constant and plane of the gap free and tightens with the order', () => {
  const terms = annularTerms(4)
  const prior = bandPrior(terms, { backgroundCount: 31, swing: 0.5 })
  expect(prior).toHaveLength(47 + 31 + 6 + 1)
  expect([...prior.slice(0, 3)]).toEqual([0, 0, 0])
  const gapOf = (m: number, p: number) => {
    const at = terms.findIndex((t) => t.angularOrder === m && t.radialOrder === p)
    return prior[1 + at] ?? 0
  }
  expect(gapOf(0, 1)).toBeCloseTo((1.5 / 2.5) ** 2, 14) // sd = 2.5 / 1.5, by hand
  expect(gapOf(3, 2)).toBeCloseTo(((1 + 0.18 * 9 + 2) / 2.5) ** 2, 14)
  for (let m = 2; m < 8; m++) expect(gapOf(m + 1, 0)).toBeGreaterThan(gapOf(m, 0))
  expect(prior.at(-1)).toBeCloseTo(100, 12) // sd = 0.1
  expect(prior[47 + 31]).toBeCloseTo(4, 12) // sd = 0.5
  expect(prior[47 + 32]).toBeCloseTo(64, 12) // sd = 0.125
})
