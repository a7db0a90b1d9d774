import { expect, it } from 'vitest'
import { harmonicColumns } from '../../../src/science/runout/harmonic-columns.ts'
import { harmonicOf } from '../../../src/science/runout/harmonic-of.ts'
import { waveVariances } from '../../../src/science/runout/wave-variances.ts'
import { leastSquares } from '../../../src/science/statistics/least-squares.ts'

it('gives the same scatter along and across at even positions, and more across at uneven ones', () => {
  const of = (angles: readonly number[]) => {
    const columns = harmonicColumns(angles, 1)
    const values = angles.map((deg) => 10 * Math.cos((deg * Math.PI) / 180))
    const [variance] = waveVariances(columns)
    if (variance === undefined) throw new Error('no wave')
    return harmonicOf(1, leastSquares({ columns, values }), { variance, sigma: 1 })
  }
  const even = of([0, 60, 120, 180, 240, 300])
  const across = ((even.phaseStandardUncertaintyDeg ?? 0) * Math.PI * even.amplitudeUm) / 180
  expect(across).toBeCloseTo(even.amplitudeStandardUncertaintyUm ?? 0, 10)
  expect(even.amplitudeStandardUncertaintyUm).toBeCloseTo(Math.sqrt(2 / 6), 12)
  const crowded = of([-30, -10, 10, 30, 170, 190])
  const sideways = ((crowded.phaseStandardUncertaintyDeg ?? 0) * Math.PI * 10) / 180
  expect(sideways).toBeGreaterThan(2 * (crowded.amplitudeStandardUncertaintyUm ?? 0))
})

it('says nothing of uncertainty where none was stated, nor of a direction of nothing', () => {
  const columns = harmonicColumns([0, 90, 180, 270], 1)
  const fit = leastSquares({ columns, values: [5, 5, 5, 5] })
  expect(harmonicOf(1, fit, null)).toMatchObject({
    amplitudeStandardUncertaintyUm: null,
    phaseStandardUncertaintyDeg: null,
  })
})
