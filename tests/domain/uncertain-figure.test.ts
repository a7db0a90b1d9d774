import { expect, test } from 'vitest'
import { coverageFactorText, uncertainFigure } from '../../src/domain/uncertain-figure.ts'

test('prints a result and its uncertainty to the same place, apart and together', () => {
  const figure = uncertainFigure({ value: 0.5875618, expandedUncertainty: 0.0713 })
  expect(figure.text).toBe('0.588 ± 0.071')
  expect(figure.value).toEqual({ value: 0.5875618, text: '0.588' })
  expect(figure.expandedUncertainty).toEqual({ value: 0.0713, text: '0.071' })
})

test('gives both the same power of ten, with the signs of print', () => {
  const figure = uncertainFigure({ value: -9.4332e-6, expandedUncertainty: 3.254e-7 })
  expect(figure.text).toBe('(−9.43 ± 0.33) × 10⁻⁶')
  expect(figure.value.text).toBe('−9.43 × 10⁻⁶')
  expect(figure.expandedUncertainty.text).toBe('0.33 × 10⁻⁶')
})

test('writes a coverage factor without needless decimals', () => {
  expect([2, 2.3646, 2.004, 12.706].map(coverageFactorText)).toEqual(['2', '2.36', '2', '12.71'])
})
