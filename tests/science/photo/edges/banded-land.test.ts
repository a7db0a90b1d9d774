import { describe, expect, it } from 'vitest'
import { bandedLand } from '../../../../src/science/photo/edges/banded-land.ts'
import { channel, inner, outer } from './painted-channel.ts'

const sized = (edge: typeof outer, by: number) => ({ ...edge, rx: by * edge.rx, ry: by * edge.ry })

describe('bandedLand', () => {
  it('tells the edges of a land from curves beside them', () => {
    const land = bandedLand(channel, { outer, inner })
    if (land === null) throw new Error('the land was not weighed')
    expect(land.outerRatio).toBeGreaterThan(6)
    expect(land.innerRatio).toBeGreaterThan(6)
    expect(land.evenness).toBeGreaterThan(0.5)
    const inside = bandedLand(channel, { outer: sized(outer, 0.92), inner })
    expect(inside?.outerRatio).toBeLessThan(2)
    const larger = bandedLand(channel, { outer: sized(outer, 1.15), inner })
    expect(larger?.evenness).toBeLessThan(0.2)
  })

  it('answers nothing of a ring that is too narrow, or turned inside out', () => {
    expect(bandedLand(channel, { outer, inner: sized(outer, 0.98) })).toBeNull()
    expect(bandedLand(channel, { outer: inner, inner: outer })).toBeNull()
  })

  it('answers nothing of a land that leaves the picture', () => {
    const off = { ...outer, cx: outer.cx + 200 }
    expect(bandedLand(channel, { outer: off, inner: { ...inner, cx: inner.cx + 200 } })).toBeNull()
  })
})
