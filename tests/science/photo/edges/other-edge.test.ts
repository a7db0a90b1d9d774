import { describe, expect, it } from 'vitest'
import { otherEdge } from '../../../../src/science/photo/edges/other-edge.ts'
import { blank, channel, inner, outer } from './painted-channel.ts'

describe('otherEdge', () => {
  it('guesses the inner edge from the outer one', () => {
    const found = otherEdge(channel, outer, 'outer')
    // It looks at every hundredth of the radius; the edge itself is followed afterwards.
    expect(Math.abs((found?.ellipse.rx ?? 0) / outer.rx - 0.7)).toBeLessThan(0.03)
    expect(found?.worth).toBeGreaterThan(3)
  })

  it('guesses the outer edge from the inner one', () => {
    const found = otherEdge(channel, inner, 'inner')
    expect(Math.abs((found?.ellipse.rx ?? 0) / outer.rx - 1)).toBeLessThan(0.03)
    expect(found?.worth).toBeGreaterThan(3)
  })

  it('guesses nothing from a curve in the bore, nor where nothing is seen', () => {
    const bore = { ...outer, rx: 40, ry: 40 }
    expect(otherEdge(channel, bore, 'outer')).toBeNull()
    expect(otherEdge(blank, { ...outer, cx: 32, cy: 32, rx: 28, ry: 28 }, 'outer')).toBeNull()
  })
})
