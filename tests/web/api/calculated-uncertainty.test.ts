import { describe, expect, test } from 'vitest'
import { testApp } from '../../support/test-app.ts'

const flatness = '/api/v1/calculate/flatness/counted'
const leak = '/api/v1/calculate/leak/pressure-change'
const { postJson } = testApp()

type Json = Record<string, unknown>
type Line = { source: string; contribution: number; degreesOfFreedom: number | null }

async function answer(path: string, body: Json): Promise<Json & { budget: Line[] }> {
  const response = await postJson(path, body, 'tess')
  expect(response.status, JSON.stringify(body)).toBe(200)
  return (await response.json()) as Json & { budget: Line[] }
}

async function refused(path: string, body: Json): Promise<string[]> {
  const response = await postJson(path, body, 'tess')
  expect(response.status, JSON.stringify(body)).toBe(422)
  const { errors } = (await response.json()) as { errors: { field: string }[] }
  return errors.map((error) => error.field)
}

/** The worked budget of two helium bands: 17.0, 25.4, 14.4, 5.2 and 10 nm, u 35.6 nm. */
const worked = {
  lamp: 'helium',
  pattern: 'convex',
  readings: [{ directionDeg: 0, bands: 2 }],
  readingHalfWidthBands: 0.1,
  repeatability: { standardDeviationBands: 0.15, count: 3 },
  opticalFlatToleranceUm: 0.025,
  viewingAngleLimitDeg: 10,
  thermal: {
    deltaK: (0.01 * Math.sqrt(3)) / 0.18,
    expansionPerK: 4e-6,
    diameterMm: 60,
    thicknessMm: 10,
  },
}

describe('the uncertainty of counted bands', () => {
  test('is the worked 35.6 nm and 71.3 nm where the scatter was known beforehand', async () => {
    const got = await answer(flatness, worked)
    expect(got.standardUncertaintyUm as number).toBeCloseTo(0.0356, 4) // printed digits
    expect(got.expandedUncertaintyUm as number).toBeCloseTo(0.0713, 4) // printed digits
    expect([got.coverageFactor, got.effectiveDegreesOfFreedom]).toEqual([2, null])
    expect(got.budget.map((line) => line.source)).toEqual([
      'reading',
      'repeatability',
      'optical-flat',
      'viewing-angle',
      'thermal-bow',
    ])
  })

  test('takes Student’s t where the scatter was found from the counts themselves', async () => {
    const repeatability = { ...worked.repeatability, degreesOfFreedom: 2 }
    const got = await answer(flatness, { ...worked, repeatability })
    expect(got.standardUncertaintyUm as number).toBeCloseTo(0.0356, 4) // printed digits
    // (35.64 / 25.44)^4 x 2 = 7.70, between 2.36 for 7 and 2.31 for 8: JCGM 100:2008, table G.2.
    expect(got.effectiveDegreesOfFreedom as number).toBeCloseTo(7.7, 1)
    expect(got.coverageFactor as number).toBeGreaterThan(2.31)
    expect(got.coverageFactor as number).toBeLessThan(2.36)
  })

  test('has lines for the lamp and the flat where they are stated', async () => {
    const flatThermal = { deltaK: 0.5, expansionPerK: 3.3e-6, diameterMm: 100, thicknessMm: 20 }
    const got = await answer(flatness, { ...worked, flatThermal, wavelengthHalfWidthNm: 5 })
    const of = (source: string) => got.budget.find((line) => line.source === source)?.contribution
    expect(of('thermal-bow-of-flat')).toBeCloseTo(0.0595, 4) // 0.20625 x 0.5 / sqrt 3 by hand
    expect(of('wavelength')).toBeCloseTo(0.00289, 5) // 0.58756 x 5 / 587.56 / sqrt 3 by hand
  })

  test('has the wavelength’s line also for a wavelength in place of a lamp', async () => {
    const { lamp: _, ...bare } = worked
    const got = await answer(flatness, { ...bare, wavelengthNm: 525, wavelengthHalfWidthNm: 5 })
    const line = got.budget.find((one) => one.source === 'wavelength')
    expect(line?.contribution).toBeCloseTo(0.00289, 5) // 0.525 x 5 / 525 / sqrt 3 by hand
  })

  test('refuses what is wrong by its name, and a single count of unknown scatter', async () => {
    const repeated = (more: Json) => ({
      ...worked,
      repeatability: { ...worked.repeatability, ...more },
    })
    expect(await refused(flatness, repeated({ degreesOfFreedom: 0 }))).toEqual([
      'repeatability.degreesOfFreedom',
    ])
    expect(await refused(flatness, repeated({ count: 1 }))).toEqual(['repeatability.count'])
    await answer(flatness, repeated({ count: 1, degreesOfFreedom: 9 }))
    expect(await refused(flatness, { ...worked, flatThermal: { deltaK: 1 } })).toEqual([
      'flatThermal.expansionPerK',
      'flatThermal.diameterMm',
      'flatThermal.thicknessMm',
    ])
    for (const wavelengthHalfWidthNm of [-1, 101]) {
      expect(await refused(flatness, { ...worked, wavelengthHalfWidthNm })).toEqual([
        'wavelengthHalfWidthNm',
      ])
    }
  })
})

describe('the uncertainty of a pressure change', () => {
  const still = { timeS: 0, pressureKPaAbs: 600, temperatureC: 20 }
  const ends = { volumeL: 0.8, start: still, end: { ...still, timeS: 600 } }

  test('of two readings sees no less than their step lets it: 1.7908e-4 Pa·m³/s', async () => {
    const got = await answer(leak, { ...ends, uncertainties: { resolutionPa: 100 } })
    // Own derivation: 3.29 x V sqrt 2 x (d / sqrt 12) / t, 0.8 L, 100 Pa, 600 s.
    expect((got.smallestDetectablePaM3PerS as number) / 1.7908491675e-4).toBeCloseTo(1, 9)
    expect(got.budget.map((line) => line.source)).toEqual([
      'start-pressure-resolution',
      'end-pressure-resolution',
    ])
  })

  test('takes the step of a thermometer too, and of a trace that stood still', async () => {
    const both = await answer(leak, { ...ends, uncertainties: { resolutionK: 0.1 } })
    expect(both.budget).toHaveLength(2)
    const trace = Array.from({ length: 20 }, (_, i) => ({ timeS: i * 10, pressureKPaAbs: 300 }))
    const blind = await answer(leak, { volumeL: 2, trace })
    expect(blind).not.toHaveProperty('standardUncertaintyPaM3PerS')
    const known = await answer(leak, { volumeL: 2, trace, uncertainties: { resolutionPa: 100 } })
    // As two readings 190 s apart: 0.002 x sqrt 2 x 100 / sqrt 12 / 190.
    expect(known.standardUncertaintyPaM3PerS as number).toBeCloseTo(4.2973e-4, 7)
  })

  test('refuses steps below nought by name', async () => {
    const uncertainties = { resolutionPa: -1, resolutionK: -1 }
    expect(await refused(leak, { ...ends, uncertainties })).toEqual([
      'uncertainties.resolutionPa',
      'uncertainties.resolutionK',
    ])
  })
})
