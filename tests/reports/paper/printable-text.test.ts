import { describe, expect, it } from 'vitest'
import { printableText } from '../../../reports/paper/printable-text.ts'

const isLatin = (point: number): boolean => point < 0x250

describe('printable text', () => {
  it('names what the font does not have by its code point', () => {
    expect(printableText('Škoda 中😀', isLatin)).toBe('Škoda [U+4E2D][U+1F600]')
  })

  it('makes white space of any kind single spaces', () => {
    expect(printableText(' a\r\n\tb\u00A0 c ', isLatin)).toBe('a b c')
  })

  it('joins a letter and its accent to the one character that the font has', () => {
    expect(printableText('e\u0301', isLatin)).toBe('é')
  })

  it('names a control character instead of dropping it', () => {
    expect(printableText('a\u0007b', (point) => point >= 32)).toBe('a[U+0007]b')
  })
})
