import { describe, expect, it } from 'vitest'
import { type TwoPointInput, twoPointLeak } from '../../../src/science/leak/two-point-leak.ts'
import { combinedStandardUncertainty } from '../../../src/science/uncertainty/combined-standard-uncertainty.ts'
import { twoPointLeakBudget } from '../../../src/science/uncertainty/two-point-leak-budget.ts'
import { readReference } from '../read-reference.ts'
import { seededNormal } from '../seeded-random.ts'

const input: TwoPointInput = {
  volumeL: 5,
  referenceTemperatureC: 20,
  start: { timeS: 0, pressureKPaAbs: 271.325, temperatureC: 21 },
  end: { timeS: 600, pressureKPaAbs: 268.1, temperatureC: 20.5 },
}
const { correctedUncertainty: worked } = readReference<{
  correctedUncertainty: {
    volumeRelative: number
    pressurePa: number
    temperatureK: number
    u: number
    volume: number
    pressure: number
    temperature: number
  }
}>('leak/worked-leaks.json')
const stated = {
  volumeRelative: worked.volumeRelative,
  pressurePa: worked.pressurePa,
  temperatureK: worked.temperatureK,
}

const partOf = (kind: string) =>
  combinedStandardUncertainty(
    twoPointLeakBudget(input, stated).filter((line) => line.source.endsWith(kind)),
  )

/** The leak with its inputs moved: relative volume, Pa and K at each end, s. */
function moved(by: Partial<Record<'volume' | 'p1' | 'p2' | 't1' | 't2' | 'time', number>>): number {
  return twoPointLeak({
    ...input,
    volumeL: input.volumeL * (1 + (by.volume ?? 0)),
    start: {
      timeS: 0,
      pressureKPaAbs: input.start.pressureKPaAbs + (by.p1 ?? 0) / 1000,
      temperatureC: input.start.temperatureC + (by.t1 ?? 0),
    },
    end: {
      timeS: 600 + (by.time ?? 0),
      pressureKPaAbs: input.end.pressureKPaAbs + (by.p2 ?? 0) / 1000,
      temperatureC: input.end.temperatureC + (by.t2 ?? 0),
    },
  })
}

