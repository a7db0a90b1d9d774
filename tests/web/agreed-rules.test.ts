import { beforeEach, describe, expect, test } from 'vitest'
import { agreedRuleOf } from '../../src/store/agreed-rule-of.ts'
import { customerRuleOf } from '../../src/store/customer-rule-of.ts'
import { listWorkOrders } from '../../src/store/list-work-orders.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { doTheWork } from '../support/shop-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
beforeEach(() => {
  shop = buildShop()
  app = testApp(shop.store)
})

const guard = { decisionRule: 'guard-u95', ruleReference: 'Contract 12, § 4' }
const html = async (path: string, as = 'ian') => (await app.get(path, as)).text()

describe.each([
  ['a customer', () => `/customers/${shop.customer.id}`],
  ['an order', () => `/work-orders/${shop.workOrder.number}`],
])('the rule of %s', (whose, place) => {
  const agree = (form: Record<string, string>, as = 'ian') =>
    app.post(`${place()}/rule`, { formKey: 'r1', ...form }, as)
  const rule = () =>
    whose === 'a customer'
      ? (customerRuleOf(shop.store, shop.customer.id)?.rule ?? 'simple')
      : agreedRuleOf(shop.store, shop.workOrder.id).rule

  test('is told with its risk, and where nobody agreed on another', async () => {
    const page = await html(place(), 'tess')
    expect(page).toContain('Simple acceptance')
    expect(page).toContain('up to 50 %')
    expect(page).toContain('the house’s rule holds')
  })

  test('is agreed by an inspector or a manager, and then told with where and by whom', async () => {
    for (const as of ['ian', 'mo']) {
      expect((await agree({ ...guard, formKey: as }, as)).status).toBe(303)
    }
    expect(rule()).toBe('guard-u95')
    const page = await html(place(), 'tess')
    for (const part of ['Guard band by U', 'Contract 12, § 4', 'recorded by Mo Marsh']) {
      expect(page).toContain(part)
    }
  })

  test('is agreed by nobody else, and its form is shown to nobody else', async () => {
    expect(await html(place(), 'ian')).toContain(`action="${place()}/rule"`)
    expect(await html(place(), 'tess')).not.toContain(`action="${place()}/rule"`)
    for (const as of ['tess', 'cora']) expect((await agree(guard, as)).status).toBe(403)
    expect(rule()).toBe('simple')
  })

  test.each<[Record<string, string>, string]>([
    [{ decisionRule: '' }, 'Enter a value.'],
    [{ ruleReference: '' }, 'Enter a value.'],
    [{ decisionRule: 'generous' }, 'Choose one of'],
    [{ decisionProbability: '0.9' }, 'Leave this empty here.'],
    [{ decisionRule: 'guard-probability', decisionProbability: '2' }, '0.9999'],
    [{ ruleReference: 'x'.repeat(201) }, 'Enter at most 200 characters.'],
  ])('asks again with %o', async (changes, sentence) => {
    const answer = await agree({ ...guard, ...changes })
    expect(answer.status).toBe(422)
    expect(await answer.text()).toContain(sentence)
    expect(rule()).toBe('simple')
  })

  test('gives back what was typed, escaped, and stands open', async () => {
    const page = await (await agree({ decisionRule: '', ruleReference: '<b>Contract' })).text()
    expect(page).toContain('value="&lt;b&gt;Contract"')
    expect(page).toMatch(/<details class="fold" open[^>]*><summary>Agree on/)
  })

  test('is recorded once, also when the form is sent twice', async () => {
    const first = await agree(guard)
    const second = await agree(guard)
    expect(second.headers.get('location')).toBe(first.headers.get('location'))
    const count = shop.store.raw.prepare('SELECT count(*) FROM agreed_rule').pluck().get()
    expect(count).toBe(1)
  })
})

describe('the rule of an order', () => {
  test('can’t be chosen once something is measured, and isn’t offered then', async () => {
    doTheWork(shop)
    const place = `/work-orders/${shop.workOrder.number}`
    expect(await html(place)).not.toContain(`action="${place}/rule"`)
    const answer = await app.post(`${place}/rule`, { formKey: 'r1', ...guard }, 'ian')
    expect(answer.status).toBe(409)
    expect(await answer.text()).toContain('is agreed before')
  })

  test('is told on the page of the inspection', async () => {
    const place = `/work-orders/${shop.workOrder.number}`
    await app.post(`${place}/rule`, { formKey: 'r1', ...guard }, 'ian')
    expect(await html(`${place}/inspection`)).toContain('Guard band by U')
  })

  test('is not agreed for what is not there', async () => {
    for (const place of ['/customers/99', '/work-orders/W-2026-9999']) {
      expect((await app.post(`${place}/rule`, guard, 'ian')).status).toBe(404)
    }
  })
})

