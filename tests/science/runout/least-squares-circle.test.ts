import { describe, expect, it } from 'vitest'
import { leastSquaresCircle } from '../../../src/science/runout/least-squares-circle.ts'
import { readReference } from '../read-reference.ts'

interface CircleSet {
  readonly center: readonly [number, number]
  readonly diameter: number
  readonly rangeLS: number
  readonly points: readonly (readonly [number, number])[]
}
const { sets } = readReference<{ sets: Record<string, CircleSet> }>('runout/circles.json')

describe('the least-squares circle', () => {
  it.each(Object.entries(sets))('of %s is the reference one', (_, set) => {
    const circle = leastSquaresCircle(set.points.map(([x, y]) => ({ x, y })))
    // Coordinates of hundreds in double precision, and arcs of a few degrees: the centre is known
    // to 1e-9 of the radius.
    const near = 1e-9 * set.diameter
    expect(Math.abs(circle.x - set.center[0])).toBeLessThan(near)
    expect(Math.abs(circle.y - set.center[1])).toBeLessThan(near)
    expect(Math.abs(2 * circle.radius - set.diameter)).toBeLessThan(near)
    const range = Math.max(...circle.departures) - Math.min(...circle.departures)
    expect(Math.abs(range - set.rangeLS)).toBeLessThan(1e-9)
  })

  it('covers every reference pair', () => {
    expect(Object.keys(sets)).toHaveLength(30)
  })

  it('gives the printed circle of six points', () => {
    const pairs = [
      [1, 7],
      [2, 6],
      [5, 8],
      [7, 7],
      [9, 5],
      [3, 7],
    ] as const
    const circle = leastSquaresCircle(pairs.map(([x, y]) => ({ x, y })))
    expect(circle.x).toBeCloseTo(4.7398, 4) // printed to four decimals
    expect(circle.y).toBeCloseTo(2.9835, 4)
    expect(circle.radius).toBeCloseTo(4.7142, 4)
    const squares = circle.departures.reduce((sum, one) => sum + one * one, 0)
    expect(squares).toBeCloseTo(1.2276, 4)
  })

  it('refuses two points, a line, and a coordinate that is none', () => {
    const point = { x: 0, y: 0 }
    expect(() => leastSquaresCircle([point, { x: 1, y: 0 }])).toThrow('count of points')
    expect(() => leastSquaresCircle([point, { x: 1, y: 0 }, { x: 2, y: 0 }])).toThrow(RangeError)
    expect(() => leastSquaresCircle([point, point, { x: Number.NaN, y: 1 }])).toThrow('coordinate')
  })
})
