import { describe, expect, it } from 'vitest'
import { bandHeightUm } from '../../../src/science/optics/band-height-um.ts'
import type { BudgetLine } from '../../../src/science/uncertainty/budget-line.ts'
import {
  countedFlatnessBudget,
  usualReadingHalfWidthBands,
} from '../../../src/science/uncertainty/counted-flatness-budget.ts'
import { countedFlatnessModel } from '../../../src/science/uncertainty/counted-flatness-model.ts'
import { dialReadingBudget } from '../../../src/science/uncertainty/dial-reading-budget.ts'
import { dialReadingModel } from '../../../src/science/uncertainty/dial-reading-model.ts'
import { evaluateLinear } from '../../../src/science/uncertainty/evaluate-linear.ts'
import { expandedResult } from '../../../src/science/uncertainty/expanded-result.ts'
import { heightBudget } from '../../../src/science/uncertainty/height-budget.ts'
import { heightModel } from '../../../src/science/uncertainty/height-model.ts'
import type { MeasurementModel } from '../../../src/science/uncertainty/measurement-model.ts'
import { monteCarlo } from '../../../src/science/uncertainty/monte-carlo.ts'
import { pressureDropBudget } from '../../../src/science/uncertainty/pressure-drop-budget.ts'
import { pressureDropModel } from '../../../src/science/uncertainty/pressure-drop-model.ts'
import { roughnessBudget } from '../../../src/science/uncertainty/roughness-budget.ts'
import { roughnessModel } from '../../../src/science/uncertainty/roughness-model.ts'
import { twoPointLeakBudget } from '../../../src/science/uncertainty/two-point-leak-budget.ts'
import { twoPointLeakModel } from '../../../src/science/uncertainty/two-point-leak-model.ts'

interface Case {
  readonly model: MeasurementModel
  readonly budget: readonly BudgetLine[]
  readonly value: number
}

const wavelengthNm = 587.5618
const flatnessCase = (isSumOfTwoDirections: boolean, degreesOfFreedom?: number): Case => {
  const bow = { deltaK: 0.1, expansionPerK: 4e-6, diameterMm: 60, thicknessMm: 10 }
  const height = bandHeightUm({ wavelengthNm, viewingAngleDeg: 5 })
  const input = {
    wavelengthNm,
    viewingAngleDeg: 5,
    bandHeightUm: height,
    flatnessUm: 2 * height,
    isSumOfTwoDirections,
    readingHalfWidthBands: usualReadingHalfWidthBands,
    repeatability: { standardDeviationBands: 0.15, count: 3, degreesOfFreedom },
    opticalFlatToleranceUm: 0.025,
    wavelengthHalfWidthNm: 0.05,
    viewingAngleLimitDeg: 10,
    thermal: bow,
    flatThermal: { ...bow, expansionPerK: 0.55e-6 },
  }
  const { budget } = countedFlatnessBudget(input)
  return { model: countedFlatnessModel(input), budget, value: input.flatnessUm }
}

const leakCase = (): Case => {
  const input = {
    volumeL: 5,
    referenceTemperatureC: 20,
    start: { timeS: 0, pressureKPaAbs: 271.325, temperatureC: 21 },
    end: { timeS: 600, pressureKPaAbs: 268.1, temperatureC: 20.5 },
  }
  const known = {
    volumeRelative: 0.02,
    pressurePa: 30,
    resolutionPa: 100,
    temperatureK: 0.05,
    resolutionK: 0.1,
    timeS: 1,
  }
  const [model, budget] = [twoPointLeakModel(input, known), twoPointLeakBudget(input, known)]
  // The worked leak: 0.022992 Pa m3/s; here with all its digits, by hand from p / T.
  return { model, budget, value: ((5 * 293.15) / 600) * (271.325 / 294.15 - 268.1 / 293.65) }
}

const dropCase = (): Case => {
  const temperature = { startTemperatureC: 20, changeHalfWidthK: 0.5 }
  const ends = { startPressureKPaAbs: 271.325, endPressureKPaAbs: 268.1 }
  const input = { ...ends, pressurePa: 30, resolutionPa: 100, temperature }
  return { model: pressureDropModel(input), budget: pressureDropBudget(input), value: 3.225 }
}

