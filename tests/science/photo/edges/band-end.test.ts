import { describe, expect, it } from 'vitest'
import { bandEnd } from '../../../../src/science/photo/edges/band-end.ts'
import { blank, channel, inner, outer } from './painted-channel.ts'

const sized = (edge: typeof outer, by: number) => ({ ...edge, rx: by * edge.rx, ry: by * edge.ry })

describe('bandEnd', () => {
  it.each([0.98, 0.99, 1, 1.02])('finds the outer edge from a curve of %d of its size', (by) => {
    const end = bandEnd(channel, sized(outer, by), 'outer')
    // Half a pixel of 119: the picture is sharp, so the swing falls within one pixel.
    expect(Math.abs(by * (1 + (end ?? 9)) - 1)).toBeLessThan(0.005)
  })

  it.each([0.98, 1, 1.01])('finds the inner edge from a curve of %d of its size', (by) => {
    const end = bandEnd(channel, sized(inner, by), 'inner')
    // Half a pixel of 83.
    expect(Math.abs(by * (1 - (end ?? 9)) - 1)).toBeLessThan(0.007)
  })

  it('finds none in the middle of the land, where nothing is seen, and off the picture', () => {
    expect(bandEnd(channel, sized(outer, 0.85), 'outer')).toBeNull()
    expect(bandEnd(blank, { ...outer, cx: 32, cy: 32, rx: 20, ry: 20 }, 'outer')).toBeNull()
    expect(bandEnd(channel, { ...outer, cx: 300 }, 'outer')).toBeNull()
  })
})
