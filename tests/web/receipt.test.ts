import { beforeEach, describe, expect, it } from 'vitest'
import { addSeal } from '../../src/store/add-seal.ts'
import { listWorkOrders } from '../../src/store/list-work-orders.ts'
import { buildShop, newSeal, type Shop } from '../support/build-shop.ts'
import { operator } from '../support/cast.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
beforeEach(() => {
  shop = buildShop()
  app = testApp(shop.store)
})

const read = async (path: string, as = 'tess') => (await app.get(path, as)).text()
const orders = () => listWorkOrders(shop.store, { limit: 50 }).items
const receive = (form: Record<string, string> = {}) =>
  app.post('/work-orders', { formKey: 'k1', sealId: String(shop.seal.id), ...form }, 'tess')
const refused = async (form: Record<string, string>) => {
  const answer = await receive(form)
  expect(answer.status).toBe(422)
  expect(orders()).toHaveLength(1)
  return answer.text()
}

describe('receiving a seal', () => {
  it('asks whose it is, then which, then what is stated', async () => {
    const whose = await read('/work-orders/new')
    expect(whose).toContain(`href="/work-orders/new?customer=${shop.customer.id}"`)
    const which = await read(`/work-orders/new?customer=${shop.customer.id}`)
    expect(which).toContain(`href="/work-orders/new?seal=${shop.seal.id}"`)
    expect(which).toContain(`/customers/${shop.customer.id}/seals/new?next=receipt`)
    const stated = await read(`/work-orders/new?seal=${shop.seal.id}`)
    expect(stated).toContain('Caution: residues in a returned seal')
    expect(stated).toContain(`value="${shop.limitSet.id}" selected`)
  })

  it('shows of a customer no seal of another', async () => {
    const { customerId } = shop.cast.olga
    addSeal(shop.store, newSeal(customerId!, { serial: 'DAIRY-9' }), operator)
    expect(await read(`/work-orders/new?customer=${shop.customer.id}`)).not.toContain('DAIRY-9')
  })

  it.each(['?customer=99', '?customer=x', '?seal=99', '?seal=-1', '?seal='])(
    'finds nothing under "%s"',
    async (query) => {
      expect((await app.get(`/work-orders/new${query}`, 'tess')).status).toBe(404)
    },
  )

  it('makes one order with the least that can be stated, also when sent twice', async () => {
    for (const _ of [1, 2]) {
      const answer = await receive()
      expect(answer.status).toBe(303)
      expect(answer.headers.get('location')).toBe('/work-orders/W-2026-0002?recorded=receipt')
    }
    expect(orders()).toHaveLength(2)
    expect(orders()[0]).toMatchObject({
      stage: 'received',
      decontamination: 'not-stated',
      sealedPressureKPa: null,
      dueOn: null,
      limitSetId: shop.limitSet.id,
      receivedAt: '2026-11-25T10:00:00.000Z',
    })
  })

  it('keeps everything that is stated', async () => {
    const stated = {
      customerOrder: 'PO 9',
      reasonForRemoval: 'drips',
      decontamination: 'stated-clean',
      lastFluid: 'thin juice',
      sealedPressureKPa: '-50,5',
      serviceTemperatureC: '95',
      shaftSpeedPerMin: '1450',
      dueOn: '2026-12-01',
      limitSetId: String(shop.limitSet.id),
    }
    expect((await receive(stated)).status).toBe(303)
    expect(orders()[0]).toMatchObject({
      ...stated,
      sealedPressureKPa: -50.5,
      serviceTemperatureC: 95,
      shaftSpeedPerMin: 1450,
      limitSetId: shop.limitSet.id,
    })
  })

  it.each([
    ['sealedPressureKPa', 'much', 'Enter a plain number'],
    ['sealedPressureKPa', '-111', 'Enter a value from -110'],
    ['sealedPressureKPa', '1000001', 'to 1000000'],
    ['serviceTemperatureC', '-274', 'Enter a value from -273.15'],
    ['serviceTemperatureC', '3001', 'to 3000'],
    ['shaftSpeedPerMin', '-1', 'Enter a value from 0'],
    ['shaftSpeedPerMin', '1000001', 'to 1000000'],
    ['dueOn', '2026-02-30', 'Enter a date that exists'],
    ['decontamination', 'perhaps', 'Choose one of'],
    ['limitSetId', '99', 'This is not in the records'],
    ['limitSetId', 'x', 'Enter a plain number'],
    ['customerOrder', 'x'.repeat(61), 'Enter at most 60 characters'],
    ['reasonForRemoval', 'x'.repeat(401), 'Enter at most 400 characters'],
    ['lastFluid', 'x'.repeat(121), 'Enter at most 120 characters'],
  ])('refuses %s "%s" in a sentence at the field', async (name, typed, sentence) => {
    const html = await refused({ [name]: typed })
    expect(html).toContain('This was not recorded yet.')
    expect(html).toContain(`href="#${name}">`)
    expect(html).toContain(sentence)
  })

  it('shows what was typed again, escaped, with the same key', async () => {
    const html = await refused({ lastFluid: '"><b>', reasonForRemoval: '<i>', dueOn: 'soon' })
    expect(html).toContain('value="&quot;&gt;&lt;b&gt;"')
    expect(html).toContain('&lt;i&gt;</textarea>')
    expect(html).toContain('value="soon"')
    expect(html).toContain('name="formKey" value="k1"')
  })

  it('asks to confirm what lies beyond the window of the trade', async () => {
    expect(await read(`/work-orders/new?seal=${shop.seal.id}`)).not.toContain('confirmBeyond')
    const html = await refused({ serviceTemperatureC: '600' })
    expect(html).toContain('name="confirmBeyondWindow" value="yes"')
    const answer = await receive({ serviceTemperatureC: '600', confirmBeyondWindow: 'yes' })
    expect(answer.status).toBe(303)
    expect(orders()[0]?.serviceTemperatureC).toBe(600)
  })

  it.each(['', '99', 'x'])('finds no seal "%s"', async (sealId) => {
    expect((await receive({ sealId })).status).toBe(404)
  })

  it('refuses a field that the form does not have', async () => {
    await refused({ stage: 'released' })
  })
})
