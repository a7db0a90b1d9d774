import { describe, expect, test } from 'vitest'
import { buildShop } from '../../support/build-shop.ts'
import { workAndHandOver, workAndRelease } from '../../support/shop-steps.ts'
import { testApp } from '../../support/test-app.ts'

type Json = Record<string, unknown>

function setUp() {
  const shop = buildShop()
  const web = testApp(shop.store)
  const order = `/api/v1/work-orders/${shop.workOrder.number}`
  const post = async (path: string, body: unknown, as = 'tess', key?: string) => {
    const headers = key === undefined ? {} : { 'idempotency-key': key }
    const response = await web.postJson(path, body, as, headers)
    return { status: response.status, body: (await response.json()) as Json, response }
  }
  const face = (kind: string) => shop.seal.components.find((one) => one.kind === kind)!.id
  const reading = (kind = 'rotating-face', more: Json = {}) => ({
    faceId: face(kind),
    condition: 'as-left',
    lampInstrumentId: shop.lamp.id,
    opticalFlatInstrumentId: shop.flat.id,
    pattern: 'convex',
    readings: [
      { directionDeg: 0, bands: 1.5 },
      { directionDeg: 90, bands: 1.25 },
    ],
    viewingAngleDeg: 0,
    ...more,
  })
  const leakTest = (more: Json = {}) => ({
    volumeL: 2,
    start: { timeS: 0, pressureKPaAbs: 271.325, temperatureC: 20 },
    end: { timeS: 300, pressureKPaAbs: 271.025, temperatureC: 20 },
    gaugeInstrumentId: shop.gauge.id,
    ...more,
  })
  const count = (table: string) =>
    (shop.store.raw.prepare(`SELECT count(*) AS n FROM ${table}`).get() as { n: number }).n
  return { shop, web, order, post, reading, leakTest, count }
}

