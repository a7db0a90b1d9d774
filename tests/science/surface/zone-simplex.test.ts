import { describe, expect, it } from 'vitest'
import { type ZonePoint, zoneSimplex } from '../../../src/science/surface/zone-simplex.ts'
import { seededUniform } from '../seeded-random.ts'

const outside = (points: readonly ZonePoint[], zone: ReturnType<typeof zoneSimplex>) => {
  const left = points.map((p) => p.z - zone.slopeX * p.x - zone.slopeY * p.y)
  return Math.max(...left) - Math.min(...left) - zone.height
}

describe('zoneSimplex', () => {
  it('gives three corners under a middle point the height of that point', () => {
    const corners = [0, 120, 240].map((deg) => {
      const angle = (deg * Math.PI) / 180
      return { x: Math.cos(angle), y: Math.sin(angle), z: 0 }
    })
    const got = zoneSimplex([...corners, { x: 0.1, y: 0.1, z: 0.7 }])
    expect(got.height).toBeCloseTo(0.7, 12) // rounding
    expect([got.highIndexes, got.lowIndexes]).toEqual([[3], [0, 1, 2]])
  })

  it('gives a ridge between two points in line with it: half way up', () => {
    // Three points on a line 0, 1, 0: one over two, at their middle the chord is 1 below.
    const ridge = [
      { x: -1, y: 0, z: 0 },
      { x: 0, y: 0, z: 1 },
      { x: 1, y: 0, z: 0 },
      { x: 0, y: 1, z: 0.4 },
    ]
    const got = zoneSimplex(ridge)
    expect(got.height).toBeCloseTo(1, 12) // rounding
    expect(outside(ridge, got)).toBeLessThan(1e-12)
  })

  it('ends with all points between the planes for any points: no gap between both bounds', () => {
    const uniform = seededUniform(21)
    for (let round = 0; round < 60; round++) {
      const points = Array.from({ length: 3 + round * 5 }, () => ({
        x: Math.round(uniform() * 20 - 10) / 10,
        y: Math.round(uniform() * 20 - 10) / 10,
        z: Math.round(uniform() * 8) / 8,
      }))
      points.push({ x: -1, y: 1.05, z: 0.5 }, { x: 1, y: 0, z: 0.5 }, { x: 0, y: -1, z: 0 })
      // Height is a lower bound by its balance and an upper one by this: together exact.
      expect(Math.abs(outside(points, zoneSimplex(points)))).toBeLessThan(1e-11)
    }
  })

  it('refuses points on one line, and two', () => {
    const line = [0, 1, 2].map((x) => ({ x, y: x, z: 0 }))
    expect(() => zoneSimplex(line)).toThrow('one line')
    expect(() => zoneSimplex(line.slice(1))).toThrow('count of points')
  })
})
