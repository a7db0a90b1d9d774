import { describe, expect, it } from 'vitest'
import { lightSteps } from '../../../../src/science/photo/edges/light-steps.ts'
import { ringsAround } from '../../../../src/science/photo/edges/rings-around.ts'
import { blank, channel, inner, outer } from './painted-channel.ts'

const radius = ({ rx, ry }: { rx: number; ry: number }) => Math.sqrt(rx * ry)

describe('ringsAround', () => {
  it('follows both edges of a land from a place some pixels beside its middle', () => {
    const rings = ringsAround(lightSteps(channel), [163, 156], 8)
    for (const edge of [outer, inner]) {
      const nearest = Math.min(
        ...rings.map(({ ellipse }) =>
          Math.max(
            Math.hypot(ellipse.cx - edge.cx, ellipse.cy - edge.cy),
            Math.abs(radius(ellipse) - radius(edge)),
          ),
        ),
      )
      // Two pixels are what the next step, which follows the edge itself, can mend.
      expect(nearest).toBeLessThan(2)
    }
    expect(rings.every((one) => one.share >= 0.4 && one.share <= 1)).toBe(true)
  })

  it('finds none where nothing is seen, and no more than asked', () => {
    expect(ringsAround(lightSteps(blank), [32, 32], 4)).toEqual([])
    expect(ringsAround(lightSteps(channel), [161, 159], 1).length).toBeLessThanOrEqual(1)
  })
})
