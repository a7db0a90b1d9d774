import { beforeEach, describe, expect, it } from 'vitest'
import { listCustomers } from '../../src/store/list-customers.ts'
import { listEquipment } from '../../src/store/list-equipment.ts'
import { listSeals } from '../../src/store/list-seals.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
let page: string
beforeEach(() => {
  shop = buildShop()
  app = testApp(shop.store)
  page = `/customers/${shop.customer.id}`
})

const read = async (path: string, as = 'tess') => (await app.get(path, as)).text()

describe('customers', () => {
  const add = (form: Record<string, string>, as = 'mo') =>
    app.post('/customers', { formKey: 'k1', ...form }, as)

  it('are listed by name; only a manager is asked for another', async () => {
    const html = await read('/customers')
    expect(html).toContain(`<a href="${page}">Invented Sugar Works</a>`)
    expect(html).not.toContain('Add the customer')
    expect(await read('/customers', 'mo')).toContain('Add the customer')
    expect((await add({ name: 'Paper' }, 'tess')).status).toBe(403)
  })

  it('are added once, also when the form is sent twice', async () => {
    const form = { name: 'Invented Paper Mill', address: '3 Weir Lane', contact: 'Pia' }
    for (const _ of [1, 2]) {
      expect((await add(form)).headers.get('location')).toBe('/customers/3?recorded=customer')
    }
    expect(listCustomers(shop.store)).toHaveLength(3)
    expect(await read('/customers/3?recorded=customer')).toContain('3 Weir Lane')
  })

  it.each([
    ['', 'Enter a value.'],
    ['   ', 'Enter a value.'],
    ['x'.repeat(121), 'Enter at most 120 characters.'],
    ['invented sugar works', 'A customer of this name is in the records already.'],
  ])('are refused with the name "%s"', async (name, sentence) => {
    const answer = await add({ name, contact: '<Pia>' })
    expect(answer.status).toBe(422)
    const html = await answer.text()
    expect(html).toContain(sentence)
    expect(html).toContain('value="&lt;Pia&gt;"')
    expect(listCustomers(shop.store)).toHaveLength(2)
  })

  it.each(['99', 'x', '-1', '1e3'])('know nobody under "%s"', async (id) => {
    expect((await app.get(`/customers/${id}`, 'tess')).status).toBe(404)
    expect((await app.get(`/customers/${id}/seals/new`, 'tess')).status).toBe(404)
    expect((await app.post(`/customers/${id}/seals`, {}, 'tess')).status).toBe(404)
    expect((await app.post(`/customers/${id}/equipment`, {}, 'tess')).status).toBe(404)
  })
})

describe('a customer’s page', () => {
  const add = (form: Record<string, string>) =>
    app.post(`${page}/equipment`, { formKey: 'k1', ...form }, 'tess')

  it('shows positions and seals, each seal ready to be received', async () => {
    const html = await read(page)
    expect(html).toContain('Juice pump')
    expect(html).toContain(`href="/work-orders/new?seal=${shop.seal.id}"`)
    expect(html).toContain(`href="/seals/${shop.seal.id}"`)
  })

  it('adds a position once', async () => {
    for (const _ of [1, 2]) {
      const answer = await add({ tag: 'P-102', description: 'Spare pump', serviceFluid: '' })
      expect(answer.headers.get('location')).toBe(`${page}?recorded=position`)
    }
    expect(listEquipment(shop.store, shop.customer.id)).toHaveLength(2)
  })

  it.each([
    ['tag', '', 'Enter a value.'],
    ['tag', 'x'.repeat(61), 'Enter at most 60 characters.'],
    ['tag', 'P-101', 'This customer has a position with this tag already.'],
    ['description', 'x'.repeat(201), 'Enter at most 200 characters.'],
    ['serviceFluid', 'x'.repeat(121), 'Enter at most 120 characters.'],
  ])('refuses %s "%s" and keeps the form open', async (name, typed, sentence) => {
    const answer = await add({ tag: 'P-9', description: '<b>', [name]: typed })
    expect(answer.status).toBe(422)
    const html = await answer.text()
    expect(html).toContain(sentence)
    expect(html).toContain('<details class="fold" open="">')
    expect(listEquipment(shop.store, shop.customer.id)).toHaveLength(1)
  })
})

