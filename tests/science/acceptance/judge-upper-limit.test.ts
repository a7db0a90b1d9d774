import { describe, expect, it } from 'vitest'
import { judgeUpperLimit } from '../../../src/science/acceptance/judge-upper-limit.ts'

describe('judgeUpperLimit', () => {
  // ILAC-G8:09/2019: simple acceptance, the acceptance limit is the tolerance limit.
  it.each([
    [0.88, 'pass'],
    [0.9, 'pass'],
    [0.3 * 3, 'pass'],
    [0.9001, 'fail'],
  ] as const)('judges %d against 0.9 as %s', (value, verdict) => {
    expect(judgeUpperLimit({ value, upperLimit: 0.9 })).toBe(verdict)
  })

  it('refuses what is not a number instead of failing the part', () => {
    expect(() => judgeUpperLimit({ value: Number.NaN, upperLimit: 0.9 })).toThrow(RangeError)
  })
})