describe('records of the machine interface', () => {
  test('take the whole job from customer to hand-over', async () => {
    const { shop, post, reading, leakTest } = setUp()
    const customer = await post('/api/v1/customers', { name: 'Invented Brewery' }, 'mo')
    expect(customer.status).toBe(201)
    const seal = {
      serial: 'B-1',
      arrangement: 'single',
      shaftDiameterMm: 45,
      components: [
        { kind: 'rotating-face', material: 'carbon-graphite' },
        { kind: 'stationary-seat', material: 'alumina' },
      ],
    }
    const made = await post('/api/v1/work-orders', {
      customerId: customer.body.id,
      seal,
      equipment: { tag: 'B-07' },
      decontamination: 'not-needed',
      sealedPressureKPa: 300,
    })
    expect(made.status, JSON.stringify(made.body)).toBe(201)
    expect(made.body.number).toMatch(/^W-2026-\d{4}$/)
    const order = `/api/v1/work-orders/${made.body.number}`
    const components = (made.body.seal as { components: { id: number; kind: string }[] }).components
    for (const { id } of components) {
      expect(
        (await post(`${order}/flatness-readings`, reading('rotating-face', { faceId: id }))).status,
      ).toBe(201)
    }
    const early = await post(`${order}/hand-over`, {})
    expect(early.status).toBe(409)
    expect(early.body.missing).toEqual([{ kind: 'static-test' }])
    const leak = await post(`${order}/static-tests`, leakTest())
    expect(leak.status, JSON.stringify(leak.body)).toBe(201)
    expect(leak.body.leakPaM3PerS).toBeCloseTo(0.002, 9) // 2 L · 300 Pa / 300 s
    expect((await post(`${order}/hand-over`, { note: 'dry' })).status).toBe(201)
    const shown = (await (await testApp(shop.store).get(order, 'mo')).json()) as Json
    expect(shown.stage).toBe('handed-over')
    expect(shown.missing).toEqual([])
  })

  test('take a test volume by expansion, and where it leaks', async () => {
    const { order, post, leakTest } = setUp()
    const faults = async (path: string, body: unknown) =>
      ((await post(path, body)).body.errors as { field: string }[]).map((one) => one.field)
    const path = `${order}/static-tests`
    // Of the facts: 300, 180 and 101.325 kPa make 1.525 of the known volume.
    const expansion = {
      knownVolumeL: 1,
      filledKPaAbs: 300,
      beforeKPaAbs: 101.325,
      joinedKPaAbs: 180,
    }
    const made = await post(
      path,
      leakTest({ volumeL: undefined, expansion, leakPlace: 'at-housing' }),
    )
    expect(made.status, JSON.stringify(made.body)).toBe(201)
    expect(made.body.leakPaM3PerS).toBeCloseTo(0.001525, 6) // 1.525 L · 300 Pa / 300 s
    expect(await faults(path, leakTest({ expansion }))).toEqual(['volumeL'])
    const closed = { ...expansion, joinedKPaAbs: 300 }
    expect(await faults(path, leakTest({ volumeL: undefined, expansion: closed }))).toEqual([
      'expansion.joinedKPaAbs',
    ])
    expect(await faults(path, leakTest({ volumeL: undefined }))).toEqual(['volumeL'])
    expect(await faults(path, leakTest({ leakPlace: 'attic' }))).toEqual(['leakPlace'])
  })

  test('say what the method of a reading sees, and keep why a face was not readable', async () => {
    const { order, post, reading } = setUp()
    const path = `${order}/flatness-readings`
    expect((await post(path, reading())).body.sees).toBe('taper')
    const unreadable = { pattern: 'unreadable', readings: undefined, unreadableCause: 'wet' }
    const made = await post(path, reading('rotating-face', unreadable))
    expect(made.status, JSON.stringify(made.body)).toBe(201)
    expect(made.body).toMatchObject({ flatnessUm: null, bands: null, unreadableCause: 'wet' })
    const wrong = { ...unreadable, unreadableCause: 'tired' }
    expect((await post(path, reading('rotating-face', wrong))).status).toBe(422)
  })

  test('answer the same for the same key and body, and refuse another body', async () => {
    const { order, post, reading, count } = setUp()
    const path = `${order}/flatness-readings`
    const first = await post(path, reading(), 'tess', 'rig-7 0001')
    const again = await post(path, reading(), 'tess', 'rig-7 0001')
    expect([first.status, again.status]).toEqual([201, 201])
    expect(again.body).toEqual(first.body)
    expect(again.response.headers.get('idempotency-replayed')).toBe('true')
    expect(count('flatness_reading')).toBe(1)
    const other = await post(path, reading('stationary-seat'), 'tess', 'rig-7 0001')
    expect(other.status).toBe(409)
    expect(count('flatness_reading')).toBe(1)
    // Another person's key of the same letters is another key.
    expect((await post(path, reading(), 'tom', 'rig-7 0001')).status).toBe(201)
    for (const key of [' ', 'x'.repeat(151)]) {
      expect((await post(path, reading(), 'tess', key)).status).toBe(422)
    }
  })

  test('keep nothing of a refused request, so that its key can be used again', async () => {
    const { order, post, reading, count } = setUp()
    const path = `${order}/flatness-readings`
    const faulty = await post(path, reading('rotating-face', { pattern: 'wavy' }), 'tess', 'k1')
    expect(faulty.status).toBe(422)
    expect((await post(path, reading(), 'tess', 'k1')).status).toBe(201)
    expect(count('flatness_reading')).toBe(1)
  })

  test('store a reading as typed and computed, and correct it by a new one with a reason', async () => {
    const { order, post, reading } = setUp()
    const path = `${order}/flatness-readings`
    const first = await post(
      path,
      reading('rotating-face', { readings: [{ directionDeg: 0, bands: '15,0' }] }),
    )
    expect(first.body.bands).toBe(15)
    expect((first.body.directions as { bandsTyped: string }[])[0]?.bandsTyped).toBe('15,0')
    const nameless = await post(path, reading('rotating-face', { replacesId: first.body.id }))
    expect(nameless.status).toBe(422)
    expect((nameless.body.errors as { field: string }[])[0]?.field).toBe('reason')
    const correction = reading('rotating-face', {
      replacesId: first.body.id,
      reason: 'Comma slipped',
    })
    expect((await post(path, correction)).status).toBe(201)
    expect((await post(path, correction)).status).toBe(409)
  })

  test('refuse a face, lamp or gauge that is not of this order or kind', async () => {
    const { shop, order, post, reading, leakTest } = setUp()
    const faults = async (path: string, body: unknown) =>
      ((await post(path, body)).body.errors as { field: string }[] | undefined)?.map(
        (one) => one.field,
      )
    const spring = shop.seal.components.find((one) => one.kind === 'spring')?.id ?? 9999
    const at = `${order}/flatness-readings`
    expect(await faults(at, reading('rotating-face', { faceId: spring }))).toEqual(['faceId'])
    expect(await faults(at, reading('rotating-face', { lampInstrumentId: shop.flat.id }))).toEqual([
      'lampInstrumentId',
    ])
    expect(await faults(at, reading('rotating-face', { lamp: 'sodium' }))).toEqual(['lamp'])
    expect(
      await faults(`${order}/static-tests`, leakTest({ gaugeInstrumentId: shop.lamp.id })),
    ).toEqual(['gaugeInstrumentId'])
    expect(await faults(`${order}/static-tests`, leakTest({ volumeL: 0 }))).toEqual(['volumeL'])
  })

  test('ask for confirmation beyond the window of the trade, and then take it', async () => {
    const { shop, post } = setUp()
    const body = { customerId: shop.customer.id, sealId: shop.seal.id, sealedPressureKPa: 50_000 }
    const asked = await post('/api/v1/work-orders', body)
    expect(asked.status).toBe(422)
    expect((asked.body.errors as { field: string }[])[0]?.field).toBe('sealedPressureKPa')
    const confirmed = await post('/api/v1/work-orders', { ...body, confirmBeyondWindow: true })
    expect(confirmed.status).toBe(201)
  })

  test('are closed once the order is handed over', async () => {
    const { shop, order, post, reading, leakTest, count } = setUp()
    workAndHandOver(shop)
    expect((await post(`${order}/flatness-readings`, reading())).status).toBe(409)
    expect((await post(`${order}/static-tests`, leakTest())).status).toBe(409)
    expect((await post(`${order}/hand-over`, {})).status).toBe(409)
    expect(count('flatness_reading')).toBe(2)
  })

  test('refuse a position beside a seal that has its own', async () => {
    const { shop, post, count } = setUp()
    const body = { customerId: shop.customer.id, sealId: shop.seal.id }
    for (const more of [{ equipmentId: 1 }, { equipment: { tag: 'B-08' } }]) {
      const answer = await post('/api/v1/work-orders', { ...body, ...more })
      expect(answer.status).toBe(422)
      expect(answer.body.errors).toMatchObject([{ field: Object.keys(more)[0] }])
    }
    expect(count('work_order')).toBe(1)
  })

  test('list by state, customer and text, in pages', async () => {
    const { shop, web, post } = setUp()
    const body = { customerId: shop.customer.id, sealId: shop.seal.id }
    for (let n = 0; n < 3; n++)
      await post('/api/v1/work-orders', { ...body, customerOrder: `PO ${n}` })
    const list = async (query: string, as = 'mo') =>
      (await (await web.get(`/api/v1/work-orders${query}`, as)).json()) as {
        items: { number: string }[]
        nextCursor: string | null
      }
    const first = await list('?limit=3')
    expect(first.items.length).toBe(3)
    const rest = await list(`?limit=3&cursor=${first.nextCursor}`)
    expect(rest.items.map((one) => one.number)).toEqual([shop.workOrder.number])
    expect(rest.nextCursor).toBeNull()
    expect((await list('?q=PO 1')).items.length).toBe(1)
    expect((await list('?state=released')).items).toEqual([])
    expect((await web.get('/api/v1/work-orders?state=lost', 'mo')).status).toBe(422)
    expect((await web.get('/api/v1/work-orders?colour=red', 'mo')).status).toBe(422)
    // A cursor that nobody was given must not look like the end of the list.
    for (const cursor of ['abc', '-1', '1e9', '99999999999999999999']) {
      expect((await web.get(`/api/v1/work-orders?cursor=${cursor}`, 'mo')).status).toBe(422)
    }
  })

  test('never let a customer or a technician do what their role may not', async () => {
    const { shop, web, order, post, reading } = setUp()
    expect((await post(`${order}/flatness-readings`, reading(), 'cora')).status).toBe(403)
    expect((await post('/api/v1/customers', { name: 'X' }, 'cora')).status).toBe(403)
    expect((await web.get(order, 'cora')).status).toBe(200)
    expect((await web.get(order, 'olga')).status).toBe(404)
    const strange = await post(
      '/api/v1/work-orders',
      { customerId: 2, sealId: shop.seal.id },
      'tess',
    )
    expect(strange.status).toBe(422)
  })
})

