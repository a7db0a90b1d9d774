import { describe, expect, it } from 'vitest'
import { minimumZoneCircle } from '../../../src/science/runout/minimum-zone-circle.ts'
import { readReference } from '../read-reference.ts'
import { seededNormal } from '../seeded-random.ts'
import { rad } from './even-turn.ts'

type Pair = readonly [number, number]
interface CircleSet {
  readonly widthMZ: number | null
  readonly points: readonly Pair[]
}
const { sets } = readReference<{ sets: Record<string, CircleSet> }>('runout/circles.json')
const full = Object.entries(sets).filter(([, set]) => set.widthMZ !== null)
const { checks } = readReference<{
  checks: readonly {
    id: string
    fn: string
    input: { points: readonly Pair[] }
    expect: { cx: number; cy: number; width: number }
  }[]
}>('runout/checks.json')
const at = (pairs: readonly Pair[]) => pairs.map(([x, y]) => ({ x, y }))

/** Every centre with equal distance to two pairs of points: the optimum is one of them. */
function bruteForce(pairs: readonly Pair[]): number {
  const lines = pairs.flatMap((p, i) =>
    pairs.slice(i + 1).map((q) => ({
      a: 2 * (q[0] - p[0]),
      b: 2 * (q[1] - p[1]),
      c: q[0] ** 2 - p[0] ** 2 + q[1] ** 2 - p[1] ** 2,
    })),
  )
  let best = Number.POSITIVE_INFINITY
  lines.forEach((one, i) => {
    for (const other of lines.slice(i + 1)) {
      const determinant = one.a * other.b - one.b * other.a
      if (Math.abs(determinant) < 1e-9) continue
      const x = (one.c * other.b - other.c * one.b) / determinant
      const y = (one.a * other.c - other.a * one.c) / determinant
      const distances = pairs.map((p) => Math.hypot(p[0] - x, p[1] - y))
      best = Math.min(best, Math.max(...distances) - Math.min(...distances))
    }
  })
  return best
}

describe('the minimum-zone circle', () => {
  it.each(full)('of %s is as narrow as enumeration finds it', (_, set) => {
    const { width } = minimumZoneCircle(at(set.points))
    // Coordinates of hundreds in double precision.
    expect(Math.abs(width - (set.widthMZ ?? 0))).toBeLessThan(1e-9)
  })

  it('was compared with every full circle of the reference', () => {
    expect(full).toHaveLength(15)
  })

  it.each(checks.filter((one) => one.fn === 'mzc'))('holds the check $id', (check) => {
    const circle = minimumZoneCircle(at(check.input.points))
    // The points are rounded to 1e-6 or 1e-9; the check allows 1e-7.
    expect(circle.width).toBeCloseTo(check.expect.width, 7)
    expect(circle.x).toBeCloseTo(check.expect.cx, 6)
    expect(circle.y).toBeCloseTo(check.expect.cy, 6)
  })

  it('is what a search through all centres finds, on random rings', () => {
    const normal = seededNormal(13)
    for (let trial = 0; trial < 25; trial++) {
      const pairs = Array.from({ length: 9 + (trial % 4) }, (_, i, all = 9 + (trial % 4)) => {
        const radius = 25 + 0.01 * normal()
        const angle = rad((360 * i) / all)
        return [radius * Math.cos(angle), radius * Math.sin(angle)] as const
      })
      const wanted = bruteForce(pairs)
      expect(Math.abs(minimumZoneCircle(at(pairs)).width - wanted)).toBeLessThan(1e-10)
    }
  })

  it('refuses two points', () => {
    expect(() =>
      minimumZoneCircle(
        at([
          [0, 0],
          [1, 1],
        ]),
      ),
    ).toThrow('count of points')
  })
})
