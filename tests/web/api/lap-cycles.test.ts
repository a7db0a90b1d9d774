import { describe, expect, test } from 'vitest'
import { buildShop } from '../../support/build-shop.ts'
import { workAndHandOver, workAndRelease } from '../../support/shop-steps.ts'
import { testApp } from '../../support/test-app.ts'

type Json = Record<string, unknown>

function setUp() {
  const shop = buildShop()
  const web = testApp(shop.store)
  const order = `/api/v1/work-orders/${shop.workOrder.number}`
  const post = async (body: unknown, as = 'tess', key?: string) => {
    const headers = key === undefined ? {} : { 'idempotency-key': key }
    const response = await web.postJson(`${order}/lap-cycles`, body, as, headers)
    return { status: response.status, body: (await response.json()) as Json }
  }
  const faults = async (body: unknown) =>
    ((await post(body)).body.errors as { field: string }[] | undefined)?.map((one) => one.field)
  const lap = (more: Json = {}) => ({
    componentId: shop.seal.components.find((one) => one.kind === 'rotating-face')!.id,
    plate: 'Plate 2',
    ...more,
  })
  const shown = async (as = 'mo') => (await (await web.get(order, as)).json()) as Json
  return { shop, web, order, post, faults, lap, shown }
}

describe('a lap cycle of a program', () => {
  test('is recorded, moves the order, and stands in the answer of its order', async () => {
    const { post, lap, shown } = setUp()
    const answer = await post(
      lap({ heightBeforeMm: 2.91, stockUm: 12, abrasive: 'diamond-charged' }),
    )
    expect(answer.status, JSON.stringify(answer.body)).toBe(201)
    expect(answer.body).toMatchObject({
      stockUm: 12,
      heightAfterMm: null,
      isNewRing: false,
      typed: { heightBeforeMm: '2.91', stockUm: '12' },
    })
    const order = await shown()
    expect(order.lapCycles).toEqual([answer.body])
    expect(order.stage).toBe('lapping')
  })

  test('is recorded once for one key, and refused for the key with another body', async () => {
    const { post, lap, shown } = setUp()
    const first = await post(lap(), 'tess', 'rig-7')
    expect((await post(lap(), 'tess', 'rig-7')).body).toEqual(first.body)
    expect((await post(lap({ note: 'x' }), 'tess', 'rig-7')).status).toBe(409)
    expect((await shown()).lapCycles).toHaveLength(1)
  })

  test('is corrected by a later one, once, with a reason', async () => {
    const { post, faults, lap, shown } = setUp()
    const { id } = (await post(lap({ stockUm: 120 }))).body
    expect(await faults(lap({ replacesId: id }))).toEqual(['reason'])
    const correction = lap({ replacesId: id, reason: 'slip of the key', stockUm: 12 })
    expect((await post(correction)).status).toBe(201)
    expect((await post(correction)).status).toBe(409)
    const [wrong, right] = (await shown()).lapCycles as Json[]
    expect(wrong?.replacedById).toBe(right?.id)
  })

  test('is refused by the name of what is wrong', async () => {
    const { faults, lap } = setUp()
    expect(await faults({})).toEqual(['componentId', 'plate'])
    expect(await faults(lap({ componentId: 9999 }))).toEqual(['componentId'])
    expect(await faults(lap({ faceId: 1 }))).toEqual(['faceId'])
    expect(await faults(lap({ stockUm: -1 }))).toEqual(['stockUm'])
    expect(await faults(lap({ heightBeforeMm: 2, heightAfterMm: 3 }))).toEqual(['heightAfterMm'])
    expect(await faults(lap({ otherPlate: 'P' }))).toEqual(['otherPlate'])
    expect(await faults(lap({ stockUm: 0.02 }))).toEqual(['stockUm'])
    expect(await faults(lap({ stockUm: 0.02, confirmBeyondWindow: true }))).toBe(undefined)
  })

  test('is the technician’s, and closed once the order is handed over', async () => {
    const { shop, post, lap, shown } = setUp()
    for (const as of ['ian', 'mo', 'cora']) expect((await post(lap(), as)).status).toBe(403)
    workAndHandOver(shop)
    expect((await post(lap())).status).toBe(409)
    expect((await shown()).lapCycles).toEqual([])
  })

  test('stays within the workshop: a customer reads the heights on the certificate', async () => {
    const { shop, web, order, post, lap, shown } = setUp()
    await post(lap({ heightAfterMm: 2.9 }))
    const { certificate } = workAndRelease(shop)
    expect(await shown('cora')).not.toHaveProperty('lapCycles')
    const shownCertificate = await web.get(`/api/v1/certificates/${certificate.number}`, 'cora')
    const { record } = (await shownCertificate.json()) as { record: Json }
    expect(record.lapping).toMatchObject([{ face: 'rotating-face', heightMm: { text: '2.900' } }])
    expect((await web.get(order, 'olga')).status).toBe(404)
  })

  test('is described', async () => {
    const { web } = setUp()
    const description = (await (await web.get('/api/v1/openapi.json')).json()) as {
      paths: Json
      components: { schemas: Record<string, { properties: Json; required: string[] }> }
    }
    expect(description.paths).toHaveProperty('/api/v1/work-orders/{number}/lap-cycles')
    const { properties, required } = description.components.schemas.apiCreateLapCycleRequest!
    expect(Object.keys(properties)).toContain('plannedStockUm')
    expect(required).toEqual(['componentId', 'plate'])
  })
})
