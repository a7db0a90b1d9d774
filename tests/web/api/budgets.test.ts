import { describe, expect, test } from 'vitest'
import type { Uncertainty } from '../../../src/domain/uncertainty.ts'
import { buildShop } from '../../support/build-shop.ts'
import { testApp } from '../../support/test-app.ts'

type Json = Record<string, unknown>

function setUp() {
  const shop = buildShop()
  const web = testApp(shop.store)
  const order = `/api/v1/work-orders/${shop.workOrder.number}`
  const post = async (path: string, body: unknown) => {
    const response = await web.postJson(`${order}/${path}`, body, 'tess')
    return { status: response.status, body: (await response.json()) as Json }
  }
  const faults = async (path: string, body: unknown) =>
    ((await post(path, body)).body.errors as { field: string }[] | undefined)?.map(
      (one) => one.field,
    )
  const reading = (more: Json = {}) => ({
    faceId: shop.seal.components.find((one) => one.kind === 'rotating-face')!.id,
    condition: 'as-left',
    lampInstrumentId: shop.lamp.id,
    opticalFlatInstrumentId: shop.flat.id,
    pattern: 'convex',
    readings: [{ directionDeg: 0, bands: 2 }],
    ...more,
  })
  const leakTest = (more: Json = {}) => ({
    volumeL: 5,
    start: { timeS: 0, pressureKPaAbs: 271.325, temperatureC: 21 },
    end: { timeS: 600, pressureKPaAbs: 268.1, temperatureC: 20.5 },
    gaugeInstrumentId: shop.gauge.id,
    ...more,
  })
  const shown = async () => (await (await web.get(order, 'mo')).json()) as Json
  return { shop, post, faults, reading, leakTest, shown }
}

/** The worked budget of two helium bands: 17.0, 25.4, 14.4, 5.2 and 10 nm. */
const worked = {
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

describe('a flatness reading of a program', () => {
  test('takes the measuring fields of the calculator and keeps budget and input', async () => {
    const { post, reading, shown } = setUp()
    const answer = await post('flatness-readings', reading(worked))
    expect(answer.status, JSON.stringify(answer.body)).toBe(201)
    const uncertainty = answer.body.uncertainty as Uncertainty
    // u = 35.6 nm, printed to 0.1 nm.
    expect(uncertainty.standardUncertainty * 1000).toBeCloseTo(35.6, 1)
    expect(answer.body.budgetInput).toMatchObject({ readingHalfWidthBands: 0.1 })
    const [kept] = (await shown()).flatnessReadings as Json[]
    expect(kept?.uncertainty).toEqual(uncertainty)
    expect(kept?.budgetInput).toEqual(answer.body.budgetInput)
    expect(kept?.standardUncertaintyUm).toBe(uncertainty.standardUncertainty)
  })

  test('has as much uncertainty as the calculator says of the same fields', async () => {
    const { shop, post, reading } = setUp()
    const asked = { lamp: 'helium', pattern: 'convex', readings: reading().readings, ...worked }
    const web = testApp(shop.store)
    const answer = await web.postJson('/api/v1/calculate/flatness/counted', asked, 'tess')
    const calculated = (await answer.json()) as { standardUncertaintyUm: number }
    const recorded = await post('flatness-readings', reading(worked))
    // But for the lamp, which the record knows to 0.05 nm: a part in a million.
    expect(recorded.body.standardUncertaintyUm).toBeCloseTo(calculated.standardUncertaintyUm, 7)
  })

  test('refuses what is wrong in them by name, and unknown fields', async () => {
    const { faults, reading } = setUp()
    const at = 'flatness-readings'
    expect(await faults(at, reading({ readingHalfWidthBands: -1 }))).toEqual([
      'readingHalfWidthBands',
    ])
    expect(await faults(at, reading({ thermal: { deltaK: 1 } }))).toEqual([
      'thermal.expansionPerK',
      'thermal.diameterMm',
      'thermal.thicknessMm',
    ])
    expect(await faults(at, reading({ repeatability: { count: 3, sigma: 1 } }))).toEqual([
      'repeatability.sigma',
      'repeatability.standardDeviationBands',
    ])
    expect(await faults(at, reading({ readingHalfWidthOther: 0.2 }))).toEqual([
      'readingHalfWidthOther',
    ])
  })
})

describe('a static test of a program', () => {
  const uncertainties = { volumeRelative: 0.02, pressurePa: 30, temperatureK: 0.05, timeS: 0 }

  test('takes the uncertainties of the calculator and keeps them with their budgets', async () => {
    const { post, leakTest, shown } = setUp()
    const answer = await post('static-tests', leakTest({ uncertainties }))
    expect(answer.status, JSON.stringify(answer.body)).toBe(201)
    expect(answer.body.budgetInput).toEqual(uncertainties)
    const leak = answer.body.leakUncertainty as Uncertainty
    expect(leak.standardUncertainty).toBeCloseTo(7.917e-4, 7) // four digits, by hand
    const [kept] = (await shown()).staticTests as Json[]
    expect(kept?.leakUncertainty).toEqual(leak)
    expect(kept?.dropUncertainty).toEqual(answer.body.dropUncertainty)
  })

  test('takes the steps of the displays too, and is as uncertain as the calculator says', async () => {
    const { shop, post, leakTest } = setUp()
    const stepped = { ...uncertainties, resolutionPa: 100, resolutionK: 0.1 }
    const { gaugeInstrumentId: _, ...asked } = leakTest({ uncertainties: stepped })
    const web = testApp(shop.store)
    const calculated = (await (
      await web.postJson('/api/v1/calculate/leak/pressure-change', asked, 'tess')
    ).json()) as { standardUncertaintyPaM3PerS: number }
    const answer = await post('static-tests', leakTest({ uncertainties: stepped }))
    expect(answer.body.budgetInput).toEqual(stepped)
    const leak = answer.body.leakUncertainty as Uncertainty
    expect(leak.budget.map((line) => line.source)).toContain('start-pressure-resolution')
    // The same lines, added up in the same order.
    expect(leak.standardUncertainty).toBe(calculated.standardUncertaintyPaM3PerS)
    expect(leak.standardUncertainty).toBeGreaterThan(7.917e-4)
  })

  test('refuses what is wrong in them by name, and traces, which are not kept yet', async () => {
    const { faults, leakTest } = setUp()
    const at = 'static-tests'
    expect(await faults(at, leakTest({ uncertainties: { volumeRelative: 2 } }))).toEqual([
      'uncertainties.volumeRelative',
    ])
    expect(await faults(at, leakTest({ uncertainties: { volume: 0.1 } }))).toEqual([
      'uncertainties.volume',
    ])
    expect(await faults(at, leakTest({ trace: [] }))).toEqual(['trace'])
    expect(await faults(at, leakTest({ volumeInstrumentId: 9999 }))).toEqual(['volumeInstrumentId'])
  })
})
