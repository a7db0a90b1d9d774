import { describe, expect, it } from 'vitest'
import { saddleLineShare } from '../../../src/science/surface/saddle-line-share.ts'

/**
 * What a straight line shows of a saddle of height 1, by brute force: turned by `turn`, through
 * both rim ends of a band of the wedge `tilt y`, the largest departure from the height at its ends.
 */
function shown(radiusRatio: number, turn: number, y: number): number {
  const height = (x: number, at: number) =>
    0.5 * (x * x + at * at) * Math.cos(2 * (Math.atan2(at, x) - turn))
  const half = Math.sqrt(1 - y * y)
  // The line is drawn through the two ends: what is left of the height is measured from it.
  const [left, right] = [height(-half, y), height(half, y)]
  let largest = 0
  for (let step = 0; step <= 2000; step += 1) {
    const x = -half + (2 * half * step) / 2000
    if (Math.hypot(x, y) < radiusRatio) continue
    const chord = left + ((right - left) * (x + half)) / (2 * half)
    largest = Math.max(largest, Math.abs(height(x, y) - chord))
  }
  return largest
}

describe('saddleLineShare', () => {
  it.each([0.3, 0.5, 0.7, 0.9])('is the most that any line shows where the bore is %d', (ratio) => {
    let most = 0
    for (let turn = 0; turn < Math.PI; turn += Math.PI / 24) {
      // Lines through the bore only: a band that misses it is nearest to the centre on no ring.
      for (let y = 0; y < ratio; y += ratio / 8) most = Math.max(most, shown(ratio, turn, y))
    }
    expect(most).toBeLessThanOrEqual(saddleLineShare(ratio) + 1e-12) // rounding alone
    expect(most).toBeGreaterThan(saddleLineShare(ratio) - 0.002) // steps of 1/1000 of the line
  })

  it('shows nothing of a saddle that lies half way between', () => {
    expect(shown(0.5, Math.PI / 4, 0)).toBeLessThan(1e-12) // rounding alone
  })

  it('gives the closed form, less the narrower the face', () => {
    expect(saddleLineShare(0.5)).toBe(0.375) // (1 - 1/4) / 2
    expect(saddleLineShare(0.8)).toBeCloseTo(0.18, 12) // (1 - 0.64) / 2; rounding alone
    expect(saddleLineShare(0.99)).toBeLessThan(0.01)
  })

  it('refuses what is no ring', () => {
    expect(() => saddleLineShare(1)).toThrow(
      'saddleLineShare requires radiusRatio from 0.05 to 0.99, got 1',
    )
    expect(() => saddleLineShare(0)).toThrow(RangeError)
    expect(() => saddleLineShare(Number.NaN)).toThrow(RangeError)
  })
})
