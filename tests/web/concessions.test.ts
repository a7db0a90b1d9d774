import { beforeEach, describe, expect, test, vi } from 'vitest'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { addHandOver } from '../../src/store/add-hand-over.ts'
import { addStaticTest } from '../../src/store/add-static-test.ts'
import { listCertificates } from '../../src/store/list-certificates.ts'
import { listConcessions } from '../../src/store/list-concessions.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { actorOf } from '../support/cast.ts'
import { decisionForm } from '../support/decision-form.ts'
import { anotherOrder, freshReading, freshTest, workAndHandOver } from '../support/shop-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

// A release draws its document, 0.2 s alone and ten times that on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

// Four helium bands are 1.175 µm, beyond the limit of 0.8814 µm.
const fourBands = [
  { directionDeg: 0, bands: 4, bandsTyped: '4' },
  { directionDeg: 90, bands: 1, bandsTyped: '1' },
]

let shop: Shop
let app: TestApp
/** The rotating face fails, everything else passes. */
let failing: number
beforeEach(() => {
  shop = buildShop()
  app = testApp(shop.store)
  failing = handOverFailing(shop)
})

function handOverFailing({ store, workOrder, cast }: Shop): number {
  const tess = actorOf(cast.tess)
  const changes = { directions: fourBands }
  const { id } = addFlatnessReading(store, freshReading(shop, 'rotating-face', changes), tess)
  addFlatnessReading(store, freshReading(shop, 'stationary-seat'), tess)
  addStaticTest(store, freshTest(shop), tess)
  addHandOver(store, { workOrderId: workOrder.id, note: '' }, tess)
  return id
}

const order = () => `/work-orders/${shop.workOrder.number}`
const page = async (as = 'ian') => (await app.get(`${order()}/inspection`, as)).text()
const conceded = () => listConcessions(shop.store, shop.workOrder.id)
const full = () => ({
  formKey: 'c1',
  subjectKind: 'flatness-reading',
  subjectId: String(failing),
  characteristic: 'flatness',
  reason: 'Runs at 2 bar on water only.',
  customerReference: 'Letter 4711',
})
const concede = (changes: Record<string, string> = {}, as = 'ian') =>
  app.post(`${order()}/concessions`, { ...full(), ...changes }, as)

