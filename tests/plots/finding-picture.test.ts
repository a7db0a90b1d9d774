import { expect, test } from 'vitest'
import { findingTerms } from '../../src/domain/finding.ts'
import { findingPicture } from '../../src/plots/finding-picture.ts'

test('every term of the strip bench has a picture of its own', () => {
  const drawn = findingTerms.map((term) => JSON.stringify(findingPicture(term, 96).shapes))
  expect(drawn.length).toBeGreaterThan(25)
  expect(new Set(drawn).size).toBe(findingTerms.length)
})

test('pictures stay within their field, whatever their size', () => {
  for (const term of findingTerms) {
    for (const sizePx of [40, 96, 400]) {
      const { shapes, widthPx } = findingPicture(term, sizePx)
      const numbers = shapes.flatMap((one) =>
        one.kind === 'path' ? (one.d.match(/-?\d+(\.\d+)?/g) ?? []).map(Number) : [],
      )
      expect(numbers.length, term).toBeGreaterThan(3)
      expect(Math.min(...numbers), term).toBeGreaterThanOrEqual(0)
      expect(Math.max(...numbers), term).toBeLessThanOrEqual(widthPx)
    }
  }
})

test('refuses a size out of range', () => {
  expect(() => findingPicture('grooves', 10)).toThrow('sizePx')
})
