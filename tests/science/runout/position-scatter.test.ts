import { expect, it } from 'vitest'
import { fitHarmonics } from '../../../src/science/runout/fit-harmonics.ts'
import { positionScatter } from '../../../src/science/runout/position-scatter.ts'
import { seededUniform } from '../seeded-random.ts'
import { evenAngles } from './even-turn.ts'

it('is 1 for even positions, and the closed form for half a turn', () => {
  for (const count of [3, 4, 8, 12, 72])
    expect(positionScatter(evenAngles(count))).toBeCloseTo(1, 9)
  // Points (1, 0), (0, 1), (-1, 0): spreads 2 and 2/3, against 3/2.
  expect(positionScatter([0, 90, 180])).toBeCloseTo(1.5, 12)
})

it('does not care where 0 lies, nor about repeats', () => {
  const uniform = seededUniform(3)
  for (let trial = 0; trial < 50; trial++) {
    const angles = Array.from({ length: 3 + (trial % 6) }, () => 360 * uniform())
    const turned = angles.map((one) => one + 77)
    const once = positionScatter(angles)
    expect(positionScatter(turned) / once).toBeCloseTo(1, 6)
    expect(positionScatter([...angles, ...turned.map((one) => one - 77)])).toBeCloseTo(once, 9)
  }
})

it('is the scatter of the fit in its worst direction', () => {
  const angles = [0, 20, 50, 80, 110]
  const worst = Math.max(
    ...Array.from({ length: 360 }, (_, deg) => {
      const points = angles.map((one) => ({ angleDeg: one + deg, valueUm: 0 }))
      const fit = fitHarmonics(
        points.map((one) => ({ ...one, valueUm: Math.cos((one.angleDeg * Math.PI) / 180) })),
        { highestOrder: 1, readingStandardUncertaintyUm: 1 },
      )
      return fit.harmonics[0]?.amplitudeStandardUncertaintyUm ?? 0
    }),
  )
  expect(positionScatter(angles) / (worst / Math.sqrt(2 / angles.length))).toBeCloseTo(1, 3)
})

it('grows without bound as positions crowd', () => {
  expect(positionScatter([0, 5, 10])).toBeGreaterThan(300)
  expect(positionScatter([0, 1e-5, 2e-5])).toBeGreaterThan(1e6)
  expect(() => positionScatter([0, 180, 360])).toThrow('count of positions')
})
