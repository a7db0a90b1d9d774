import { describe, expect, it } from 'vitest'
import { lineCountShare } from '../../../src/science/surface/line-count-share.ts'

const ratios = [0.3, 0.6, 0.8, 0.9]

describe('lineCountShare', () => {
  it.each(ratios)('sees a sphere and a cone in full at a ratio of %f', (e) => {
    expect(lineCountShare((r) => r * r, e)).toEqual({
      largest: expect.closeTo(1, 12), // rounding
      mean: expect.closeTo(1, 12),
    })
    expect(lineCountShare((r) => -3 * r, e).mean).toBeCloseTo(1, 12)
  })

  it.each(ratios)('sees at most (1 - e^2) / 2 of a saddle r^2 cos 2a at %f', (e) => {
    // Along its crest: from 1 at the edge to e^2 at the bore, of a height of 2.
    const got = lineCountShare((r, a) => r * r * Math.cos(2 * a), e)
    expect(got.largest).toBeCloseTo((1 - e * e) / 2, 12) // rounding
    // Over the directions |cos 2a| averages to 2 / pi; 180 of them sum it to 1e-4.
    expect(Math.abs(got.mean - ((1 - e * e) / 2) * (2 / Math.PI))).toBeLessThan(1e-4)
  })

  it.each(ratios)('sees a fifth or less of three lobes r^3 cos 3a at %f', (e) => {
    // Both ends are odd, so the line tilts with them: r - r^3 is left, largest at 1 / sqrt 3.
    const at = Math.max(e, 1 / Math.sqrt(3))
    const got = lineCountShare((r, a) => r ** 3 * Math.cos(3 * a), e)
    // 65 circles meet the largest place to a step: the square of it is lost.
    expect(Math.abs(got.largest - (at - at ** 3) / 2)).toBeLessThan(2e-4)
    expect(got.largest).toBeLessThan(0.2)
  })

  it('is blind to waves that are as high at both edges', () => {
    expect(lineCountShare((_, a) => Math.cos(2 * a), 0.8).largest).toBeCloseTo(0, 12) // rounding
    expect(lineCountShare((_, a) => Math.cos(4 * a), 0.8).largest).toBeCloseTo(0, 12)
  })

  it('does not mind how high the face is or how it is tilted', () => {
    const form = (r: number, a: number) => r * r * Math.cos(2 * a) + r ** 4
    const one = lineCountShare(form, 0.7)
    const other = lineCountShare((r, a) => 5 + 9 * form(r, a) + 4 * r * Math.cos(a), 0.7)
    expect(other.largest).toBeCloseTo(one.largest, 10) // rounding
  })

  it('refuses a ratio out of range and a face without height', () => {
    expect(() => lineCountShare((r) => r, 1)).toThrow('radiusRatio')
    expect(() => lineCountShare(() => 0, 0.8)).toThrow('peak to valley')
  })
})
