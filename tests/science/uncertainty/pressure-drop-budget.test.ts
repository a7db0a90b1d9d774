import { describe, expect, it } from 'vitest'
import { combinedStandardUncertainty } from '../../../src/science/uncertainty/combined-standard-uncertainty.ts'
import { pressureDropBudget } from '../../../src/science/uncertainty/pressure-drop-budget.ts'

const readings = { startPressureKPaAbs: 271.325, endPressureKPaAbs: 268.1 }

describe('pressureDropBudget', () => {
  it('makes the drop good to the root of two of a reading: 42.4 Pa of 30 Pa each', () => {
    const lines = pressureDropBudget({ ...readings, pressurePa: 30 })
    expect(lines.map((line) => line.source)).toEqual(['start-pressure', 'end-pressure'])
    // JCGM 100:2008, equation (10), of a difference: sqrt(30^2 + 30^2), by hand.
    expect(combinedStandardUncertainty(lines)).toBeCloseTo(0.0424264, 7)
  })

  it('gives two readings of a step of 100 Pa 40.8 Pa', () => {
    const lines = pressureDropBudget({ ...readings, resolutionPa: 100 })
    expect(lines.map((line) => line.source)).toEqual([
      'start-pressure-resolution',
      'end-pressure-resolution',
    ])
    // sqrt 2 x 100 / sqrt 12 = 100 / sqrt 6, by hand.
    expect(combinedStandardUncertainty(lines)).toBeCloseTo(0.0408248, 7)
  })

  it('lets an error of 90 Pa stand beside a calibration good to 30 Pa: 84.9 Pa', () => {
    const lines = pressureDropBudget({ ...readings, pressurePa: 30, pressureErrorPa: 90 })
    expect(lines.map(({ source, distribution }) => [source, distribution])).toEqual([
      ['start-pressure', 'normal'],
      ['end-pressure', 'normal'],
      ['start-pressure-error', 'rectangular'],
      ['end-pressure-error', 'rectangular'],
    ])
    // sqrt(2 x 30^2 + 2 x 90^2 / 3) = sqrt 7200, by hand.
    expect(combinedStandardUncertainty(lines)).toBeCloseTo(0.0848528, 7)
  })

  it('gives an uncompensated kelvin what the gas law makes of it', () => {
    const temperature = { startTemperatureC: 20, changeHalfWidthK: 1 }
    const [line] = pressureDropBudget({ ...readings, temperature })
    // Second route: the end pressure as it would be, 1 K warmer or cooler, at constant volume.
    const atK = (change: number) => (268.1 * 293.15) / (293.15 + change)
    // A mean slope over a kelvin; 1e-5 of curvature.
    expect(line?.sensitivity).toBeCloseTo((atK(-1) - atK(1)) / 2, 4)
    expect(line?.contribution).toBeCloseTo(0.528, 3) // 268.1 / 293.15 / sqrt 3, by hand
    expect(line?.source).toBe('temperature-change')
  })

  it('has no line for what is not known, nor for the temperature of a bare difference', () => {
    expect(pressureDropBudget(readings)).toEqual([])
  })

  it('scales with what is known and not with the pressures', () => {
    const u = (more: object) =>
      combinedStandardUncertainty(pressureDropBudget({ ...readings, pressurePa: 30, ...more }))
    expect(u({ pressurePa: 60 }) / u({})).toBeCloseTo(2, 12) // rounding
    expect(u({ startPressureKPaAbs: 600 })).toBe(u({}))
  })

  it.each([
    { startPressureKPaAbs: -1 },
    { endPressureKPaAbs: Number.NaN },
    { pressurePa: -1 },
    { pressureErrorPa: -1 },
    { resolutionPa: -1 },
    { temperature: { startTemperatureC: -201, changeHalfWidthK: 1 } },
    { temperature: { startTemperatureC: 20, changeHalfWidthK: 51 } },
  ])('refuses %o', (wrong) => {
    expect(() => pressureDropBudget({ ...readings, ...wrong })).toThrow(
      /^pressureDropBudget requires /,
    )
  })
})
