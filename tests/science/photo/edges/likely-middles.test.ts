import { describe, expect, it } from 'vitest'
import { lightSteps } from '../../../../src/science/photo/edges/light-steps.ts'
import { likelyMiddles } from '../../../../src/science/photo/edges/likely-middles.ts'
import { blank, channel, outer } from './painted-channel.ts'

describe('likelyMiddles', () => {
  it('puts the middle of a ring among the first, bands or not', () => {
    const found = likelyMiddles(lightSteps(channel), 4)
    const nearest = Math.min(...found.map(([x, y]) => Math.hypot(x - outer.cx, y - outer.cy)))
    // The curves around it are bent until they fit: so near is near enough.
    expect(nearest).toBeLessThan(0.06 * outer.rx)
  })

  it('finds the middle of a bare disc first', () => {
    const light = blank.light.map((_, i) =>
      Math.hypot((i % 64) - 30, Math.floor(i / 64) - 34) < 20 ? 0.8 : 0.1,
    )
    const [first] = likelyMiddles(lightSteps({ ...blank, light }), 1)
    // A cell of the count is three pixels wide.
    expect(Math.hypot((first?.[0] ?? 0) - 30, (first?.[1] ?? 0) - 34)).toBeLessThan(6)
  })

  it('finds none where nothing is seen, and no more than asked', () => {
    expect(likelyMiddles(lightSteps(blank), 4)).toEqual([])
    expect(likelyMiddles(lightSteps(channel), 2)).toHaveLength(2)
  })
})
