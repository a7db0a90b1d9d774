import { describe, expect, it } from 'vitest'
import { mapPoints } from '../../../src/science/surface/map-points.ts'
import { minimumZone } from '../../../src/science/surface/minimum-zone.ts'
import type { ZonePoint } from '../../../src/science/surface/zone-simplex.ts'
import { readReference } from '../read-reference.ts'
import { seededUniform } from '../seeded-random.ts'
import { madeMap } from './made-map.ts'

interface ReferenceSet {
  readonly source: string
  readonly minimumZone: number
  readonly leastSquaresNormal?: readonly number[]
  readonly slope?: readonly [number, number]
  readonly points: readonly (readonly [number, number, number])[]
}
const { sets } = readReference<{ sets: Record<string, ReferenceSet> }>('surface/minimum-zone.json')
const all = Object.entries(sets)
const own = all.filter(([, set]) => set.source === 'own')
const nist = all.filter(([, set]) => set.source === 'nist')
const pointsOf = (set: ReferenceSet) => set.points.map(([x, y, z]) => ({ x, y, z }))

const span = (points: readonly ZonePoint[], slopeX: number, slopeY: number) => {
  const left = points.map((p) => p.z - slopeX * p.x - slopeY * p.y)
  return Math.max(...left) - Math.min(...left)
}

/** Tries every slope at which three points, or two pairs, can hold the planes. */
function bruteForce(points: readonly ZonePoint[]): number {
  let best = Number.POSITIVE_INFINITY
  const n = points.length
  const edge = (i: number, j: number) => {
    const [a, b] = [points[i] as ZonePoint, points[j] as ZonePoint]
    return { x: b.x - a.x, y: b.y - a.y, z: b.z - a.z }
  }
  for (let i = 0; i < n; i++)
    for (let j = i + 1; j < n; j++)
      for (let k = 0; k < n; k++)
        for (let l = k + 1; l < n; l++) {
          // Both edges lie in the direction of the planes; k = i gives three points on one.
          const [p, q] = [edge(i, j), edge(k, l)]
          const determinant = p.x * q.y - p.y * q.x
          if (Math.abs(determinant) < 1e-12) continue
          const slopeX = (p.z * q.y - q.z * p.y) / determinant
          const slopeY = (q.z * p.x - p.z * q.x) / determinant
          best = Math.min(best, span(points, slopeX, slopeY))
        }
  return best
}

