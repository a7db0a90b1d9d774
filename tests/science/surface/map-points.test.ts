import { describe, expect, it } from 'vitest'
import { mapPoints } from '../../../src/science/surface/map-points.ts'
import { madeMap } from './made-map.ts'

describe('mapPoints', () => {
  it('sets every height over its foot', () => {
    const form = (r: number, a: number) => 2 * r * Math.cos(a) - r * Math.sin(a)
    const points = mapPoints(madeMap(form, { radiusRatio: 0.5, ringCount: 4, angleCount: 12 }))
    expect(points).toHaveLength(48)
    for (const { x, y, z } of points) expect(z).toBeCloseTo(2 * x - y, 12) // rounding
  })

  it('goes around counter-clockwise from the right, from the inside', () => {
    const points = mapPoints(madeMap(() => 0, { radiusRatio: 0.5, ringCount: 2, angleCount: 4 }))
    expect(points[0]).toEqual({ x: 0.5, y: 0, z: 0 })
    expect(points[1]?.y).toBeCloseTo(0.5, 12) // rounding
    expect(points[4]?.x).toBe(1)
  })
})
