import { describe, expect, it } from 'vitest'
import { chooseChannel } from '../../../src/science/photo/choose-channel.ts'
import { linearChannels } from '../../../src/science/photo/linear-channels.ts'
import { paintRing } from './paint-ring.ts'

const outer = { cx: 100, cy: 100, rx: 80, ry: 80, rotationDeg: 0 }
const gap = (x: number) => 4 * x
const picture = paintRing({ width: 200, height: 200, outer, radiusRatio: 0.6, gap })
const face = { outer, radiusRatio: 0.6 }

describe('chooseChannel', () => {
  it('takes red in yellow light, where the bands swing most', () => {
    const chosen = chooseChannel(linearChannels(picture), face)
    expect(chosen.index).toBe(0)
    expect(chosen.clippedShare).toBe(0)
  })

  it('takes green when red is clipped, and says how much', () => {
    const clipped = Uint8Array.from(picture.data, (byte, i) => (i % 3 === 0 ? 255 : byte))
    const other = chooseChannel(linearChannels({ ...picture, data: clipped }), face)
    expect(other.index).toBe(1)
    const white = { ...picture, data: new Uint8Array(picture.data.length).fill(255) }
    expect(chooseChannel(linearChannels(white), face).clippedShare).toBe(1)
  })
})