describe('receiving a seal', () => {
  const receive = (form: Record<string, string>) =>
    app.post('/work-orders', { formKey: 'k', sealId: String(shop.seal.id), ...form }, 'tess')
  const newest = () => listWorkOrders(shop.store, { limit: 1 }).items[0]?.id ?? 0

  test('tells what holds, and takes another rule and the service where they are stated', async () => {
    const page = await html(`/work-orders/new?seal=${shop.seal.id}`, 'tess')
    expect(page).toContain('Simple acceptance')
    expect(page).toContain('name="decisionRule"')
    const form = { decisionRule: 'four-outcomes', ruleReference: 'PO 12', service: 'slurry' }
    expect((await receive(form)).status).toBe(303)
    expect(agreedRuleOf(shop.store, newest())).toMatchObject({
      rule: 'four-outcomes',
      reference: 'PO 12',
      scope: 'order',
    })
    expect(await html(`/work-orders/${'W-2026-0002'}`)).toContain('Slurry')
  })

  test('takes what is agreed with the customer where nothing is stated', async () => {
    await app.post(`/customers/${shop.customer.id}/rule`, { formKey: 'r', ...guard }, 'mo')
    expect(await html(`/work-orders/new?seal=${shop.seal.id}`, 'tess')).toContain(
      'Contract 12, § 4',
    )
    expect((await receive({})).status).toBe(303)
    expect(agreedRuleOf(shop.store, newest())).toMatchObject({
      rule: 'guard-u95',
      scope: 'customer',
    })
  })

  test('goes over what is agreed with the customer by no technician', async () => {
    const form = { decisionRule: 'simple', ruleReference: 'PO 12' }
    const body = { customerId: shop.customer.id, sealId: shop.seal.id, ...form }
    const sealId = String(shop.seal.id)
    await app.post(`/customers/${shop.customer.id}/rule`, { formKey: 'r', ...guard }, 'mo')
    const place = `/work-orders/new?seal=${sealId}`
    expect(await html(place, 'tess')).not.toContain('name="decisionRule"')
    expect(await html(place, 'mo')).toContain('name="decisionRule"')
    const refused = await receive(form)
    expect(refused.status).toBe(422)
    expect(await refused.text()).toContain('Another rule is agreed with this customer')
    const program = await app.postJson('/api/v1/work-orders', body, 'tess')
    expect(program.status).toBe(422)
    expect(await program.json()).toMatchObject({ errors: [{ field: 'decisionRule' }] })
    expect(newest()).toBe(shop.workOrder.id)
    const unsaid = { formKey: 'a', sealId, decisionRule: 'simple' }
    expect((await app.post('/work-orders', unsaid, 'mo')).status).toBe(422)
    expect((await app.post('/work-orders', { formKey: 'b', sealId, ...form }, 'mo')).status).toBe(
      303,
    )
    expect(agreedRuleOf(shop.store, newest())).toMatchObject({ rule: 'simple', scope: 'order' })
  })

  test('asks again for a rule that is none, or a reference without a rule', async () => {
    for (const form of [{ decisionRule: 'generous' }, { ruleReference: '<i>PO 12' }]) {
      const answer = await receive(form)
      expect(answer.status).toBe(422)
    }
    const page = await (await receive({ ruleReference: '<i>PO 12' })).text()
    expect(page).toContain('value="&lt;i&gt;PO 12"')
    expect(page).toMatch(/<details class="fold" open[^>]*><summary>Another rule/)
  })
})

describe('the machine interface', () => {
  const post = (body: object) =>
    app.postJson(
      '/api/v1/work-orders',
      { customerId: shop.customer.id, sealId: shop.seal.id, ...body },
      'tess',
    )

  test('receives with a rule, a probability and a service, and tells the rule that holds', async () => {
    const rule = { decisionRule: 'guard-probability', decisionProbability: 0.99 }
    const answer = await post({ ...rule, service: 'dry-gas' })
    expect(answer.status).toBe(201)
    expect(await answer.json()).toMatchObject({
      service: 'dry-gas',
      agreedRule: { rule: 'guard-probability', probability: 0.99, scope: 'order' },
    })
    expect(await (await post({})).json()).toMatchObject({
      service: 'not-stated',
      agreedRule: { rule: 'simple', scope: 'house' },
    })
  })

  test.each([
    [{ decisionRule: 'generous' }, 'decisionRule'],
    [{ decisionProbability: 0.9 }, 'decisionRule'],
    [{ decisionRule: 'simple', decisionProbability: 0.9 }, 'decisionProbability'],
    [{ decisionRule: 'guard-probability', decisionProbability: 0.5 }, 'decisionProbability'],
    [{ service: 'soup' }, 'service'],
  ])('refuses %o by the name of the field', async (body, field) => {
    const answer = await post(body)
    expect(answer.status).toBe(422)
    expect(await answer.json()).toMatchObject({ errors: [{ field }] })
  })
})
