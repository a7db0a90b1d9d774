import { expect, test } from 'vitest'
import { parseDecimal } from '../../src/domain/parse-decimal.ts'

test('reads decimals with point or comma', () => {
  expect(parseDecimal('2.25')).toBe(2.25)
  expect(parseDecimal('2,25')).toBe(2.25)
  expect(parseDecimal('  7 ')).toBe(7)
  expect(parseDecimal('.5')).toBe(0.5)
  expect(parseDecimal('5,')).toBe(5)
  expect(parseDecimal('+3')).toBe(3)
  expect(parseDecimal('007')).toBe(7)
})

test('reads hyphen and minus sign alike', () => {
  expect(parseDecimal('-40.5')).toBe(-40.5)
  expect(parseDecimal('−40,5')).toBe(-40.5)
})

test('takes a comma for a decimal comma, so 1,000 is one', () => {
  expect(parseDecimal('1,000')).toBe(1)
})

test('knows one zero', () => {
  expect(Object.is(parseDecimal('-0'), 0)).toBe(true)
  expect(Object.is(parseDecimal('-0,00'), 0)).toBe(true)
})

test('refuses an empty text instead of reading it as zero', () => {
  expect(parseDecimal('')).toBeUndefined()
  expect(parseDecimal('   ')).toBeUndefined()
})

const refused = [
  '1e5',
  '1E5',
  '0x10',
  '0b1',
  '1,000.5',
  '1.000.000',
  '1 000',
  '1_000',
  '∞',
  'Infinity',
  'NaN',
  '--5',
  '−-5',
  '5-',
  '.',
  ',',
  '-',
  '1/2',
  '2½',
  '٣',
  '2 bands',
  '5%',
  `0.${'1'.repeat(40)}`,
]

test.each(refused)('refuses %s', (text) => {
  expect(parseDecimal(text)).toBeUndefined()
})
