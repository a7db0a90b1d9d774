import { describe, expect, test } from 'vitest'
import { addSeal } from '../../src/store/add-seal.ts'
import { buildShop, newSeal } from '../support/build-shop.ts'
import { operator } from '../support/cast.ts'
import { fillShop } from '../support/fill-shop.ts'
import { anotherOrder, workAndHandOver, workAndRelease } from '../support/shop-steps.ts'
import { testApp } from '../support/test-app.ts'

describe('a customer’s seals', () => {
  test('say where each one stands, with its certificates', async () => {
    const shop = buildShop()
    const { certificate } = workAndRelease(shop)
    anotherOrder(shop)
    addSeal(shop.store, newSeal(shop.customer.id, { serial: 'S-2' }), operator)
    const text = await (await testApp(shop.store).get('/my-seals', 'cora')).text()
    expect(text).toContain('Seal S-1')
    expect(text).toContain('Received. It waits to be opened.')
    expect(text).toContain(certificate.number)
    expect(text).toContain('Seal S-2')
    expect(text).toContain('No order so far.')
  })

  test('are nobody else’s', async () => {
    const shop = buildShop()
    workAndRelease(shop)
    const text = await (await testApp(shop.store).get('/my-seals', 'olga')).text()
    expect(text).not.toContain('S-1')
    expect(text).toContain('No seal yet')
  })

  test('are a page for customers alone', async () => {
    const app = testApp(buildShop().store)
    expect((await app.get('/my-seals', 'tess')).status).toBe(403)
  })
})

describe('the page of a seal', () => {
  test('shows its customer what released orders found and left', async () => {
    const shop = buildShop()
    const { certificate } = workAndRelease(shop)
    const path = `/seals/${shop.seal.id}`
    const text = await (await testApp(shop.store).get(path, 'cora')).text()
    expect(text).toContain('0.588 µm')
    expect(text).toContain('Static test, whole seal')
    expect(text).toContain(certificate.number)
    expect(text).not.toContain('href="/work-orders/')
  })

  test('shows results that nobody has released to the staff alone', async () => {
    const shop = buildShop()
    workAndHandOver(shop)
    const app = testApp(shop.store)
    const path = `/seals/${shop.seal.id}`
    const customers = await (await app.get(path, 'cora')).text()
    expect(customers).toContain('The results are shown when the order is released.')
    expect(customers).not.toContain('0.588 µm')
    const staffs = await (await app.get(path, 'tess')).text()
    expect(staffs).toContain('0.588 µm')
    expect(staffs).toContain(`href="/work-orders/${shop.workOrder.number}"`)
  })

  test('shows every order of the seal and of no other', async () => {
    const shop = fillShop()
    const other = addSeal(shop.store, newSeal(shop.customer.id, { serial: 'S-2' }), operator)
    const third = anotherOrder(shop, { sealId: other.id })
    const app = testApp(shop.store)
    const text = await (await app.get(`/seals/${shop.seal.id}`, 'ian')).text()
    expect(text).toContain('W-2026-0001')
    expect(text).toContain('W-2026-0002')
    expect(text).not.toContain(third.number)
  })

  test.each(['olga', 'cora'])('is not found where there is none (%s)', async (who) => {
    const shop = buildShop()
    const app = testApp(shop.store)
    for (const id of [who === 'olga' ? shop.seal.id : 999, 'abc', '-1', '1e9', '9'.repeat(30)]) {
      expect((await app.get(`/seals/${id}`, who)).status).toBe(404)
    }
  })
})