describe('a customer who asks for their order', () => {
  const inner = ['stageChanges', 'handOver', 'decisions', 'missing']

  test('sees no result before the release, and never what the shop says to itself', async () => {
    const { web, order, post, reading, leakTest } = setUp()
    await post(`${order}/flatness-readings`, reading('rotating-face', { note: 'chipped?' }))
    await post(`${order}/static-tests`, leakTest())
    const seen = (await (await web.get(order, 'cora')).json()) as Json
    expect(seen.number).toMatch(/^W-/)
    expect(seen.seal).toMatchObject({ serial: expect.any(String) })
    for (const name of [...inner, 'flatnessReadings', 'staticTests', 'concessions']) {
      expect(seen).not.toHaveProperty(name)
    }
    expect(JSON.stringify(seen)).not.toContain('chipped?')
    const staff = (await (await web.get(order, 'mo')).json()) as Json
    for (const name of inner) expect(staff).toHaveProperty(name)
  })

  test('sees the limits of the order, not who wrote and approved them, and why', async () => {
    const { web, order } = setUp()
    const steps = ['steps', 'writtenById', 'writtenByName']
    const { limitSet } = (await (await web.get(order, 'cora')).json()) as Json
    expect(limitSet).toMatchObject({ name: 'House', version: 1 })
    expect(limitSet).toHaveProperty('limits')
    for (const name of steps) expect(limitSet).not.toHaveProperty(name)
    const staff = (await (await web.get(order, 'mo')).json()) as Json
    for (const name of steps) expect(staff.limitSet).toHaveProperty(name)
  })

  test('sees the results once they are released', async () => {
    const shop = buildShop()
    workAndRelease(shop)
    const order = `/api/v1/work-orders/${shop.workOrder.number}`
    const seen = (await (await testApp(shop.store).get(order, 'cora')).json()) as Json
    expect(seen.flatnessReadings).toHaveLength(2)
    expect(seen.staticTests).toHaveLength(1)
    expect(seen.concessions).toEqual([])
    for (const name of inner) expect(seen).not.toHaveProperty(name)
  })
})

