import { describe, expect, test } from 'vitest'
import { buildShop } from '../../support/build-shop.ts'
import { addMeasuringInstruments } from '../../support/measuring-instruments.ts'
import { workAndHandOver, workAndRelease } from '../../support/shop-steps.ts'
import { testApp } from '../../support/test-app.ts'

type Json = Record<string, unknown>

function setUp() {
  const shop = buildShop()
  const bench = addMeasuringInstruments(shop)
  const web = testApp(shop.store)
  const order = `/api/v1/work-orders/${shop.workOrder.number}`
  const post = async (body: unknown, as = 'tess', key?: string) => {
    const headers = key === undefined ? {} : { 'idempotency-key': key }
    const response = await web.postJson(`${order}/measured-values`, body, as, headers)
    return { status: response.status, body: (await response.json()) as Json }
  }
  const faults = async (body: unknown) =>
    ((await post(body)).body.errors as { field: string }[] | undefined)?.map((one) => one.field)
  const height = (more: Json = {}) => ({
    characteristic: 'face-height',
    componentId: shop.seal.components.find((one) => one.kind === 'rotating-face')!.id,
    condition: 'as-left',
    instrumentId: bench.micrometer.id,
    unit: 'mm',
    readings: [{ value: 3.171 }, { value: 3.173 }, { value: 3.172 }],
    ...more,
  })
  const runOut = (more: Json = {}) => ({
    characteristic: 'shaft-run-out',
    condition: 'as-found',
    instrumentId: bench.dial.id,
    unit: 'in',
    readings: [{ value: '0.0015' }],
    ...more,
  })
  const shown = async (as = 'mo') => (await (await web.get(order, as)).json()) as Json
  return { shop, bench, web, order, post, faults, height, runOut, shown }
}