/** The points turned so that a normal points along z. */
function turned(points: readonly ZonePoint[], normal: readonly number[]): ZonePoint[] {
  const [nx, ny, nz] = normal as [number, number, number]
  const size = Math.hypot(nx, ny, nz)
  const n = [nx / size, ny / size, nz / size] as const
  const [ax, ay, az] = Math.abs(n[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0]
  const u = [n[1] * az - n[2] * ay, n[2] * ax - n[0] * az, n[0] * ay - n[1] * ax]
  const length = Math.hypot(...u)
  const [ux, uy, uz] = u.map((v) => v / length) as [number, number, number]
  const [vx, vy, vz] = [n[1] * uz - n[2] * uy, n[2] * ux - n[0] * uz, n[0] * uy - n[1] * ux]
  return points.map(({ x, y, z }) => ({
    x: x * ux + y * uy + z * uz,
    y: x * vx + y * vy + z * vz,
    z: x * n[0] + y * n[1] + z * n[2],
  }))
}

describe('minimumZone', () => {
  it('has sets of both kinds to be held against', () => {
    expect([own.length, nist.length]).toEqual([10, 2])
  })

  it.each(own)('gives the minimum zone of %s', (_, set) => {
    const got = minimumZone(pointsOf(set))
    // Inputs are printed with 10 digits, in um up to 8: 1e-8.
    expect(got.height).toBeCloseTo(set.minimumZone, 7)
  })

  it.each(nist)('gives the width of %s of the published reference pairs', (_, set) => {
    // The published points lie on steep planes: turned by the published normal, then by the zone's
    // own slope, until the planes are level.
    let points = turned(pointsOf(set), set.leastSquaresNormal as number[])
    const middle = points.reduce((sum, p) => sum + p.z / points.length, 0)
    points = points.map((p) => ({ ...p, z: p.z - middle }))
    for (let round = 0; round < 4; round++) {
      const { slopeX, slopeY } = minimumZone(points)
      points = turned(points, [-slopeX, -slopeY, 1])
    }
    // Coordinates up to 700 carry rounding of 1e-13; the flatness of plane 7 is 8e-7.
    expect(Math.abs(minimumZone(points).height - set.minimumZone)).toBeLessThan(2e-12)
  })

  it('can not be beaten by any slope that brute force tries, and is reached by one', () => {
    const uniform = seededUniform(11)
    for (let round = 0; round < 40; round++) {
      const count = 4 + (round % 7)
      const points = Array.from({ length: count }, () => ({
        x: uniform(),
        y: uniform(),
        z: Math.round(uniform() * (round < 20 ? 1000 : 3)) / 1000,
      }))
      const got = minimumZone(points)
      expect(Math.abs(got.height - bruteForce(points))).toBeLessThan(1e-12) // rounding
      expect(span(points, got.slopeX, got.slopeY)).toBeCloseTo(got.height, 12) // rounding
    }
  })

  it('names contacts that prove it: they balance around one common foot', () => {
    const points = pointsOf(sets['annulus60-random'] as ReferenceSet)
    const { highIndexes, lowIndexes, ...got } = minimumZone(points)
    expect([highIndexes, lowIndexes]).toEqual([
      [12, 33],
      [25, 55],
    ])
    const left = (i: number) => {
      const p = points[i] as ZonePoint
      return p.z - got.slopeX * p.x - got.slopeY * p.y
    }
    for (const high of highIndexes)
      for (const low of lowIndexes) expect(left(high) - left(low)).toBeCloseTo(got.height, 12)
  })

  it('takes equal grids of a ring, where most steps gain nothing: saddle, lobes, cone', () => {
    const size = { radiusRatio: 0.75, ringCount: 17, angleCount: 180 }
    const zone = (height: (r: number, a: number) => number) =>
      minimumZone(mapPoints(madeMap(height, size))).height
    // Each is held by its own symmetry: crests and troughs have one common middle.
    expect(zone((r, a) => 0.5 * r * r * Math.cos(2 * a))).toBeCloseTo(1, 10) // 2 A
    expect(zone((r, a) => 0.5 * r ** 3 * Math.cos(3 * a))).toBeCloseTo(1, 10) // 2 A
    expect(zone((r) => 4 * r)).toBeCloseTo(1, 10) // k (1 - e)
    expect(zone((r, a) => 1e6 + 3000 * r * Math.cos(a))).toBeLessThan(1e-8) // a plane: rounding
    expect(zone(() => 0)).toBe(0)
  })

  it('gives r^3 cos a the zone that a search along its one slope finds', () => {
    // By symmetry the slope is along x: least over s of 2 max |r^3 - s r|, r from e to 1.
    const radii = Array.from({ length: 17 }, (_, i) => 0.3 + (0.7 * i) / 16)
    const at = (s: number) => 2 * Math.max(...radii.map((r) => Math.abs(r ** 3 - s * r)))
    let [low, high] = [0, 2]
    for (let turn = 0; turn < 200; turn++) {
      const [a, b] = [low + (high - low) / 3, high - (high - low) / 3]
      if (at(a) < at(b)) high = b
      else low = a
    }
    const size = { radiusRatio: 0.3, ringCount: 17, angleCount: 180 }
    const got = minimumZone(mapPoints(madeMap((r, a) => r ** 3 * Math.cos(a), size)))
    expect(got.height).toBeCloseTo(at(low), 10) // the search's end
    expect(got.slopeX).toBeCloseTo(low, 8) // a square root less sharp than the height
  })

  it('does not mind a tilt, a move or the order of the points, and grows with the heights', () => {
    const points = pointsOf(sets['grid25-random'] as ReferenceSet)
    const { height } = minimumZone(points)
    const moved = points.map(({ x, y, z }) => ({ x: x + 900, y, z: z + 0.3 * x - 2 * y + 70 }))
    expect(minimumZone(moved).height).toBeCloseTo(height, 9) // heights of 200 lose two digits
    expect(minimumZone([...points].reverse()).height).toBeCloseTo(height, 12) // rounding
    const higher = points.map((p) => ({ ...p, z: 7 * p.z }))
    expect(minimumZone(higher).height).toBeCloseTo(7 * height, 12) // rounding
  })

  it('takes three points, which always lie on one plane, and two heights over one foot', () => {
    const three = [
      { x: 0, y: 0, z: 1 },
      { x: 1, y: 0, z: 5 },
      { x: 0, y: 1, z: -2 },
    ]
    expect(minimumZone(three).height).toBeCloseTo(0, 12) // rounding
    expect(minimumZone([...three, { x: 0, y: 0, z: 4 }]).height).toBeCloseTo(3, 12) // rounding
  })

  it('refuses too few points, points on one line and coordinates that are no number', () => {
    const line = [0, 1, 2, 3].map((v) => ({ x: v, y: 2 * v, z: v * v }))
    expect(() => minimumZone(line)).toThrow('not all on one line')
    expect(() => minimumZone(line.slice(0, 2))).toThrow('count of points')
    expect(() => minimumZone([...line, { x: 0, y: 1, z: Number.NaN }])).toThrow('coordinate')
  })
})
