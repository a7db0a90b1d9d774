import { describe, expect, it } from 'vitest'
import { ringMap } from '../../../src/science/photo/ring-map.ts'

describe('ringMap', () => {
  it('leads the unit circle onto the ellipse', () => {
    const ellipse = { cx: 40, cy: 30, rx: 20, ry: 12, rotationDeg: 35 }
    const map = ringMap(ellipse)
    const turn = (35 * Math.PI) / 180
    for (let i = 0; i < 12; i++) {
      const x = Math.cos(i)
      const y = Math.sin(i)
      const dx = map.xx * x + map.xy * y
      const dy = map.xy * x + map.yy * y
      const along = (dx * Math.cos(turn) + dy * Math.sin(turn)) / 20
      const across = (-dx * Math.sin(turn) + dy * Math.cos(turn)) / 12
      expect(along ** 2 + across ** 2).toBeCloseTo(1, 13) // rounding only
    }
  })

  it('keeps the directions of the axes, and every direction of a circle', () => {
    const oblique = ringMap({ cx: 0, cy: 0, rx: 9, ry: 4, rotationDeg: 90 })
    expect(oblique.xx).toBeCloseTo(4, 14) // cos 90 degrees is 6e-17
    expect(oblique.yy).toBeCloseTo(9, 14)
    expect(oblique.xy).toBeCloseTo(0, 14)
    const round = ringMap({ cx: 0, cy: 0, rx: 7, ry: 7, rotationDeg: 61 })
    expect([round.xx, round.yy].map((v) => Math.round(v * 1e12) / 1e12)).toEqual([7, 7])
    expect(Math.abs(round.xy)).toBeLessThan(1e-14)
  })
})
