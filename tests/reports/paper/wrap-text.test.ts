import { describe, expect, it } from 'vitest'
import { wrapText } from '../../../reports/paper/wrap-text.ts'

const widthOf = (text: string): number => text.length

describe('breaking a text into lines', () => {
  it('breaks at spaces and keeps every line within the width', () => {
    expect(wrapText('one two three four', 9, widthOf)).toEqual(['one two', 'three', 'four'])
  })

  it('breaks a word that is too long after a slash or hyphen, else anywhere', () => {
    expect(wrapText('https://a.example/verify', 10, widthOf)).toEqual([
      'https://',
      'a.example/',
      'verify',
    ])
    expect(wrapText('x aaaaaaaaaaaa', 5, widthOf)).toEqual(['x', 'aaaaa', 'aaaaa', 'aa'])
  })

  it('leaves nothing out and goes beyond no width, whatever the words', () => {
    const text = 'C-2026-0042-K7QX3M und Łącki, 中村 aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa / b'
    for (let width = 1; width <= 40; width += 1) {
      const lines = wrapText(text, width, widthOf)
      expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''))
      expect(Math.max(...lines.map(widthOf))).toBeLessThanOrEqual(width)
    }
  })

  it('takes one character where not even that fits', () => {
    expect(wrapText('ab', 0.5, widthOf)).toEqual(['a', 'b'])
  })

  it('gives one empty line for an empty text', () => {
    expect(wrapText('', 10, widthOf)).toEqual([''])
  })
})
