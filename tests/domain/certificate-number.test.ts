import { describe, expect, test } from 'vitest'
import {
  certificateCode,
  certificateCodeLength,
  readCertificateNumber,
} from '../../src/domain/certificate-number.ts'

describe('the random end of a certificate number', () => {
  test('gives each of its 32 signs for exactly 8 of the 256 bytes', () => {
    const signs = Array.from({ length: 256 }, (_, byte) =>
      certificateCode(Uint8Array.from([byte, 0, 0, 0, 0, 0])).slice(0, 1),
    )
    const counts = new Map<string, number>()
    for (const sign of signs) counts.set(sign, (counts.get(sign) ?? 0) + 1)
    expect(counts.size).toBe(32)
    expect(new Set(counts.values())).toEqual(new Set([8]))
  })

  test('has no sign that is mistaken for another', () => {
    const all = Array.from({ length: 32 }, (_, byte) => byte)
    const groups = all.map((byte) =>
      certificateCode(new Uint8Array(certificateCodeLength).fill(byte)),
    )
    expect(groups.join('')).not.toMatch(/[01IO]/)
  })

  test('refuses another count of bytes', () => {
    expect(() => certificateCode(new Uint8Array(5))).toThrow(RangeError)
  })
})

describe('a certificate number as someone typed it', () => {
  test.each([
    'C-2026-0042-K7QX3M',
    'c-2026-0042-k7qx3m',
    '  C 2026 0042 K7QX3M ',
    'c20260042k7qx3m',
    'C–2026–0042–K7QX3M',
    'C-2O26-oo42-K7QX3M',
  ])('reads %s', (typed) => {
    expect(readCertificateNumber(typed)).toBe('C-2026-0042-K7QX3M')
  })

  test('keeps a sequence that has grown beyond four figures', () => {
    expect(readCertificateNumber('C-2026-12345-K7QX3M')).toBe('C-2026-12345-K7QX3M')
  })

  test.each(['', 'C-2026-0042', 'W-2026-0042', 'C-2026-0042-K7QX3', 'C-2026-0042-K7QX3M%00'])(
    'finds no number in "%s"',
    (typed) => {
      expect(readCertificateNumber(typed)).toBeUndefined()
    },
  )
})
