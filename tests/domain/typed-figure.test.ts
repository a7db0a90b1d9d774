import { expect, test } from 'vitest'
import { typedFigure } from '../../src/domain/typed-figure.ts'

const text = (value: number, typed?: string) => typedFigure(value, typed).text

test('keeps the decimals that were typed, with a point, and the number itself', () => {
  expect(typedFigure(9, '9,0')).toEqual({ value: 9, text: '9.0' })
  expect(text(14, '14')).toBe('14')
  expect(text(14.25, ' 14.250 ')).toBe('14.250')
})

test('writes what was typed short or long as print has it', () => {
  expect([text(0.5, '.5'), text(5, '5.'), text(14, '+014,0')]).toEqual(['0.5', '5', '14.0'])
})

test('prints the number as it is where no text was kept, or none that could be printed', () => {
  expect(text(9.25)).toBe('9.25')
  expect(text(9.25, '')).toBe('9.25')
  expect(text(0.1, '0.1000000000000000000000')).toBe('0.1')
})