describe('recording a seal', () => {
  const least = {
    serial: 'S-2',
    arrangement: 'single',
    shaftDiameterMm: '50',
    'components[0].kind': 'rotating-face',
    'components[3].material': 'alumina',
  }
  const add = (form: Record<string, string> = {}) =>
    app.post(`${page}/seals`, { formKey: 'k1', ...least, ...form }, 'tess')
  const seals = () => listSeals(shop.store, { customerId: shop.customer.id })
  const refused = async (form: Record<string, string>) => {
    const answer = await add(form)
    expect(answer.status).toBe(422)
    expect(seals()).toHaveLength(1)
    return answer.text()
  }

  it('records it once, and of the components only those filled in', async () => {
    for (const _ of [1, 2]) {
      expect((await add()).headers.get('location')).toBe(`${page}?recorded=seal`)
    }
    expect(seals()).toHaveLength(2)
    expect(seals()[1]?.components.map((one) => [one.kind, one.material])).toEqual([
      ['stationary-seat', 'alumina'],
    ])
  })

  it('goes on with the receipt it was begun from', async () => {
    const html = await read(`${page}/seals/new?next=receipt`)
    expect(html).toContain('name="next" value="receipt"')
    expect((await add({ next: 'receipt' })).headers.get('location')).toBe('/work-orders/new?seal=2')
  })

  it('keeps position and dimensions', async () => {
    await add({
      equipmentId: String(shop.equipment.id),
      'components[3].outerDiameterMm': '68,5',
      'components[3].innerDiameterMm': '58',
      'components[2].material': 'wire',
    })
    expect(seals()[1]).toMatchObject({ equipmentId: shop.equipment.id })
    expect(seals()[1]?.components).toMatchObject([
      { kind: 'spring', material: 'wire' },
      { kind: 'stationary-seat', outerDiameterMm: 68.5, innerDiameterMm: 58, noseHeightMm: null },
    ])
  })

  it.each([
    ['serial', '', 'Enter a value.'],
    ['serial', 'x'.repeat(61), 'Enter at most 60 characters.'],
    ['serial', 'S-1', 'This customer has a seal with this serial already.'],
    ['arrangement', '', 'Enter a value.'],
    ['arrangement', 'triple', 'Choose one of'],
    ['shaftDiameterMm', '', 'Enter a value.'],
    ['shaftDiameterMm', 'wide', 'Enter a plain number'],
    ['shaftDiameterMm', '0.05', 'Enter a value from 0.1'],
    ['shaftDiameterMm', '5001', 'to 5000'],
    ['shaftDiameterMm', '4', 'outside the usual range of the trade'],
    ['equipmentId', '99', 'This is not in the records'],
    ['components[3].material', '', 'Record at least one face'],
    ['components[3].outerDiameterMm', 'big', 'Enter a plain number'],
    ['components[3].noseHeightMm', '501', 'to 500'],
    ['components[0].outerDiameterMm', '60', 'Enter a value.'],
  ])('refuses %s "%s"', async (name, typed, sentence) => {
    const html = await refused({ [name]: typed, drawing: '"<b>"' })
    expect(html).toContain(sentence)
    expect(html).toContain('value="&quot;&lt;b&gt;&quot;"')
    expect(html).toContain('name="formKey" value="k1"')
  })

  it('leads each fault to the component where it was typed', async () => {
    const html = await refused({
      'components[3].outerDiameterMm': '50',
      'components[3].innerDiameterMm': '60',
    })
    expect(html).toContain(
      'href="#components[3].innerDiameterMm">Stationary seat, inner diameter: The',
    )
    expect(html).toContain('id="components[3].innerDiameterMm-error"')
  })

  it('takes a shaft beyond the window once it is confirmed', async () => {
    expect(await refused({ shaftDiameterMm: '600' })).toContain('name="confirmBeyondWindow"')
    const answer = await add({ shaftDiameterMm: '600', confirmBeyondWindow: 'yes' })
    expect(answer.status).toBe(303)
  })

  it('knows no position of another customer', async () => {
    const other = `/customers/${shop.cast.olga.customerId}/seals`
    const form = { ...least, formKey: 'k2', equipmentId: String(shop.equipment.id) }
    expect((await app.post(other, form, 'tess')).status).toBe(422)
  })
})