describe('a measured value of a program', () => {
  test('is recorded with its budget, and stands in the answer of its order', async () => {
    const { post, height, shown } = setUp()
    const answer = await post(height({ temperatureHalfWidthK: 2 }))
    expect(answer.status, JSON.stringify(answer.body)).toBe(201)
    expect(answer.body.valueUm).toBeCloseTo(3172, 9) // rounding of doubles
    expect(answer.body.method).toBe('height/figure 2')
    expect(answer.body.readings).toMatchObject([
      { typed: '3.171' },
      { typed: '3.173' },
      { typed: '3.172' },
    ])
    expect(answer.body.uncertainty).toMatchObject({ coverageFactor: expect.any(Number) })
    const order = await shown()
    expect(order.measuredValues).toEqual([answer.body])
    expect(order.stage).toBe('lapping')
  })

  test('of a finish keeps how it was traced, and stands in the order of reading and matting', async () => {
    const { web, order, post, height, shown, bench, faults } = setUp()
    const { componentId } = height()
    const finish = (more: Json = {}) => ({
      ...height({ characteristic: 'roughness', instrumentId: bench.profilometer.id }),
      unit: 'um',
      readings: [{ value: 0.1 }, { value: 0.12 }],
      cutOffMm: 0.25,
      evaluationLengthMm: 1.25,
      traceDirection: 'radial',
      tipRadiusUm: 2,
      faceState: 'matted',
      ...more,
    })
    const cycle = { componentId, purpose: 'matt', plate: 'Glass plate', abrasive: 'sheet' }
    const lapped = await web.postJson(`${order}/lap-cycles`, cycle, 'tess')
    expect(lapped.status, await lapped.text()).toBe(201)
    const { status, body } = await post(finish())
    expect(status, JSON.stringify(body)).toBe(201)
    expect(body.budgetInput).toMatchObject({
      evaluationLengthMm: 1.25,
      traceDirection: 'radial',
      tipRadiusUm: 2,
      faceState: 'matted',
    })
    expect((await shown()).finishOrders).toMatchObject([
      { componentId, flatness: null, finish: { state: 'matted', isSinceMatting: true } },
    ])
    expect(await faults(finish({ evaluationLengthMm: 0.2 }))).toEqual(['evaluationLengthMm'])
    expect(await faults(finish({ faceState: 'shiny' }))).toEqual(['faceState'])
  })

  test('keeps the text as typed, in the unit it was read in', async () => {
    const { post, runOut } = setUp()
    const { body } = await post(runOut())
    expect(body).toMatchObject({ unit: 'in', readings: [{ typed: '0.0015' }] })
    expect(body.valueUm).toBeCloseTo(38.1, 10) // 1 in = 25.4 mm exactly
  })

  test('is recorded once for one key, and refused for the key with another body', async () => {
    const { post, runOut, shown } = setUp()
    const first = await post(runOut(), 'tess', 'rig-7')
    expect((await post(runOut(), 'tess', 'rig-7')).body).toEqual(first.body)
    expect((await post(runOut({ note: 'x' }), 'tess', 'rig-7')).status).toBe(409)
    expect((await shown()).measuredValues).toHaveLength(1)
  })

  test('is corrected by a later one, once, with a reason', async () => {
    const { post, faults, runOut, shown } = setUp()
    const { id } = (await post(runOut())).body
    expect(await faults(runOut({ replacesId: id }))).toEqual(['reason'])
    const correction = runOut({ replacesId: id, reason: 'needle turned twice' })
    expect((await post(correction)).status).toBe(201)
    expect((await post(correction)).status).toBe(409)
    const [wrong, right] = (await shown()).measuredValues as Json[]
    expect(wrong?.replacedById).toBe(right?.id)
  })

  test('is refused by the name of what is wrong', async () => {
    const { bench, faults, height, runOut } = setUp()
    expect(await faults({})).toEqual([
      'characteristic',
      'condition',
      'instrumentId',
      'unit',
      'readings',
    ])
    expect(await faults(height({ componentId: 9999 }))).toEqual(['componentId'])
    expect(await faults(height({ readings: [{ value: 3.1 }, { value: 'x' }] }))).toEqual([
      'readings[1].value',
    ])
    expect(await faults(height({ faceId: 1 }))).toEqual(['faceId'])
    expect(await faults(runOut({ componentId: 1 }))).toEqual(['componentId'])
    expect(await faults(runOut({ instrumentId: bench.profilometer.id }))).toEqual(['instrumentId'])
    expect(await faults(runOut({ readings: [{ value: 1 }] }))).toEqual(['readings[0].value'])
    const confirmed = (value: number) => ({ readings: [{ value }], confirmBeyondWindow: true })
    // The dial shows 10 mm at most: 0.39 in are 9.906 mm, 0.4 in are 10.16 mm.
    expect(await faults(runOut(confirmed(0.39)))).toBe(undefined)
    expect(await faults(runOut(confirmed(0.4)))).toEqual(['instrumentId'])
  })

  test('is the technician’s, and closed once the order is handed over', async () => {
    const { shop, post, runOut, shown } = setUp()
    for (const as of ['ian', 'mo', 'cora']) expect((await post(runOut(), as)).status).toBe(403)
    workAndHandOver(shop)
    expect((await post(runOut())).status).toBe(409)
    expect((await shown()).measuredValues).toEqual([])
  })

  test('is the customer’s to see once released, and no stranger’s', async () => {
    const { shop, web, order, post, runOut, shown } = setUp()
    await post(runOut())
    expect(await shown('cora')).not.toHaveProperty('measuredValues')
    workAndRelease(shop)
    expect((await shown('cora')).measuredValues).toHaveLength(1)
    expect((await web.get(order, 'olga')).status).toBe(404)
  })

  test('is described', async () => {
    const { web } = setUp()
    const description = (await (await web.get('/api/v1/openapi.json')).json()) as {
      paths: Json
      components: { schemas: Record<string, { properties: Json }> }
    }
    expect(description.paths).toHaveProperty('/api/v1/work-orders/{number}/measured-values')
    const { properties } = description.components.schemas.apiCreateMeasuredValueRequest!
    expect(Object.keys(properties)).toContain('settingStandardUncertaintyUm')
  })
})
