import { describe, expect, it } from 'vitest'
import type { DialPoint } from '../../../src/science/runout/dial-point.ts'
import { leastSquaresRoundnessUm } from '../../../src/science/runout/least-squares-roundness-um.ts'
import { minimumZoneRoundness } from '../../../src/science/runout/minimum-zone-roundness.ts'
import { seededNormal, seededUniform } from '../seeded-random.ts'
import { eightPositions, evenTurn, rad } from './even-turn.ts'

const span = (points: readonly DialPoint[], a: number, b: number) => {
  const left = points.map(
    (p) => p.valueUm - a * Math.cos(rad(p.angleDeg)) - b * Math.sin(rad(p.angleDeg)),
  )
  return Math.max(...left) - Math.min(...left)
}

/** Every centre at which two pairs, or three of one side and one, hold the circles. */
function bruteForce(points: readonly DialPoint[]): number {
  let best = Number.POSITIVE_INFINITY
  const n = points.length
  const edge = (i: number, j: number) => {
    const [p, q] = [points[i] as DialPoint, points[j] as DialPoint]
    return {
      c: Math.cos(rad(q.angleDeg)) - Math.cos(rad(p.angleDeg)),
      s: Math.sin(rad(q.angleDeg)) - Math.sin(rad(p.angleDeg)),
      z: q.valueUm - p.valueUm,
    }
  }
  for (let i = 0; i < n; i++)
    for (let j = i + 1; j < n; j++)
      for (let k = 0; k < n; k++)
        for (let l = k + 1; l < n; l++) {
          const [p, q] = [edge(i, j), edge(k, l)]
          const determinant = p.c * q.s - p.s * q.c
          if (Math.abs(determinant) < 1e-12) continue
          const a = (p.z * q.s - q.z * p.s) / determinant
          const b = (q.z * p.c - p.z * q.c) / determinant
          best = Math.min(best, span(points, a, b))
        }
  return best
}

describe('the minimum-zone circle of dial readings', () => {
  it('is what a search through all contacts finds, on random sets', () => {
    const [uniform, normal] = [seededUniform(4), seededNormal(5)]
    for (let trial = 0; trial < 60; trial++) {
      const points = Array.from({ length: 4 + (trial % 9) }, () => ({
        angleDeg: 360 * uniform(),
        valueUm: 20 * normal(),
      }))
      const { roundnessUm, cosineUm, sineUm } = minimumZoneRoundness(points)
      const wanted = bruteForce(points)
      expect(Math.abs(roundnessUm - wanted)).toBeLessThan(1e-8) // rounding of both routes
      expect(span(points, cosineUm, sineUm)).toBeCloseTo(roundnessUm, 8)
    }
  })

  it('is never above the least-squares one', () => {
    const ours = minimumZoneRoundness(eightPositions).roundnessUm
    expect(ours).toBeLessThan(leastSquaresRoundnessUm(eightPositions))
    expect(ours).toBeCloseTo(bruteForce(eightPositions), 9)
  })

  it('gives the height of three lobes, touched alternately outside and inside', () => {
    const lobes = evenTurn(Array.from({ length: 36 }, (_, i) => 2 * Math.cos(rad(30 * i))))
    const zone = minimumZoneRoundness(lobes)
    expect(zone.roundnessUm).toBeCloseTo(4, 10)
    expect(zone.highIndexes.every((one) => one % 12 === 0)).toBe(true)
    expect(zone.lowIndexes.every((one) => one % 12 === 6)).toBe(true)
  })

  it('refuses two positions and a reading that is none', () => {
    expect(() => minimumZoneRoundness(eightPositions.slice(0, 2))).toThrow('count of positions')
    expect(() => minimumZoneRoundness(evenTurn([1, 2, Number.NaN]))).toThrow('valueUm')
  })
})
