import { describe, expect, test } from 'vitest'
import { addSeal } from '../../src/store/add-seal.ts'
import { addWorkOrder } from '../../src/store/add-work-order.ts'
import { listWorkOrders } from '../../src/store/list-work-orders.ts'
import { moveWorkOrder } from '../../src/store/move-work-order.ts'
import { selectLines } from '../../src/store/select-work-order-lines.ts'
import { whereOf } from '../../src/store/where-of-work-orders.ts'
import type { WorkOrderFilter } from '../../src/store/work-order-filter.ts'
import { buildShop, newSeal, newWorkOrder, type Shop } from '../support/build-shop.ts'
import { operator } from '../support/cast.ts'
import { anotherOrder } from '../support/shop-steps.ts'

const numbers = (shop: Shop, filter: Omit<WorkOrderFilter, 'limit'>) =>
  listWorkOrders(shop.store, { limit: 50, ...filter }).items.map((one) => one.number.slice(-4))

/** Four orders: three of the sugar works, one of the dairy. */
function fourOrders(): Shop {
  const shop = buildShop()
  const { store, cast, limitSet } = shop
  anotherOrder(shop, { customerOrder: '50% off_1' })
  anotherOrder(shop, { customerOrder: '50 percent' })
  const customerId = cast.olga.customerId ?? 0
  const seal = addSeal(store, newSeal(customerId, { serial: 'DAIRY-7' }), operator)
  const ids = { customerId, sealId: seal.id, limitSetId: limitSet.id }
  addWorkOrder(store, newWorkOrder({ ...ids, customerOrder: 'M-1' }), operator)
  moveWorkOrder(store, { workOrderId: 2, to: 'stripped', reason: '' }, operator)
  return shop
}

describe('the list of work orders', () => {
  test('comes newest first, with the names that people know an order by', () => {
    const shop = fourOrders()
    expect(numbers(shop, {})).toEqual(['0004', '0003', '0002', '0001'])
    const [dairy, sugar] = listWorkOrders(shop.store, { limit: 2 }).items
    expect(dairy).toMatchObject({
      customerName: 'Invented Dairy',
      sealSerial: 'DAIRY-7',
      equipmentTag: null,
    })
    expect(sugar).toMatchObject({ sealSerial: 'S-1', equipmentTag: 'P-101' })
  })

  test('takes stage and customer together and apart', () => {
    const shop = fourOrders()
    expect(numbers(shop, { stage: 'stripped' })).toEqual(['0002'])
    expect(numbers(shop, { customerId: 2 })).toEqual(['0004'])
    expect(numbers(shop, { stage: 'received', customerId: 1 })).toEqual(['0003', '0001'])
    expect(numbers(shop, { stage: 'dispatched' })).toEqual([])
  })

  test.each([
    ['the number', 'w-2026-0003', ['0003']],
    ['the order of the customer', 'm-1', ['0004']],
    ['the serial', 'dairy-7', ['0004']],
    ['the tag', 'p-101', ['0003', '0002', '0001']],
    ["the customer's name", 'sugar', ['0003', '0002', '0001']],
    ['a percent sign as itself', '50%', ['0002']],
    ['an underscore as itself', 'off_', ['0002']],
    ['a backslash as itself', '\\', []],
    ['a quote as itself', "'", []],
    ['blanks as nothing', '  ', ['0004', '0003', '0002', '0001']],
  ])('finds by %s', (_, q, found) => {
    expect(numbers(fourOrders(), { q })).toEqual(found)
  })

  test('goes on from its cursor without a gap or a repetition', () => {
    const shop = fourOrders()
    const seen: string[] = []
    let cursor: string | undefined
    do {
      const page = listWorkOrders(
        shop.store,
        cursor === undefined ? { limit: 3 } : { limit: 3, cursor },
      )
      seen.push(...page.items.map((one) => one.number.slice(-4)))
      cursor = page.nextCursor ?? undefined
    } while (cursor !== undefined)
    expect(seen).toEqual(['0004', '0003', '0002', '0001'])
    expect(listWorkOrders(shop.store, { limit: 4 }).nextCursor).toBeNull()
    expect(numbers(shop, { cursor: 'nonsense' })).toEqual([])
  })

  test.each([0, 501, 1.5, Number.NaN])('refuses a page of %s', (limit) => {
    expect(() => listWorkOrders(buildShop().store, { limit })).toThrow(
      `listWorkOrders requires limit from 1 to 500, got ${limit}`,
    )
  })

  test.each([
    [{ stage: 'lapping' }, 'work_order_by_stage'],
    [{ customerId: 1 }, 'work_order_by_customer'],
    [{ stage: 'lapping', customerId: 1, cursor: '9' }, 'work_order_by_'],
  ] as const)('asks an index for %o and scans nothing', (filter, index) => {
    const { store } = fourOrders()
    const query = selectLines(store, whereOf({ limit: 50, ...filter })).toSQL()
    const plan = store.raw.prepare(`EXPLAIN QUERY PLAN ${query.sql}`).all(...query.params)
    const steps = (plan as { detail: string }[]).map((one) => one.detail)
    expect(steps.join('\n')).toContain(`SEARCH work_order USING INDEX ${index}`)
    expect(steps.filter((one) => one.startsWith('SCAN'))).toEqual([])
  })
})