describe('the description', () => {
  test('has every route of the machine interface, and each reference in it leads somewhere', async () => {
    const { web } = setUp()
    const description = (await (await web.get('/api/v1/openapi.json')).json()) as {
      openapi: string
      paths: Record<string, Record<string, unknown>>
      components: { schemas: Record<string, unknown> }
    }
    expect(description.openapi).toMatch(/^3\.1\./)
    const described = Object.entries(description.paths).flatMap(([path, methods]) =>
      Object.keys(methods).map((method) => `${method.toUpperCase()} ${path}`),
    )
    const mounted = web.app.routes
      .filter((one) => one.path.startsWith('/api/') && one.method !== 'ALL')
      .map(
        (one) =>
          `${one.method} ${one.path.replace(':file{.+\\.pdf}', '{number}.pdf').replace(/:(\w+)/g, '{$1}')}`,
      )
    expect(described.sort()).toEqual([...new Set(mounted)].sort())
    const references = [...JSON.stringify(description).matchAll(/#\/components\/schemas\/(\w+)/g)]
    expect(references.length).toBeGreaterThan(20)
    for (const [, name] of references) expect(description.components.schemas).toHaveProperty(name!)
  })

  test('promises in its answers nothing that an answer lacks', async () => {
    const { web, order, post, reading, leakTest } = setUp()
    const { components } = (await (await web.get('/api/v1/openapi.json')).json()) as {
      components: { schemas: Record<string, { required?: string[] }> }
    }
    const promised = (name: string) => components.schemas[name]?.required ?? []
    const read = await post(`${order}/flatness-readings`, reading())
    const tested = await post(`${order}/static-tests`, leakTest())
    const shown = (await (await web.get(order, 'tess')).json()) as Json
    for (const [name, body] of [
      ['apiCreateFlatnessReadingAnswer', read.body],
      ['apiCreateStaticTestAnswer', tested.body],
      ['apiShowWorkOrderAnswer', shown],
    ] as const) {
      expect(promised(name).length, name).toBeGreaterThan(1)
      for (const field of promised(name)) expect(body, name).toHaveProperty(field)
    }
  })
})
