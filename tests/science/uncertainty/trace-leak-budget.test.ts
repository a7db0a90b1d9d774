import { describe, expect, it } from 'vitest'
import { traceLeakBudget } from '../../../src/science/uncertainty/trace-leak-budget.ts'
import { twoPointLeakBudget } from '../../../src/science/uncertainty/two-point-leak-budget.ts'

const fit = {
  volumeL: 2,
  leakPaM3PerS: 0.01,
  windowS: 600,
  kPaPerK: 300 / 293.15,
  fall: { standardUncertaintyKPaPerS: 1e-5, degreesOfFreedom: 40 },
}
const all = { volumeRelative: 0.02, pressurePa: 30, temperatureK: 0.05, timeS: 1 }

describe('traceLeakBudget', () => {
  it('lists the slope first and then what is known of the instruments', () => {
    expect(traceLeakBudget(fit, all).map((line) => line.source)).toEqual([
      'slope',
      'volume',
      'pressure',
      'temperature',
      'elapsed-time',
    ])
    expect(traceLeakBudget(fit, {}).map((line) => line.source)).toEqual(['slope'])
    const { fall: _, ...unseen } = fit
    expect(traceLeakBudget(unseen, {})).toEqual([])
  })

  it('counts instruments exactly as two readings at the ends would', () => {
    const state = (timeS: number) => ({ timeS, pressureKPaAbs: 300, temperatureC: 20 })
    const ends = twoPointLeakBudget(
      { volumeL: 2, referenceTemperatureC: 20, start: state(0), end: state(600) },
      { pressurePa: 30, temperatureK: 0.05 },
    )
    const pair = (kind: string) =>
      Math.hypot(
        ...ends.filter((line) => line.source.endsWith(kind)).map((line) => line.contribution),
      )
    const lines = new Map(traceLeakBudget(fit, all).map((line) => [line.source, line.contribution]))
    expect(lines.get('pressure')).toBeCloseTo(pair('pressure'), 14) // rounding only
    expect(lines.get('temperature')).toBeCloseTo(pair('temperature'), 14)
  })

  it('gives the slope its degrees of freedom', () => {
    const [slope] = traceLeakBudget(fit, all)
    expect(slope).toMatchObject({ contribution: 2e-5, degreesOfFreedom: 40 })
    const fall = { standardUncertaintyKPaPerS: 1e-5 }
    const [known] = traceLeakBudget({ ...fit, fall }, all)
    expect(known).toMatchObject({ contribution: 2e-5, degreesOfFreedom: null })
  })

  it.each([{ volumeRelative: 2 }, { pressurePa: Number.NaN }, { temperatureK: -1 }, { timeS: -1 }])(
    'refuses %o',
    (wrong) => {
      expect(() => traceLeakBudget(fit, wrong)).toThrow(/^traceLeakBudget requires /)
    },
  )
})