describe('twoPointLeakBudget', () => {
  it('gives the worked uncertainty of a corrected leak, part by part', () => {
    // Printed to three digits, with partials that take T as the reference temperature and p as the
    // mean of both ends: up to 0.6 % off the exact ones in a part, 0.2 % in the total.
    expect(Math.abs(partOf('volume') / worked.volume - 1)).toBeLessThan(0.0011)
    expect(Math.abs(partOf('pressure') / worked.pressure - 1)).toBeLessThan(0.006)
    expect(Math.abs(partOf('temperature') / worked.temperature - 1)).toBeLessThan(0.006)
    expect(Math.abs(partOf('') / worked.u - 1)).toBeLessThan(0.003)
  })

  it('gives the reference case with an uncertain time', () => {
    const row = readReference<
      { id: string; input: Record<string, number>; expect: { Q: number; u: number } }[]
    >('leak/decay-cases.json').find((c) => c.id === 'twopoint-0.0008')
    if (row === undefined) throw new Error('the case is missing')
    const of = (key: string) => row.input[key] ?? Number.NaN
    const state = (timeS: number, n: 1 | 2) => ({
      timeS,
      pressureKPaAbs: of(`p${n}`) / 1000,
      temperatureC: of(`T${n}`) - 273.15,
    })
    const test = {
      volumeL: of('V') * 1000,
      referenceTemperatureC: 20,
      start: state(0, 1),
      end: state(of('dt'), 2),
    }
    // cancellation of 600 kPa to 1.7 kPa
    expect(Math.abs(twoPointLeak(test) / row.expect.Q - 1)).toBeLessThan(1e-9)
    const lines = twoPointLeakBudget(test, {
      volumeRelative: of('uV') / of('V'),
      pressurePa: of('up'),
      temperatureK: of('uT'),
      timeS: of('udt'),
    })
    // The reference used finite differences.
    expect(Math.abs(combinedStandardUncertainty(lines) / row.expect.u - 1)).toBeLessThan(1e-6)
  })

  it('has the partials that finite differences give', () => {
    const lines = twoPointLeakBudget(input, {
      volumeRelative: 1e-4,
      pressurePa: 1,
      temperatureK: 1e-3,
      timeS: 1e-2,
    })
    const keys = {
      volume: 'volume',
      'start-pressure': 'p1',
      'end-pressure': 'p2',
      'start-temperature': 't1',
      'end-temperature': 't2',
      'elapsed-time': 'time',
    } as const
    expect(lines.map((line) => line.source)).toEqual(Object.keys(keys))
    for (const line of lines) {
      const key = keys[line.source as keyof typeof keys]
      const slope =
        (moved({ [key]: line.value }) - moved({ [key]: -line.value })) / (2 * line.value)
      // Central differences: second order in steps of 1e-4 and less, and rounding of the leak.
      expect(Math.abs(slope / line.sensitivity - 1)).toBeLessThan(1e-6)
    }
  })

  it('agrees with 200 000 seeded Monte Carlo trials', () => {
    const normal = seededNormal(2024)
    let sum = 0
    let squares = 0
    const trials = 200_000
    const centre = moved({})
    for (let i = 0; i < trials; i++) {
      const difference =
        moved({
          volume: normal() * worked.volumeRelative,
          p1: normal() * worked.pressurePa,
          p2: normal() * worked.pressurePa,
          t1: normal() * worked.temperatureK,
          t2: normal() * worked.temperatureK,
        }) - centre
      sum += difference
      squares += difference * difference
    }
    const deviation = Math.sqrt(squares / trials - (sum / trials) ** 2)
    // A deviation from 200 000 trials has a standard error of 0.16 %: six of those.
    expect(Math.abs(deviation / partOf('') - 1)).toBeLessThan(0.01)
  })

  it('gives steps of displays their lines: 3.29 u is what two readings can see', () => {
    // Own derivation, recomputed: 0.8 L, a step of 100 Pa, 600 s: 1.7908e-4 Pa m3/s, no leak, gas
    // at the reference temperature.
    const still = { timeS: 0, pressureKPaAbs: 600, temperatureC: 20 }
    const lines = twoPointLeakBudget(
      { volumeL: 0.8, referenceTemperatureC: 20, start: still, end: { ...still, timeS: 600 } },
      { resolutionPa: 100 },
    )
    expect(lines.map((line) => line.source)).toEqual([
      'start-pressure-resolution',
      'end-pressure-resolution',
    ])
    expect(lines.every((line) => line.distribution === 'rectangular')).toBe(true)
    // All digits of the case; rounding.
    expect(
      Math.abs((3.29 * combinedStandardUncertainty(lines)) / 1.7908491675e-4 - 1),
    ).toBeLessThan(1e-9)
  })

  it('moves the leak by a step as by any other error of the same reading', () => {
    const steps = twoPointLeakBudget(input, { resolutionPa: 10, resolutionK: 0.1 })
    const errors = twoPointLeakBudget(input, { pressurePa: 10, temperatureK: 0.1 })
    expect(steps.map((line) => line.source)).toEqual(
      errors.map((line) => `${line.source}-resolution`),
    )
    for (const [index, step] of steps.entries()) {
      expect(step.sensitivity).toBe(errors[index]?.sensitivity)
      // d / sqrt 12; rounding
      expect(step.value).toBeCloseTo((errors[index]?.value ?? 0) / Math.sqrt(12), 12)
    }
  })

  it('moves the leak by an error that is not corrected as by one of the calibration', () => {
    const calibrations = { volumeRelative: 0.01, pressurePa: 50, temperatureK: 0.2 }
    const uncorrected = { volumeErrorRelative: 0.01, pressureErrorPa: 50, temperatureErrorK: 0.2 }
    const known = twoPointLeakBudget(input, calibrations)
    const errors = twoPointLeakBudget(input, uncorrected)
    expect(errors.map((line) => line.source)).toEqual(known.map((line) => `${line.source}-error`))
    for (const [index, error] of errors.entries()) {
      expect(error.sensitivity).toBe(known[index]?.sensitivity)
      expect(error.distribution).toBe('rectangular')
      // e / sqrt 3, JCGM 100:2008, 4.3.7; rounding
      expect(error.value).toBeCloseTo((known[index]?.value ?? 0) / Math.sqrt(3), 12)
    }
    const both = combinedStandardUncertainty(
      twoPointLeakBudget(input, { ...calibrations, ...uncorrected }),
    )
    // u^2 + u^2 / 3 of the calibrations alone; rounding.
    const alone = combinedStandardUncertainty(known)
    expect(both / alone).toBeCloseTo(Math.sqrt(4 / 3), 12)
  })

  it('lists only what is known', () => {
    expect(twoPointLeakBudget(input, {})).toEqual([])
    expect(twoPointLeakBudget(input, { pressurePa: 30 }).map((line) => line.source)).toEqual([
      'start-pressure',
      'end-pressure',
    ])
  })

  it.each([
    { volumeRelative: -0.1 },
    { volumeRelative: 1.1 },
    { pressurePa: -1 },
    { temperatureK: Number.NaN },
    { timeS: -1 },
    { resolutionPa: -1 },
    { resolutionK: 1001 },
    { volumeErrorRelative: 1.1 },
    { pressureErrorPa: -1 },
    { temperatureErrorK: Number.NaN },
  ])('refuses %o', (wrong) => {
    expect(() => twoPointLeakBudget(input, wrong)).toThrow(/^twoPointLeakBudget requires /)
  })
})
