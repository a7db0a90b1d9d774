import { describe, expect, test } from 'vitest'
import { parseDecimal } from '../../../src/domain/parse-decimal.ts'
import { readIndicatorLine } from '../../../views/browser/read-indicator-line.ts'

describe('a line of an indicator', () => {
  test.each([
    ['12', 'mm', '12'],
    ['0.012', 'mm', '0.012'],
    ['0,03', 'mm', '0,03'],
    ['.5', 'in', '.5'],
    ['-.0005', 'in', '-.0005'],
    ['-  0.012', 'mm', '-0.012'],
    ['+.0125 in', 'in', '+.0125'],
    ['  +0.012 mm \t', 'mm', '+0.012'],
    ['-0,03mm', 'mm', '-0,03'],
    ['0.0125 IN', 'in', '0.0125'],
    ['+ 12 µm', 'um', '+12'],
    ['12 \u03bcm', 'um', '12'],
    ['12um', 'um', '12'],
    ['40 µin', 'uin', '40'],
    ['-3', 'graduations', '-3'],
  ])('“%s” in %s is the reading %s', (line, unit, typed) => {
    expect(readIndicatorLine(line, unit)).toEqual({ isReading: true, typed })
    // What it hands on is a number to the server too, with the sign of the line.
    expect(parseDecimal(typed)).toBe(Number(line.replace(/[^-+\d.,]/g, '').replace(',', '.')) + 0)
  })

  test.each([
    ['+0.012 mm', 'in'],
    ['.0005 in', 'mm'],
    ['12 µm', 'mm'],
    ['0.012 mm', 'um'],
    ['0.012 mm', 'graduations'],
    ['12 in', 'uin'],
  ])('“%s” is refused in a survey in %s', (line, unit) => {
    expect(readIndicatorLine(line, unit)).toEqual({ isReading: false, why: 'other-unit' })
  })

  test.each([
    'CH1 +0.012 mm',
    '1: 0.012',
    '0.012 0.013',
    '0.012 mm 1',
    '1,234.5',
    '1.2.3',
    '12.',
    '.',
    '-',
    '--1',
    '- +1',
    '- - 1',
    '1e-3',
    '0x10',
    '0 .012',
    '0.012 cm',
    '0.012 m m',
    '0.012 "',
    'ERR',
    'Infinity',
    '١٢',
    '−0.012', // no indicator sends the minus of print: half a line in a wrong code might
    '',
  ])('“%s” is no reading', (line) => {
    expect(readIndicatorLine(line, 'mm')).toEqual({ isReading: false, why: 'not-a-reading' })
  })
})
