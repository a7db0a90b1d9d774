import { describe, expect, it } from 'vitest'
import { flatnessSees } from '../../src/domain/flatness-sees.ts'
import { methods } from '../../src/domain/methods.ts'

describe('flatnessSees', () => {
  it('says that a line count sees the taper, in every version', () => {
    expect(flatnessSees('flatness/counted 1')).toBe('taper')
    expect(flatnessSees(methods.flatnessCounted)).toBe('taper')
  })

  it.each(['flatness/marked 1', 'flatness/photo 3', 'flatness/line-grid 1', 'flatness/combined 1'])(
    'says that %s sees the whole surface',
    (method) => {
      expect(flatnessSees(method)).toBe('whole-surface')
    },
  )

  it('refuses what is no method of flatness rather than guess', () => {
    for (const method of ['', 'flatness', 'leak/pressure-change 1', 'constructor 1']) {
      expect(() => flatnessSees(method)).toThrow(RangeError)
    }
  })
})
