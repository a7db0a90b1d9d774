import { describe, expect, it } from 'vitest'
import { type TwoPointInput, twoPointLeak } from '../../../src/science/leak/two-point-leak.ts'
import { combinedStandardUncertainty } from '../../../src/science/uncertainty/combined-standard-uncertainty.ts'
import { twoPointLeakBudget } from '../../../src/science/uncertainty/two-point-leak-budget.ts'
import { twoPointLeakModel } from '../../../src/science/uncertainty/two-point-leak-model.ts'
import { linearByDifferences } from '../linear-by-differences.ts'
import { readReference } from '../read-reference.ts'
import { sampleModel } from '../sample-model.ts'

const input: TwoPointInput = {
  volumeL: 5,
  referenceTemperatureC: 20,
  start: { timeS: 0, pressureKPaAbs: 271.325, temperatureC: 21 },
  end: { timeS: 600, pressureKPaAbs: 268.1, temperatureC: 20.5 },
}
const stated = { volumeRelative: 0.02, pressurePa: 30, temperatureK: 0.05 }
const errors = { volumeErrorRelative: 0.01, pressureErrorPa: 50, temperatureErrorK: 0.2 }
const full = { ...stated, timeS: 2, resolutionPa: 100, resolutionK: 0.1 }

describe('twoPointLeakModel', () => {
  it.each([
    ['all that can be known', full],
    ['the worked leak', stated],
    ['errors beside all else', { ...full, ...errors }],
    ['errors alone', errors],
    ['steps alone', { resolutionPa: 100, resolutionK: 0.1 }],
    ['nothing', {}],
  ] as const)('gives leak and u of the budget for %s, by differences', (_, known) => {
    const { value, u } = linearByDifferences(twoPointLeakModel(input, known))
    expect(value).toBeCloseTo(twoPointLeak(input), 14) // rounding
    const lines = twoPointLeakBudget(input, known)
    const expected = lines.length === 0 ? 0 : combinedStandardUncertainty(lines)
    // Central differences lose some digits where pressures of 270 kPa cancel.
    expect(Math.abs(u - expected)).toBeLessThanOrEqual(1e-6 * expected)
  })

  it('gives the reference case: u 2.24599e-4, and 2.2446e-4 by trials', () => {
    const row = readReference<{ id: string; expect: { Q: number; u: number } }[]>(
      'leak/decay-cases.json',
    ).find((one) => one.id === 'twopoint-0.0008')
    const model = twoPointLeakModel(
      {
        volumeL: 0.8,
        referenceTemperatureC: 20,
        start: { timeS: 0, pressureKPaAbs: 600, temperatureC: 20 },
        end: { timeS: 600, pressureKPaAbs: 598.5, temperatureC: 20.1 },
      },
      { volumeRelative: 0.01, pressurePa: 60, temperatureK: 0.05, timeS: 1 },
    )
    // The reference used finite differences too.
    expect(Math.abs(linearByDifferences(model).u / (row?.expect.u ?? 0) - 1)).toBeLessThan(1e-6)
    const { deviation } = sampleModel(model, { seed: 77, trials: 100_000 })
    // Own derivation, 400 000 trials: 2.2446e-4; four standard errors of 100 000 trials.
    expect(Math.abs(deviation / 2.2446e-4 - 1)).toBeLessThan(0.01)
  })

  it('scatters as the budget says with rectangular steps among it', () => {
    const { mean, deviation } = sampleModel(twoPointLeakModel(input, full), {
      seed: 5,
      trials: 100_000,
    })
    const u = combinedStandardUncertainty(twoPointLeakBudget(input, full))
    // Four standard errors of 0.22 %.
    expect(Math.abs(deviation / u - 1)).toBeLessThan(0.009)
    expect(Math.abs(mean - twoPointLeak(input))).toBeLessThan(0.013 * u) // four of u / sqrt n
  })

  it('keeps what is not known as constants', () => {
    const { quantities } = twoPointLeakModel(input, { pressurePa: 30 })
    const uncertain = quantities.filter((one) => one.standardUncertainty > 0)
    expect(uncertain.map((one) => one.name)).toEqual(['startKPa', 'endKPa'])
    expect(uncertain[0]?.standardUncertainty).toBeCloseTo(0.03, 15) // 30 Pa in kPa
  })

  it('refuses what the budget refuses', () => {
    expect(() => twoPointLeakModel(input, { pressurePa: -1 })).toThrow(RangeError)
  })
})
