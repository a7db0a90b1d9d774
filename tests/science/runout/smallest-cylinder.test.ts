import { expect, it } from 'vitest'
import type { CentreLine, SectionCentre } from '../../../src/science/runout/fit-centre-line.ts'
import { fitCentreLine } from '../../../src/science/runout/fit-centre-line.ts'
import { smallestCylinder } from '../../../src/science/runout/smallest-cylinder.ts'
import { seededNormal, seededUniform } from '../seeded-random.ts'

const largest = (line: CentreLine) =>
  Math.max(...line.departuresUm.map((one) => Math.hypot(one.xUm, one.yUm)))

/** Walks downhill over the offsets of the line at both ends with ever smaller steps. */
function bruteForce(centres: readonly SectionCentre[]): number {
  const length = centres.at(-1)?.positionMm ?? 1
  const size = ([x0 = 0, x1 = 0, y0 = 0, y1 = 0]: readonly number[]) =>
    Math.max(
      ...centres.map(({ positionMm, xUm, yUm }) => {
        const share = positionMm / length
        return Math.hypot(xUm - x0 - share * (x1 - x0), yUm - y0 - share * (y1 - y0))
      }),
    )
  const normal = seededNormal(1)
  let at = [0, 0, 0, 0]
  let best = size(at)
  let tries = 0
  for (let step = 20; step > 1e-7; tries++) {
    const next = at.map((one) => one + step * normal())
    const found = size(next)
    if (found < best) [at, best, tries] = [next, found, 0]
    if (tries > 1500) [step, tries] = [step / 1.5, 0]
  }
  return best
}

it('is what a long search finds, on random shafts', () => {
  const normal = seededNormal(8)
  for (let trial = 0; trial < 12; trial++) {
    const centres = Array.from({ length: 3 + (trial % 5) }, (_, i) => ({
      positionMm: 100 * i,
      xUm: 20 * normal(),
      yUm: 20 * normal(),
    }))
    const ours = largest(smallestCylinder(centres))
    const found = bruteForce(centres)
    expect(ours).toBeLessThanOrEqual(found + 1e-6)
    // The search ends above the best by its last steps.
    expect(ours).toBeGreaterThan(found * 0.999)
  }
})

it('gives the closed form of a bow in one plane: half of it on each side', () => {
  const bow = [0, 12, 0].map((xUm, i) => ({ positionMm: 100 * i, xUm, yUm: 0 }))
  expect(largest(smallestCylinder(bow))).toBeCloseTo(6, 6) // its stated gap is 1e-9
})

it('is never above the least-squares line, and nothing for two centres', () => {
  const centres = [0, 3, -2, 5, 1].map((xUm, i) => ({ positionMm: 80 * i, xUm, yUm: 4 * (i % 2) }))
  const weights = centres.map(() => 1)
  expect(largest(smallestCylinder(centres))).toBeLessThanOrEqual(
    largest(fitCentreLine(centres, weights)),
  )
  expect(largest(smallestCylinder(centres.slice(0, 2)))).toBeLessThan(1e-9)
})

it('refuses one centre and a centre that is none', () => {
  const one = { positionMm: 0, xUm: 0, yUm: 0 }
  expect(() => smallestCylinder([one])).toThrow('count of centres')
  expect(() => smallestCylinder([one, { ...one, xUm: Number.NaN }])).toThrow('centre')
})

it('has an answer for every straight shaft, whatever rounding leaves of it', () => {
  const uniform = seededUniform(27)
  for (let trial = 0; trial < 400; trial++) {
    const [dx, dy] = [Math.round(40 * uniform() - 20) / 10, Math.round(40 * uniform() - 20) / 10]
    const gap = [85, 120, 33.3][trial % 3] ?? 85
    const centres = Array.from({ length: 3 + (trial % 6) }, (_, i) => ({
      positionMm: 1000 * (trial % 2) + gap * i,
      xUm: dx * i * 1.7,
      yUm: dy * i * 1.7,
    }))
    expect(largest(smallestCylinder(centres))).toBeLessThan(1e-11)
  }
})
