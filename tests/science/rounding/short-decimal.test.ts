import { expect, it } from 'vitest'
import { formatFixed } from '../../../src/science/rounding/format-fixed.ts'
import { formatSignificant } from '../../../src/science/rounding/format-significant.ts'
import { shortDecimal } from '../../../src/science/rounding/short-decimal.ts'

it('finds the decimal behind a difference of readings', () => {
  // Exact decimal arithmetic: 271.325 − 268.1 = 3.225, 0.1 + 0.2 = 0.3.
  expect(271.325 - 268.1).not.toBe(3.225)
  expect(shortDecimal(271.325 - 268.1)).toBe(3.225)
  expect(shortDecimal(0.1 + 0.2)).toBe(0.3)
  expect(shortDecimal(-(0.1 + 0.2))).toBe(-0.3)
})

it('prints what exact arithmetic would print', () => {
  expect(formatFixed({ value: 271.325 - 268.1, decimals: 2 })).toBe('3.23')
  expect(formatSignificant({ value: 271.325 - 268.1, digits: 3 })).toBe('3.23')
})

it('leaves every number alone that stands for no short decimal', () => {
  for (const value of [Math.PI, 1 / 3, 3.2249999, 9007199254740991, 1e-300, 0, 123456789.012345]) {
    expect(shortDecimal(value)).toBe(value)
  }
})

it('is idempotent and odd', () => {
  for (const value of [0.30000000000000004, 2.675, 1e21 + 1e5, 587.5618 / 2]) {
    expect(shortDecimal(shortDecimal(value))).toBe(shortDecimal(value))
    expect(shortDecimal(-value)).toBe(-shortDecimal(value))
  }
})

it('refuses what is no number', () => {
  for (const value of [Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(() => shortDecimal(value)).toThrow(RangeError)
  }
})
