import { describe, expect, it } from 'vitest'
import { pressureChange } from '../../../src/science/leak/pressure-change.ts'
import { readReference } from '../read-reference.ts'

interface Worked {
  cfr1065: {
    volumeL: number
    p1KPa: number
    p2KPa: number
    temperatureK: number
    durationS: number
    gasConstant: number
    molPerS: number
    printedMolPerS: number
    paM3PerS: number
    sccm0C: number
  }
  assemblyTest: {
    volumeL: number
    dropKPa: number
    durationS: number
    paM3PerS: number
    mbarLPerS: number
    mlPerMin: number
  }
  corrected: {
    volumeL: number
    start: { pressureKPaAbs: number; temperatureK: number }
    end: { pressureKPaAbs: number; temperatureK: number }
    durationS: number
    uncompensated: number
    paM3PerS: number
    molPerS: number
    sccm0C: number
    mlPerMin: number
    uncorrectedHighPercent: number
  }
  correctedUncertainty: {
    volumeRelative: number
    pressurePa: number
    temperatureK: number
    u: number
    relativePercent: number
  }
}
const { cfr1065, assemblyTest, corrected, correctedUncertainty } =
  readReference<Worked>('leak/worked-leaks.json')

const state = (timeS: number, pressureKPaAbs: number, temperatureK: number) => ({
  timeS,
  pressureKPaAbs,
  temperatureC: temperatureK - 273.15,
})
const correctedInput = {
  volumeL: corrected.volumeL,
  referenceTemperatureC: 20,
  start: state(0, corrected.start.pressureKPaAbs, corrected.start.temperatureK),
  end: state(corrected.durationS, corrected.end.pressureKPaAbs, corrected.end.temperatureK),
}
const stated = {
  volumeRelative: correctedUncertainty.volumeRelative,
  pressurePa: correctedUncertainty.pressurePa,
  temperatureK: correctedUncertainty.temperatureK,
}

describe('pressureChange', () => {
  it('gives the vacuum example of 40 CFR 1065.644, as gas that enters', () => {
    const { volumeL, p1KPa, p2KPa, temperatureK, durationS } = cfr1065
    const result = pressureChange({
      volumeL,
      referenceTemperatureC: 20,
      start: state(0, p1KPa, temperatureK),
      end: state(durationS, p2KPa, temperatureK),
    })
    // The regulation computes with R = 8.314472; ours is the exact one: 1.1e-6 smaller.
    const withTheirR = (result.leakMolPerS * 8.31446261815324) / cfr1065.gasConstant
    expect(Math.abs(withTheirR / -cfr1065.molPerS - 1)).toBeLessThan(2e-5) // printed to five digits
    expect(Number(Math.abs(result.leakMolPerS).toFixed(5))).toBe(cfr1065.printedMolPerS)
    expect(result.leakPaM3PerS).toBeCloseTo(-cfr1065.paM3PerS, 5) // printed to five digits
    expect(result.leakSccm0C).toBeCloseTo(-cfr1065.sccm0C, 1) // printed to 0.1
    expect(result.pressureDropKPa).toBeCloseTo(-25.3, 12)
  })

  it('gives what the assembly test of API 682 allows in the units of the trade', () => {
    const { volumeL, dropKPa, durationS, paM3PerS, mbarLPerS, mlPerMin } = assemblyTest
    const result = pressureChange({
      volumeL,
      referenceTemperatureC: 20,
      start: state(0, 270, 293.15),
      end: state(durationS, 270 - dropKPa, 293.15),
    })
    expect(result.leakPaM3PerS).toBeCloseTo(paM3PerS, 4) // printed digits
    expect(result.leakMbarLPerS).toBeCloseTo(mbarLPerS, 3)
    expect(result.leakMlPerMin).toBeCloseTo(mlPerMin, 0) // 773.73; printed to 0.1
    expect(result.uncompensatedPaM3PerS).toBeCloseTo(result.leakPaM3PerS, 12) // same temperature
  })

  it('gives the worked leak with cooling taken out, in every unit', () => {
    const result = pressureChange(correctedInput)
    expect(result.leakPaM3PerS).toBeCloseTo(corrected.paM3PerS, 6) // printed digits
    expect(result.leakMolPerS).toBeCloseTo(corrected.molPerS, 10)
    expect(result.leakSccm0C).toBeCloseTo(corrected.sccm0C, 3)
    expect(result.leakMlPerMin).toBeCloseTo(corrected.mlPerMin, 3)
    expect(result.uncompensatedPaM3PerS).toBeCloseTo(corrected.uncompensated, 8)
    const highPercent = (result.uncompensatedPaM3PerS / result.leakPaM3PerS - 1) * 100
    expect(highPercent).toBeCloseTo(corrected.uncorrectedHighPercent, 1)
  })

  it('gives the worked uncertainty with factor 2', () => {
    const { uncertainty, leakPaM3PerS } = pressureChange(correctedInput, stated)
    const u = uncertainty?.standardUncertaintyPaM3PerS ?? Number.NaN
    // The worked partials take T as the reference and p as the mean: 0.2 % off, printed to 0.1 %.
    expect(Math.abs(u / correctedUncertainty.u - 1)).toBeLessThan(0.003)
    expect(Math.abs((u / leakPaM3PerS) * 100 - correctedUncertainty.relativePercent)).toBeLessThan(
      0.011,
    )
    expect(uncertainty?.expandedUncertaintyPaM3PerS).toBe(2 * u)
    expect(uncertainty?.budget.length).toBe(5)
  })

  it('gives the reference detection limit of two readings of a display', () => {
    const row = readReference<{ id: string; input: Record<string, number>; expect: number }[]>(
      'leak/decay-cases.json',
    ).find((c) => c.id === 'mdl2-1')
    if (row === undefined) throw new Error('the case mdl2-1 is missing')
    const of = (key: string) => row.input[key] ?? Number.NaN
    const result = pressureChange(
      {
        volumeL: of('V') * 1000,
        referenceTemperatureC: 20,
        start: state(0, 600, 293.15),
        end: state(of('dt'), 600, 293.15),
      },
      { pressurePa: of('res') / Math.sqrt(12) },
    )
    // Same closed form; rounding only.
    expect(
      Math.abs((result.smallestDetectablePaM3PerS ?? Number.NaN) / row.expect - 1),
    ).toBeLessThan(1e-12)
  })

  it('leaves volume and time out of the smallest detectable leak', () => {
    const noise = { pressurePa: 30, temperatureK: 0.05 }
    const plain = pressureChange(correctedInput, noise).smallestDetectablePaM3PerS
    const more = pressureChange(correctedInput, { ...noise, volumeRelative: 0.5, timeS: 60 })
    expect(more.smallestDetectablePaM3PerS).toBe(plain)
    expect(plain).toBeGreaterThan(0)
  })

  it('leaves out what cannot be known instead of inventing it', () => {
    expect(Object.keys(pressureChange(correctedInput))).not.toContain('uncertainty')
    expect(Object.keys(pressureChange(correctedInput))).not.toContain('smallestDetectablePaM3PerS')
    const volumeOnly = pressureChange(correctedInput, { volumeRelative: 0.02 })
    expect(volumeOnly.uncertainty).toBeDefined()
    expect(volumeOnly.smallestDetectablePaM3PerS).toBeUndefined()
  })

  it('refuses an end before its start', () => {
    const { start, end } = correctedInput
    expect(() => pressureChange({ ...correctedInput, start: end, end: start })).toThrow(RangeError)
  })
})
