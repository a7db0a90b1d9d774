import { describe, expect, it } from 'vitest'
import { combinedStandardUncertainty } from '../../../src/science/uncertainty/combined-standard-uncertainty.ts'
import { pressureDropBudget } from '../../../src/science/uncertainty/pressure-drop-budget.ts'
import { pressureDropModel } from '../../../src/science/uncertainty/pressure-drop-model.ts'
import { compileModel } from '../compile-model.ts'
import { linearByDifferences } from '../linear-by-differences.ts'
import { sampleModel } from '../sample-model.ts'

const readings = { startPressureKPaAbs: 271.325, endPressureKPaAbs: 268.1 }
const temperature = { startTemperatureC: 20, changeHalfWidthK: 0.5 }
const full = { ...readings, pressurePa: 30, resolutionPa: 100, temperature }

describe('pressureDropModel', () => {
  it.each([
    ['all that can be known', full],
    ['the gauge', { ...readings, pressurePa: 30 }],
    ['its error beside its calibration', { ...readings, pressurePa: 30, pressureErrorPa: 50 }],
    ['its step', { ...readings, resolutionPa: 100 }],
    ['the temperature', { ...readings, temperature }],
  ] as const)('gives drop and u of the budget for %s, by differences', (_, input) => {
    const { value, u } = linearByDifferences(pressureDropModel(input))
    expect(value).toBeCloseTo(3.225, 12) // 271.325 - 268.1; rounding
    const expected = combinedStandardUncertainty(pressureDropBudget(input))
    // Central differences of nearly straight functions.
    expect(Math.abs(u / expected - 1)).toBeLessThan(1e-7)
  })

  it('scatters as the budget says, by 100 000 trials', () => {
    const { mean, deviation } = sampleModel(pressureDropModel(full), { seed: 9, trials: 100_000 })
    const u = combinedStandardUncertainty(pressureDropBudget(full))
    expect(Math.abs(deviation / u - 1)).toBeLessThan(0.009) // four standard errors of 0.22 %
    expect(Math.abs(mean - 3.225)).toBeLessThan(0.013 * u) // four of u / sqrt n
  })

  it('finds a larger drop behind the readings of gas that grew warmer by a kelvin', () => {
    const model = pressureDropModel({ ...readings, temperature })
    const values = model.quantities.map((one) => (one.name === 'changeK' ? 1 : one.value))
    // Gay-Lussac by hand: 268.1 kPa at 294.15 K are 267.1886 kPa at 293.15 K.
    expect(compileModel(model)(...values)).toBeCloseTo(271.325 - 267.1886, 4)
  })

  it('is the bare difference where nothing is known', () => {
    const model = pressureDropModel(readings)
    expect(model.expression).toBe('startKPa - endKPa')
    expect(model.quantities.every((one) => one.standardUncertainty === 0)).toBe(true)
  })

  it('refuses what the budget refuses', () => {
    expect(() => pressureDropModel({ ...readings, pressurePa: -1 })).toThrow(RangeError)
  })
})
