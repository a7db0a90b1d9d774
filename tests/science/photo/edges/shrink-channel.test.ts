import { describe, expect, it } from 'vitest'
import { shrinkChannel } from '../../../../src/science/photo/edges/shrink-channel.ts'

const channel = { light: Float32Array.from({ length: 35 }, (_, i) => i), width: 7, height: 5 }

describe('shrinkChannel', () => {
  it('gives the means of squares and cuts off what is left over', () => {
    const small = shrinkChannel(channel, 3)
    expect([small.width, small.height]).toEqual([2, 1])
    // By hand: 0 1 2 7 8 9 14 15 16, and three more each.
    expect([...small.light]).toEqual([8, 11])
  })

  it('leaves a channel as it is at a factor of 1', () => {
    expect(shrinkChannel(channel, 1)).toEqual(channel)
  })

  it.each([0, 1.5, 6, Number.NaN])('refuses a factor of %d', (by) => {
    expect(() => shrinkChannel(channel, by)).toThrow(RangeError)
  })
})
