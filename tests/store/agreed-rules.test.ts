import { describe, expect, test } from 'vitest'
import { houseRule, type StatedRule } from '../../src/domain/agreed-rule.ts'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { addStaticTest } from '../../src/store/add-static-test.ts'
import { addWorkOrder } from '../../src/store/add-work-order.ts'
import { agreeCustomerRule } from '../../src/store/agree-customer-rule.ts'
import { agreeOrderRule } from '../../src/store/agree-order-rule.ts'
import { agreedRuleOf } from '../../src/store/agreed-rule-of.ts'
import { customerRuleOf } from '../../src/store/customer-rule-of.ts'
import { listAudit } from '../../src/store/list-audit.ts'
import { moveWorkOrder } from '../../src/store/move-work-order.ts'
import { verifyRecords } from '../../src/store/verify-records.ts'
import { buildShop, newWorkOrder, type Shop } from '../support/build-shop.ts'
import { actorOf, operator } from '../support/cast.ts'
import { freshReading, freshTest } from '../support/shop-steps.ts'

const guard: StatedRule = { rule: 'guard-u95', probability: 0.95, reference: 'Contract 12, § 4' }
const four: StatedRule = { rule: 'four-outcomes', probability: 0.95, reference: 'Letter of 3 May' }

const later = '2026-11-26T09:00:00.000Z'

function receive(shop: Shop, statedRule?: StatedRule) {
  const { store, customer, seal, limitSet, cast } = shop
  const of = { customerId: customer.id, sealId: seal.id, limitSetId: limitSet.id }
  const received = newWorkOrder(of)
  const order = statedRule === undefined ? received : { ...received, statedRule }
  return addWorkOrder(store, order, actorOf(cast.tess, later))
}

describe('an order', () => {
  test('is judged by the house’s simple acceptance where nobody agreed on anything', () => {
    const { store, workOrder } = buildShop()
    expect(agreedRuleOf(store, workOrder.id)).toEqual(houseRule)
    expect(houseRule.rule).toBe('simple')
  })

  test('takes at its receipt what its customer agreed to, with the name of who agreed', () => {
    const shop = buildShop()
    const { store, customer, cast } = shop
    const fresh = { customerId: customer.id, stated: guard }
    agreeCustomerRule(store, fresh, actorOf(cast.ian))
    expect(agreedRuleOf(store, receive(shop).id)).toEqual({
      ...guard,
      scope: 'customer',
      byName: 'Ian Ives',
      at: '2026-11-25T09:00:00.000Z',
    })
  })

  test('keeps the rule of its receipt when the customer agrees to another later', () => {
    const shop = buildShop()
    const { store, customer, cast, workOrder } = shop
    agreeCustomerRule(store, { customerId: customer.id, stated: guard }, actorOf(cast.ian))
    const before = receive(shop)
    agreeCustomerRule(store, { customerId: customer.id, stated: four }, actorOf(cast.mo))
    expect(agreedRuleOf(store, workOrder.id).rule).toBe('simple')
    expect(agreedRuleOf(store, before.id).rule).toBe('guard-u95')
    expect(agreedRuleOf(store, receive(shop).id).rule).toBe('four-outcomes')
    expect(customerRuleOf(store, customer.id)).toMatchObject({ ...four, byName: 'Mo Marsh' })
  })

  test('goes by what was stated for it at receipt before what the customer agreed to', () => {
    const shop = buildShop()
    agreeCustomerRule(
      shop.store,
      { customerId: shop.customer.id, stated: guard },
      actorOf(shop.cast.ian),
    )
    const simple = { rule: 'simple', probability: 0.95, reference: 'PO 9' } as const
    expect(agreedRuleOf(shop.store, receive(shop, simple).id)).toMatchObject({
      ...simple,
      scope: 'order',
      byName: 'Tess Turner',
    })
  })

  test('takes no rule of another customer', () => {
    const shop = buildShop()
    const customerId = shop.cast.olga.customerId ?? 0
    agreeCustomerRule(shop.store, { customerId, stated: guard }, actorOf(shop.cast.ian))
    expect(agreedRuleOf(shop.store, receive(shop).id)).toEqual(houseRule)
    expect(customerRuleOf(shop.store, shop.customer.id)).toBeUndefined()
  })
})

describe('agreeing for one order', () => {
  test('takes the place of what held before, and the newest counts', () => {
    const { store, workOrder, cast } = buildShop()
    for (const stated of [guard, four]) {
      agreeOrderRule(store, { workOrderId: workOrder.id, stated }, actorOf(cast.ian))
    }
    expect(agreedRuleOf(store, workOrder.id)).toMatchObject({ ...four, scope: 'order' })
  })

  test('is refused once a face was read or the seal was tested: the result is known then', () => {
    for (const measure of [
      (shop: Shop) => addFlatnessReading(shop.store, freshReading(shop), actorOf(shop.cast.tess)),
      (shop: Shop) => addStaticTest(shop.store, freshTest(shop), actorOf(shop.cast.tess)),
    ]) {
      const shop = buildShop()
      const { store, workOrder, cast } = shop
      measure(shop)
      const act = () =>
        agreeOrderRule(store, { workOrderId: workOrder.id, stated: guard }, actorOf(cast.ian))
      expect(act).toThrow('conflict: already-measured')
      expect(agreedRuleOf(store, workOrder.id)).toEqual(houseRule)
    }
  })

  test('is refused where the order has come to its end', () => {
    const { store, workOrder, cast } = buildShop()
    const fresh = { workOrderId: workOrder.id, to: 'withdrawn', reason: 'not wanted' } as const
    moveWorkOrder(store, fresh, actorOf(cast.mo))
    const act = () =>
      agreeOrderRule(store, { workOrderId: workOrder.id, stated: guard }, actorOf(cast.ian))
    expect(act).toThrow('conflict: not-open')
  })

  test('is refused for an order or a customer that is not there', () => {
    const { store, cast } = buildShop()
    const by = actorOf(cast.ian)
    expect(() => agreeOrderRule(store, { workOrderId: 99, stated: guard }, by)).toThrow(
      'not-found: no-work-order',
    )
    expect(() => agreeCustomerRule(store, { customerId: 99, stated: guard }, by)).toThrow(
      'not-found: no-customer',
    )
  })

  test('is signed by a person', () => {
    const { store, workOrder } = buildShop()
    const act = () => agreeOrderRule(store, { workOrderId: workOrder.id, stated: guard }, operator)
    expect(act).toThrow('addAgreedRule requires an actor who is a user')
  })
})

test('each agreement stands in the trail, and the record is held against it', () => {
  const shop = buildShop()
  const { store, customer, workOrder, cast } = shop
  agreeCustomerRule(store, { customerId: customer.id, stated: guard }, actorOf(cast.ian))
  agreeOrderRule(store, { workOrderId: workOrder.id, stated: four }, actorOf(cast.ian))
  const copied = receive(shop)
  const subjects = listAudit(store, { limit: 50 })
    .items.filter((one) => one.act === 'agree-rule')
    .map((one) => one.subject)
  expect(subjects).toEqual([copied.number, workOrder.number, `customer ${customer.id}`])
  expect(verifyRecords(store)).toEqual([])
  store.raw.exec('DROP TRIGGER agreed_rule_no_update')
  store.raw.exec("UPDATE agreed_rule SET rule = 'simple' WHERE id = 1")
  expect(verifyRecords(store)).toMatchObject([
    { kind: 'record-changed', table: 'agreed_rule', id: 1, fields: ['rule'] },
  ])
})
