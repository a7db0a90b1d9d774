import { expect, it } from 'vitest'
import { harmonicColumns } from '../../../src/science/runout/harmonic-columns.ts'
import { waveVariances } from '../../../src/science/runout/wave-variances.ts'
import { leastSquares } from '../../../src/science/statistics/least-squares.ts'
import { seededNormal } from '../seeded-random.ts'
import { evenAngles } from './even-turn.ts'

it('is 2 / count without a joint part at even positions', () => {
  for (const wave of waveVariances(harmonicColumns(evenAngles(12), 5))) {
    expect(wave.cosine).toBeCloseTo(2 / 12, 12)
    expect(wave.sine).toBeCloseTo(2 / 12, 12)
    expect(wave.joint).toBeCloseTo(0, 12)
  }
})

it('is what the coefficients of 20 000 noisy turns scatter by, at uneven positions', () => {
  const columns = harmonicColumns([0, 25, 40, 100, 160, 230, 250], 1)
  const normal = seededNormal(5)
  const trials = Array.from({ length: 20_000 }, () => {
    const values = (columns[0] ?? []).map(() => normal())
    return leastSquares({ columns, values }).coefficients
  })
  const mean = (of: (one: readonly number[]) => number) =>
    trials.reduce((sum, one) => sum + of(one), 0) / trials.length
  const [wave] = waveVariances(columns)
  // Each of these has a standard error of 1 % or less.
  expect(mean((one) => (one[1] ?? 0) ** 2) / (wave?.cosine ?? 0)).toBeCloseTo(1, 1)
  expect(mean((one) => (one[2] ?? 0) ** 2) / (wave?.sine ?? 0)).toBeCloseTo(1, 1)
  expect(Math.abs(wave?.joint ?? 0)).toBeGreaterThan(0.05)
  expect(mean((one) => (one[1] ?? 0) * (one[2] ?? 0)) / (wave?.joint ?? 0)).toBeCloseTo(1, 1)
})