const dialCase = (readingsUm: readonly number[]): Case => {
  const input = {
    readingsUm,
    resolutionUm: 2,
    largestErrorUm: 3,
    isDifference: true,
    leverAngleDeg: 15,
    leverAngleHalfWidthDeg: 5,
  }
  const value = 41 * Math.cos(Math.PI / 12)
  return { model: dialReadingModel(input), budget: dialReadingBudget(input), value }
}

const roughnessCase = (): Case => {
  const input = {
    readingsUm: [0.18, 0.22, 0.2, 0.24, 0.21, 0.21],
    resolutionUm: 0.01,
    largestErrorRelative: 0.05,
    referenceStandardUncertaintyUm: 0.008,
  }
  return { model: roughnessModel(input), budget: roughnessBudget(input), value: 0.21 }
}

const heightCase = (): Case => {
  const input = {
    readingsUm: [2501, 2503, 2502, 2501, 2503],
    resolutionUm: 1,
    standardUncertaintyUm: 1.2,
    settingStandardUncertaintyUm: 0.5,
    temperature: { halfWidthK: 5, expansionPerK: 5e-6 },
    alignmentHalfWidthUm: 1,
  }
  return { model: heightModel(input), budget: heightBudget(input), value: 2502 }
}

const cases = [
  ['counted flatness', flatnessCase(false)],
  ['counted flatness, found from ten counts', flatnessCase(false, 9)],
  ['a saddle', flatnessCase(true)],
  ['a saddle, found from ten counts', flatnessCase(true, 9)],
  ['a two-point leak', leakCase()],
  ['a pressure drop', dropCase()],
  ['a run-out read five times', dialCase([40, 42, 41, 40, 42])],
  ['a run-out read once', dialCase([41])],
  ['a roughness', roughnessCase()],
  ['a height', heightCase()],
] as const

describe('the models of the shop’s results', () => {
  it.each(cases)('give %s the value, u and degrees of freedom of its lines', (_, one) => {
    const linear = evaluateLinear(one.model, { probability: 0.95 })
    const expected = expandedResult(one.budget)
    expect(linear.value).toBeCloseTo(one.value, 11) // rounding of doubles
    // Both are exact partials, of one expression and of separate formulas: rounding.
    expect(Math.abs(linear.standardUncertainty / expected.standardUncertainty - 1)).toBeLessThan(
      1e-9,
    )
    if (expected.effectiveDegreesOfFreedom === null) {
      expect(linear.effectiveDegreesOfFreedom).toBeNull()
    } else {
      const ratio = (linear.effectiveDegreesOfFreedom ?? 0) / expected.effectiveDegreesOfFreedom
      expect(Math.abs(ratio - 1)).toBeLessThan(1e-8) // fourth powers of the same rounding
    }
  })

  it.each(cases)('scatter %s by trials as its lines say', (_, { model, budget, value }) => {
    const trials = 100_000
    const { mean, standardDeviation } = monteCarlo(model, { trials, seed: 12, probability: 0.95 })
    // JCGM 101:2008, 6.4.9.4: a t distribution scatters by sqrt(v / (v - 2)) more than its scale.
    const scattered = budget.map(({ contribution, distribution, degreesOfFreedom: degrees }) =>
      distribution === 't' && degrees !== null
        ? contribution * Math.sqrt(degrees / (degrees - 2))
        : contribution,
    )
    const expected = Math.hypot(...scattered)
    // A deviation from 100 000 trials has a standard error of 0.22 %, some more with a t among
    // them: five of those. A mean has u / sqrt(trials): four of those.
    expect(Math.abs(standardDeviation / expected - 1)).toBeLessThan(0.012)
    expect(Math.abs(mean - value)).toBeLessThan((4 * expected) / Math.sqrt(trials))
  })

  it('cover the worked flatness by trials nearly as its U says, and no less', () => {
    // E.g. 2 u of a reading that is mostly one rectangle: the trials' interval is the narrower.
    const { model, budget, value } = flatnessCase(false)
    const { expandedUncertainty: U } = expandedResult(budget)
    const { symmetricInterval } = monteCarlo(model, { trials: 100_000, seed: 2, probability: 0.95 })
    const [low, high] = symmetricInterval
    expect(low).toBeGreaterThan(value - U)
    expect(high).toBeLessThan(value + U)
    expect((high - low) / (2 * U)).toBeGreaterThan(0.9)
  })
})
