import { describe, expect, it } from 'vitest'
import { judgeSettling } from '../../../src/science/leak/judge-settling.ts'
import { fitLine } from '../../../src/science/statistics/fit-line.ts'
import { studentTQuantile } from '../../../src/science/statistics/student-t-quantile.ts'
import { readReference } from '../read-reference.ts'
import { seededAutoregressive } from '../seeded-random.ts'

interface Case {
  id: string
  kind: string
  input: { t: number[]; y: number[]; A: number; tau: number; t1: number; t2: number }
  expect: { mode: string } | number
}
const all = readReference<Case[]>('leak/decay-cases.json')
const verdicts = all.filter((c) => c.kind === 'settleMode')
const biases = all.filter((c) => c.kind === 'settleBiasOLS')
const timesS = Array.from({ length: 121 }, (_, i) => i * 5)

/** 600 kPa with a fall, a settling part and noise, in Pa. */
function simulate(
  seed: number,
  settings: { amplitude: number; tau: number; fall: number; sigma: number; correlation: number },
) {
  const noise = seededAutoregressive(seed, settings.correlation)
  return timesS.map(
    (t) =>
      600_000 +
      settings.amplitude * Math.exp(-t / settings.tau) -
      settings.fall * t +
      settings.sigma * noise(),
  )
}

describe('judgeSettling', () => {
  it.each(verdicts)('gives the verdict $id was built for', (row) => {
    const { settling } = judgeSettling({
      timesS: row.input.t,
      values: row.input.y,
      stepVariance: 0,
    })
    const built = (row.expect as { mode: string }).mode
    expect(settling).toBe(built === 'linear' ? 'settled' : 'corrected')
  })

  it('has one trace of each kind', () => {
    expect(verdicts.map((c) => c.id)).toEqual(['settle-mode-none', 'settle-mode-strong'])
    expect(biases.length).toBe(2)
  })

  it.each(biases)('knows why a plain line is not enough: $id', (row) => {
    // The bias of a straight line on a settling curve, by quadrature; ours by dense sampling.
    const { A, tau, t1, t2 } = row.input
    const x = Array.from({ length: 20_001 }, (_, i) => t1 + ((t2 - t1) * i) / 20_000)
    const line = fitLine({ x, y: x.map((t) => A * Math.exp(-t / tau)) })
    // Sampled against continuous: 1 / 20 000 of the value.
    expect(Math.abs(-line.slope / (row.expect as number) - 1)).toBeLessThan(2e-4)
  })

  it.each([0, 0.5, 0.8])(
    'calls a settled trace with correlation %d unsettled or corrected at most rarely',
    (correlation) => {
      let alarms = 0
      for (let run = 0; run < 150; run++) {
        const values = simulate(5000 + run, {
          amplitude: 0,
          tau: 60,
          fall: 0.2,
          sigma: 3,
          correlation,
        })
        if (judgeSettling({ timesS, values, stepVariance: 0 }).settling !== 'settled') alarms++
      }
      // Stated 1.6 % at most: 2.4 of 150 runs on average, more than 8 less than once in 1000.
      expect(alarms).toBeLessThanOrEqual(8)
    },
  )

  it('corrects a strong settling and covers the true fall', () => {
    let covered = 0
    let corrected = 0
    for (let run = 0; run < 150; run++) {
      const values = simulate(9000 + run, {
        amplitude: 800,
        tau: 60,
        fall: 0.2,
        sigma: 3,
        correlation: 0.5,
      })
      const verdict = judgeSettling({ timesS, values, stepVariance: 0 })
      if (verdict.settling !== 'corrected') continue
      corrected++
      const t = studentTQuantile({ probability: 0.975, degreesOfFreedom: verdict.degreesOfFreedom })
      if (Math.abs(verdict.fallPerS - 0.2) <= t * verdict.standardUncertaintyPerS) covered++
    }
    expect(corrected).toBe(150)
    // Stated coverage 92 to 96 %; the standard error of a rate from 150 is 2 %: three below 92.
    expect(covered / 150).toBeGreaterThan(0.86)
  })

  it.each([200, 300, 600])(
    'gives no number for a time constant of %d s in a window of 600 s or a longer one',
    (tau) => {
      const values = simulate(31, {
        amplitude: 2000,
        tau: tau * 1.05,
        fall: 0.2,
        sigma: 2,
        correlation: 0,
      })
      const verdict = judgeSettling({ timesS, values, stepVariance: 0 })
      expect(verdict.settling).toBe('unsettled')
      expect(Object.keys(verdict).sort()).toEqual(['settling', 'timeConstantS', 'windowS'])
    },
  )

  it('does not take the rounding of clean numbers for noise', () => {
    const clean = (amplitude: number) =>
      timesS.map((t) => 300 + amplitude * Math.exp(-t / 60) - 0.001 * t)
    const straight = judgeSettling({ timesS, values: clean(0), stepVariance: 0 })
    const curved = judgeSettling({ timesS, values: clean(2), stepVariance: 0 })
    expect([straight.settling, curved.settling]).toEqual(['settled', 'corrected'])
    for (const verdict of [straight, curved]) {
      if (verdict.settling === 'unsettled') throw new Error('a clean trace was not settled')
      expect(verdict.fallPerS).toBeCloseTo(0.001, 9) // search ends near 1e-8 in the time constant
    }
  })

  it('never claims less noise than the display allows', () => {
    const values = timesS.map((t) => 300 - 0.001 * t)
    const stepVariance = 0.1 ** 2 / 12
    const verdict = judgeSettling({ timesS, values, stepVariance })
    if (verdict.settling === 'unsettled') throw new Error('a straight trace was not settled')
    const { slopePerNoise } = fitLine({ x: timesS, y: values })
    expect(verdict.standardUncertaintyPerS).toBeGreaterThanOrEqual(
      slopePerNoise * Math.sqrt(stepVariance),
    )
  })

  it('scales with the unit and answers the same every time', () => {
    const values = simulate(12, { amplitude: 800, tau: 60, fall: 0.2, sigma: 3, correlation: 0.3 })
    const verdict = judgeSettling({ timesS, values, stepVariance: 0 })
    const again = judgeSettling({ timesS, values, stepVariance: 0 })
    const scaled = judgeSettling({ timesS, values: values.map((v) => v / 1024), stepVariance: 0 })
    expect(again).toEqual(verdict)
    if (verdict.settling !== 'corrected' || scaled.settling !== 'corrected')
      throw new Error('not corrected')
    expect((scaled.fallPerS * 1024) / verdict.fallPerS).toBeCloseTo(1, 12) // a power of two
  })

  it.each([
    { timesS: [0, 1, 2], values: [1, 2, 3], stepVariance: 0 },
    { timesS: [0, 1, 2, 3, 4, 5], values: [1, 2, 3, 4, 5, 6], stepVariance: -1 },
    { timesS: [0, 1, 2, 3, 4, 5], values: [1, 2, 3, 4, 5, Number.NaN], stepVariance: 0 },
  ])('refuses %o', (input) => {
    expect(() => judgeSettling(input)).toThrow(RangeError)
  })
})
