import { describe, expect, it } from 'vitest'
import { fitEllipse } from '../../../src/science/photo/fit-ellipse.ts'
import { linearChannels } from '../../../src/science/photo/linear-channels.ts'
import { snapEdge } from '../../../src/science/photo/snap-edge.ts'
import { paintRing, placesOn } from './paint-ring.ts'

const outer = { cx: 201.3, cy: 198.8, rx: 160, ry: 157, rotationDeg: 25 }
const inner = { ...outer, rx: 0.7 * outer.rx, ry: 0.7 * outer.ry }
const picture = paintRing({
  width: 400,
  height: 400,
  outer,
  radiusRatio: 0.7,
  gap: (x, y) => 3 * x + 2 * y + 0.2,
  chamfer: 0.02,
})
const channel = {
  light: linearChannels(picture).channels[0],
  width: picture.width,
  height: picture.height,
}

describe('snapEdge', () => {
  it.each([
    { side: 'outer' as const, edge: outer },
    { side: 'inner' as const, edge: inner },
  ])('follows the $side edge from places set by hand to a tenth of a pixel', ({ side, edge }) => {
    const set = fitEllipse(placesOn(edge, 8, 2))
    if (set === null) throw new Error('the places lie on no ellipse')
    const found = snapEdge(channel, set, side)
    expect(found.isSnapped).toBe(true)
    // 240 directions, each off by a few tenths of a pixel, mostly averaged away.
    expect(Math.abs(found.ellipse.cx - edge.cx)).toBeLessThan(0.1)
    expect(Math.abs(found.ellipse.cy - edge.cy)).toBeLessThan(0.1)
    expect(Math.abs(found.ellipse.rx - edge.rx)).toBeLessThan(0.15)
    expect(Math.abs(found.ellipse.ry - edge.ry)).toBeLessThan(0.15)
  })

  it('leaves an ellipse where it was when there is no edge nearby', () => {
    const grey = { ...channel, light: new Float32Array(400 * 400).fill(0.3) }
    const found = snapEdge(grey, outer, 'outer')
    expect(found.isSnapped).toBe(false)
    expect(found.ellipse).toEqual(outer)
  })
})