describe('a concession', () => {
  test('is offered beside what fails, and nowhere else', async () => {
    const html = await page()
    expect(html.match(/\/concessions#/g)).toHaveLength(1)
    expect(html).toContain(`/concessions#flatness-reading-${failing}-flatness`)
    expect(await page('mo')).not.toContain('/concessions#')
  })

  test('is recorded with reason, customer’s approval and inspector, and shown', async () => {
    const answer = await concede()
    expect(answer.status).toBe(303)
    expect(conceded()).toMatchObject([
      {
        subjectKind: 'flatness-reading',
        subjectId: failing,
        characteristic: 'flatness',
        reason: 'Runs at 2 bar on water only.',
        customerReference: 'Letter 4711',
        byName: 'Ian Ives',
      },
    ])
    const html = await page()
    for (const part of ['Accepted by concession', 'Runs at 2 bar', 'Letter 4711', 'Ian Ives']) {
      expect(html).toContain(part)
    }
    expect(html).not.toContain('/concessions#')
  })

  test('lets the order be released, and the certificate says so', async () => {
    const number = shop.workOrder.number
    const path = `${order()}/decision`
    expect((await app.post(path, await decisionForm(app, number, 'ian'), 'ian')).status).toBe(422)
    await concede()
    expect((await app.post(path, await decisionForm(app, number, 'ian'), 'ian')).status).toBe(303)
    const [certificate] = listCertificates(shop.store, { workOrderId: shop.workOrder.id })
    expect(certificate?.record.verdict).toBe('conceded')
  })

  test('makes a decision stale that was begun before it', async () => {
    const form = await decisionForm(app, shop.workOrder.number, 'ina')
    await concede()
    const answer = await app.post(`${order()}/decision`, form, 'ina')
    expect(answer.status).toBe(409)
    expect(await answer.text()).toContain('The record changed while you were deciding')
  })

  test('is recorded once, also when its form is sent twice', async () => {
    const first = await concede()
    const second = await concede()
    expect(second.status).toBe(303)
    expect(second.headers.get('location')).toBe(first.headers.get('location'))
    expect(conceded()).toHaveLength(1)
  })

  test('is one for each result: the second of two inspectors hears of the first', async () => {
    await concede()
    const second = await concede({ formKey: 'c2', reason: 'Another reason, as good.' }, 'ina')
    expect(second.status).toBe(409)
    expect(await second.text()).toContain('This result is conceded already.')
    expect(conceded()).toHaveLength(1)
  })
})

describe('the form of a concession', () => {
  test.each([
    [{ reason: '' }, 'Enter a value.'],
    [{ reason: 'too short' }, 'Enter at least 10 characters.'],
    [{ reason: 'x'.repeat(401) }, 'Enter at most 400 characters.'],
    [{ customerReference: ' ' }, 'Enter a value.'],
    [{ customerReference: 'a' }, 'Enter at least 2 characters.'],
    [{ customerReference: 'x'.repeat(121) }, 'Enter at most 120 characters.'],
  ])('asks again with %o', async (changes, sentence) => {
    const answer = await concede(changes)
    expect(answer.status).toBe(422)
    const html = await answer.text()
    expect(html).toContain(sentence)
    expect(html).toContain('value="c1"')
    expect(conceded()).toHaveLength(0)
  })

  test('gives back what was typed, escaped, and stands open', async () => {
    const answer = await concede({ reason: '<b>short', customerReference: '<i>4711' })
    const html = await answer.text()
    expect(html).toContain('&lt;b&gt;short</textarea>')
    expect(html).toContain('value="&lt;i&gt;4711"')
    expect(html).toMatch(/<details class="fold" open[^>]*><summary>The customer takes it/)
  })

  test.each([
    [{ subjectKind: 'opinion' }],
    [{ subjectId: 'x' }],
    [{ subjectId: '-1' }],
    [{ characteristic: 'beauty' }],
  ])('refuses a result that is none: %o', async (changes) => {
    expect((await concede(changes)).status).toBe(422)
    expect(conceded()).toHaveLength(0)
  })
})

describe('nobody concedes', () => {
  test('what they worked on', async () => {
    const tess = actorOf(shop.cast.ian)
    shop = buildShop()
    app = testApp(shop.store)
    addStaticTest(shop.store, freshTest(shop), tess)
    failing = handOverFailing(shop)
    expect(await page()).not.toContain('/concessions#')
    const answer = await concede()
    expect(answer.status).toBe(403)
    expect(await answer.text()).toContain('EN 10204:2004, type 3.1')
    expect((await concede({}, 'ina')).status).toBe(303)
  })

  test('without being an inspector', async () => {
    for (const as of ['tess', 'mo', 'cora']) expect((await concede({}, as)).status).toBe(403)
    expect(conceded()).toHaveLength(0)
  })

  test('what passes, what is of another order, what is not there', async () => {
    const seat = failing + 1
    const other = anotherOrder(shop)
    workAndHandOver(shop, other)
    for (const subjectId of [String(seat), String(seat + 1), '99']) {
      const answer = await concede({ subjectId })
      expect(answer.status).toBe(409)
      expect(await answer.text()).toContain('there is nothing to concede')
    }
    const drop = { subjectKind: 'static-test', subjectId: '1', characteristic: 'static-drop' }
    expect((await concede(drop)).status).toBe(409)
    expect(conceded()).toHaveLength(0)
  })

  test('an unreadable face: it has no figure that a customer could take', async () => {
    shop = buildShop()
    app = testApp(shop.store)
    const tess = actorOf(shop.cast.tess)
    const unreadable = { pattern: 'unreadable', directions: [] } as const
    failing = addFlatnessReading(
      shop.store,
      freshReading(shop, 'rotating-face', unreadable),
      tess,
    ).id
    expect(await page()).not.toContain('/concessions#')
    const answer = await concede()
    expect(answer.status).toBe(409)
    expect(await answer.text()).toContain('no figure to concede')
  })

  test('a reading that was overtaken by a later one', async () => {
    shop = buildShop()
    app = testApp(shop.store)
    const tess = actorOf(shop.cast.tess)
    const changes = { directions: fourBands }
    failing = addFlatnessReading(shop.store, freshReading(shop, 'rotating-face', changes), tess).id
    addFlatnessReading(shop.store, freshReading(shop, 'rotating-face', changes), tess)
    expect((await concede()).status).toBe(409)
    expect((await concede({ formKey: 'c2', subjectId: String(failing + 1) })).status).toBe(303)
  })

  test('anything after the decision', async () => {
    await concede()
    const form = await decisionForm(app, shop.workOrder.number, 'ina')
    expect((await app.post(`${order()}/decision`, form, 'ina')).status).toBe(303)
    const answer = await concede({ formKey: 'c9' })
    expect(answer.status).toBe(409)
    expect(await answer.text()).toContain('nothing is conceded on it now')
  })

  test('on an order that does not exist', async () => {
    const answer = await app.post('/work-orders/W-2026-9999/concessions', full(), 'ian')
    expect(answer.status).toBe(404)
  })
})
