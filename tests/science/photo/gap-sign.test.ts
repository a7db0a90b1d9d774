import { describe, expect, it } from 'vitest'
import { gapSign } from '../../../src/science/photo/gap-sign.ts'

const wedge = { tiltX: 3, tiltY: 4, outwards: 0.5 }

describe('gapSign', () => {
  it('keeps a gap that grows where it was seen to grow, and turns one that does not', () => {
    expect(gapSign(wedge, { opensTowardsDeg: 53 })).toBe(1)
    expect(gapSign(wedge, { opensTowardsDeg: -127 })).toBe(-1)
    expect(gapSign(wedge, { opensTowardsDeg: 413 })).toBe(1)
  })

  it('can not tell from a direction along the bands', () => {
    // The bands run square to the slope, at 53.13 + 90 degrees.
    for (const off of [-11, 0, 11]) {
      expect(gapSign(wedge, { opensTowardsDeg: 143.13 + off })).toBe(0)
    }
    expect(gapSign(wedge, { opensTowardsDeg: 143.13 - 13 })).toBe(1)
    expect(gapSign(wedge, { opensTowardsDeg: 143.13 + 13 })).toBe(-1)
  })

  it('takes a closer centre for a gap that grows outwards', () => {
    expect(gapSign(wedge, { centre: 'closer' })).toBe(1)
    expect(gapSign(wedge, { centre: 'further' })).toBe(-1)
    expect(gapSign({ ...wedge, outwards: -0.5 }, { centre: 'further' })).toBe(1)
    expect(gapSign({ ...wedge, outwards: 0.05 }, { centre: 'closer' })).toBe(0)
  })

  it('can not tell without an answer, or without a tilt', () => {
    expect(gapSign(wedge, undefined)).toBe(0)
    expect(gapSign({ tiltX: 0, tiltY: 0, outwards: 1 }, { opensTowardsDeg: 0 })).toBe(0)
  })
})
