import { describe, expect, it } from 'vitest'
import { pressureChange } from '../../../src/science/leak/pressure-change.ts'
import { pressureTrace } from '../../../src/science/leak/pressure-trace.ts'
import { seededNormal } from '../seeded-random.ts'

const timesS = Array.from({ length: 121 }, (_, i) => i * 5)

/** A trace of a 2 L volume near 300 kPa. */
function traceOf(pressure: (timeS: number) => number, temperature?: (timeS: number) => number) {
  return {
    volumeL: 2,
    referenceTemperatureC: 20,
    trace: timesS.map((timeS) => ({
      timeS,
      pressureKPaAbs: pressure(timeS),
      ...(temperature && { temperatureC: temperature(timeS) }),
    })),
  }
}

/** The answer of a trace that must have one. */
function released(...[input, uncertainties]: Parameters<typeof pressureTrace>) {
  const result = pressureTrace(input, uncertainties)
  if (result.settling === 'unsettled') throw new Error('the trace gave no leak')
  return result
}

describe('pressureTrace', () => {
  it('gives a clean straight fall as two readings at its ends do', () => {
    const input = traceOf((t) => 300 - 0.001 * t)
    const result = released(input)
    const ends = pressureChange({
      ...input,
      start: { timeS: 0, pressureKPaAbs: 300, temperatureC: 20 },
      end: { timeS: 600, pressureKPaAbs: 299.4, temperatureC: 20 },
    })
    expect(result.settling).toBe('settled')
    // Rounding of numbers near 300.
    expect(result.leakPaM3PerS).toBeCloseTo(ends.leakPaM3PerS, 12)
    expect(result.leakSccm0C).toBeCloseTo(ends.leakSccm0C, 9)
    expect(result.leakMlPerMin).toBeCloseTo(ends.leakMlPerMin, 9)
    expect(result.pressureDropKPa).toBeCloseTo(0.6, 12)
  })

  it('takes the temperature out: a sealed volume that cools does not leak', () => {
    const temperature = (t: number) => 21 - t / 600
    const noise = seededNormal(6)
    const result = released(
      traceOf((t) => (300 * (temperature(t) + 273.15)) / 293.15 + 0.002 * noise(), temperature),
    )
    // Cooling alone looks like 2 L x 300 / 293 kPa/K x 1 K / 600 s = 0.0034 Pa m3/s.
    expect(result.uncompensatedPaM3PerS).toBeCloseTo(0.00341, 4)
    const u = result.uncertainty?.standardUncertaintyPaM3PerS ?? Number.NaN
    // three standard uncertainties, seeded
    expect(Math.abs(result.leakPaM3PerS)).toBeLessThan(3 * u)
    expect(u).toBeLessThan(1e-5)
  })

  it('takes a settling out and says so', () => {
    const result = released(traceOf((t) => 300 + 2 * Math.exp(-t / 60) - 0.001 * t))
    expect(result.settling).toBe('corrected')
    expect(result.leakPaM3PerS).toBeCloseTo(0.002, 9) // search ends near 1e-8 in the time constant
    expect('timeConstantS' in result && result.timeConstantS).toBeCloseTo(60, 5)
    expect(result.uncompensatedPaM3PerS).toBeGreaterThan(2 * result.leakPaM3PerS)
  })

  it('gives no leak while the pressure is still settling, but says how long to hold', () => {
    const result = pressureTrace(traceOf((t) => 300 + 2 * Math.exp(-t / 300) - 0.001 * t))
    expect(Object.keys(result).sort()).toEqual([
      'advice',
      'neededWindowS',
      'pressureDropKPa',
      'settling',
      'timeConstantS',
      'windowS',
    ])
    if (result.settling !== 'unsettled') throw new Error('a number was released')
    expect(result.advice).toBe('extend-the-hold')
    expect(result.neededWindowS).toBeCloseTo(900, 3) // three time constants of 300 s
    expect(result.windowS).toBe(600)
  })

  it('states an uncertainty that covers the truth as often as promised', () => {
    let covered = 0
    for (let run = 0; run < 150; run++) {
      const noise = seededNormal(300 + run)
      const result = released(traceOf((t) => 300 - 0.001 * t + 0.01 * noise()))
      const expanded = result.uncertainty?.expandedUncertaintyPaM3PerS ?? Number.NaN
      if (Math.abs(result.leakPaM3PerS - 0.002) <= expanded) covered++
    }
    // 95 % promised; the standard error of a rate from 150 is 1.8 %: three below.
    expect(covered / 150).toBeGreaterThan(0.895)
    expect(covered / 150).toBeLessThan(1)
  })

  it('gets finer with more noise-free volume knowledge, not with a worse one', () => {
    const noise = seededNormal(17)
    const input = traceOf((t) => 300 - 0.001 * t + 0.01 * noise())
    const alone = released(input)
    const more = released(input, { volumeRelative: 0.05, timeS: 1 })
    expect(more.uncertainty?.budget.map((line) => line.source)).toEqual([
      'slope',
      'volume',
      'elapsed-time',
    ])
    expect(more.uncertainty?.standardUncertaintyPaM3PerS).toBeGreaterThan(
      alone.uncertainty?.standardUncertaintyPaM3PerS ?? Number.NaN,
    )
    expect(more.smallestDetectablePaM3PerS).toBe(alone.smallestDetectablePaM3PerS)
    // 3.29 of the slope's share.
    expect(alone.smallestDetectablePaM3PerS).toBeCloseTo(
      3.29 * (alone.uncertainty?.standardUncertaintyPaM3PerS ?? Number.NaN),
      12,
    )
  })

  it('does not call a coarse display perfect', () => {
    const fine = released(traceOf((t) => 300 - 0.001 * t))
    const coarse = released(traceOf((t) => Math.round((300 - 0.001 * t) * 5) / 5))
    const u = (result: typeof fine) => result.uncertainty?.standardUncertaintyPaM3PerS ?? Number.NaN
    expect(u(coarse)).toBeGreaterThan(10 * u(fine))
    expect(Math.abs(coarse.leakPaM3PerS - 0.002)).toBeLessThan(3 * u(coarse))
  })

  it.each([
    ['pressure', (t: number) => (t === 600 ? 299.9 : 300), () => 20, 0.1],
    // 0.1 K moves 300 kPa by 300 / 293.15 x 0.1 kPa.
    ['temperature', () => 300, (t: number) => (t === 600 ? 19.9 : 20), 30 / 293.15],
  ] as const)(
    'never assumes less than the rounding of a %s display that moved once',
    (_, p, c, stepKPa) => {
      const { uncertainty } = released(traceOf(p, c))
      const mean = 300
      const squares = timesS.reduce((sum, t) => sum + (t - mean) ** 2, 0)
      // V x step / sqrt 12 / sqrt Sxx; the step of p Tref / T is known to 0.1 %.
      const least = (2 * stepKPa) / Math.sqrt(12) / Math.sqrt(squares)
      expect(uncertainty?.standardUncertaintyPaM3PerS).toBeGreaterThan(0.999 * least)
    },
  )

  it('knows no uncertainty when the display never moved, unless the gauge is known', () => {
    const input = traceOf(() => 300)
    const blind = released(input)
    expect(blind.leakPaM3PerS).toBeCloseTo(0, 20)
    expect(Object.keys(blind)).not.toContain('uncertainty')
    expect(Object.keys(blind)).not.toContain('smallestDetectablePaM3PerS')
    const known = released(input, { pressurePa: 30 })
    // V sqrt 2 x 30 Pa / 600 s x 3.29.
    expect(known.smallestDetectablePaM3PerS).toBeCloseTo((3.29 * 0.002 * Math.SQRT2 * 30) / 600, 12)
  })

  it('knows a display that never moved by its step, as from two readings', () => {
    const still = released(
      traceOf(() => 300),
      { resolutionPa: 100 },
    )
    expect(still.uncertainty?.budget.map((line) => line.source)).toEqual(['slope'])
    // Own derivation: V sqrt 2 (d / sqrt 12) / window of two readings, 2 L, 100 Pa, 600 s.
    const twoReadings = (0.002 * Math.SQRT2 * 100) / Math.sqrt(12) / 600
    expect(still.uncertainty?.standardUncertaintyPaM3PerS).toBeCloseTo(twoReadings, 15) // rounding
    expect(still.uncertainty?.coverageFactor).toBe(2)
    // No leak that stays hidden within the step is larger than V d / window: 2.45 u.
    expect(still.uncertainty?.expandedUncertaintyPaM3PerS).toBeGreaterThan(
      (0.8 * 0.002 * 100) / 600,
    )
  })

  it('never assumes less noise than the step that is stated', () => {
    const u = (resolutionPa?: number) =>
      released(
        traceOf((t) => 300 - 0.001 * t),
        { resolutionPa },
      ).uncertainty?.standardUncertaintyPaM3PerS ?? Number.NaN
    const squares = timesS.reduce((sum, t) => sum + (t - 300) ** 2, 0)
    // V d / sqrt 12 / sqrt Sxx for 0.1 kPa; autocorrelation can only add to it.
    expect(u(100)).toBeGreaterThan((0.9999 * 2 * 0.1) / Math.sqrt(12 * squares))
    expect(u(100)).toBeGreaterThan(5 * u())
    // Finer than what the readings show by themselves, the statement changes nothing.
    expect(u(0.001)).toBe(u())
  })

  it('scales with the volume and turns its sign for a vacuum that fills', () => {
    const input = traceOf((t) => 25 + 0.01 * t)
    const result = released(input)
    expect(result.leakPaM3PerS).toBeLessThan(0)
    // rounding
    expect(released({ ...input, volumeL: 4 }).leakPaM3PerS).toBeCloseTo(2 * result.leakPaM3PerS, 14)
  })

  it.each([
    { ...traceOf(() => 300), volumeL: 0 },
    { ...traceOf(() => 300), referenceTemperatureC: -280 },
    { ...traceOf(() => 300), trace: [] },
  ])('refuses case %#', (input) => {
    expect(() => pressureTrace(input)).toThrow(RangeError)
  })

  it.each([{ resolutionPa: -1 }, { resolutionK: Number.NaN }])('refuses steps of %o', (steps) => {
    expect(() =>
      pressureTrace(
        traceOf(() => 300),
        steps,
      ),
    ).toThrow(/^pressureTrace requires /)
  })
})
