import { describe, expect, test } from 'vitest'
import type { NewLapCycle } from '../../src/domain/lap-cycle.ts'
import { addLapCycle } from '../../src/store/add-lap-cycle.ts'
import { addSeal } from '../../src/store/add-seal.ts'
import { lastLapCycles } from '../../src/store/last-lap-cycles.ts'
import { listAudit } from '../../src/store/list-audit.ts'
import { listEarlierLapCycles } from '../../src/store/list-earlier-lap-cycles.ts'
import { listLapCycles } from '../../src/store/list-lap-cycles.ts'
import { readEvidence } from '../../src/store/read-evidence.ts'
import { requireWorkOrder } from '../../src/store/require-work-order.ts'
import { verifyRecords } from '../../src/store/verify-records.ts'
import { buildShop, newSeal } from '../support/build-shop.ts'
import { actorOf, castAt, operator } from '../support/cast.ts'
import { anotherOrder, freshCycle, workAndHandOver } from '../support/shop-steps.ts'

function setUp() {
  const shop = buildShop()
  const add = (changes: Partial<NewLapCycle> = {}) =>
    addLapCycle(shop.store, freshCycle(shop, changes), actorOf(shop.cast.tess))
  const list = () => listLapCycles(shop.store, shop.workOrder.id)
  return { shop, add, list }
}

const everything = {
  plateForm: 'concave',
  plateSagUm: 4,
  plateDiameterMm: 380,
  abrasive: 'diamond-charged',
  grit: '3 µm',
  loadKg: 1.5,
  durationMin: 12,
  plannedStockUm: 15,
  stockUm: 14,
  heightBeforeMm: 2.91,
  heightAfterMm: 2.896,
  isNewRing: true,
  typed: { heightBeforeMm: '2,910', stockUm: '14' },
  note: 'rim was dry',
} as const

describe('adding a lap cycle', () => {
  test('keeps it whole, with who recorded it and when, and moves the order to lapping', () => {
    const { shop, add, list } = setUp()
    const added = add(everything)
    expect(added).toMatchObject({
      ...freshCycle(shop, everything),
      recordedById: shop.cast.tess.id,
      recordedByName: 'Tess Turner',
      recordedAt: castAt,
      replacedById: null,
    })
    expect(list()).toEqual([added])
    expect(readEvidence(shop.store, shop.workOrder.id).lapCycles).toEqual([added])
    const { number } = shop.workOrder
    expect(requireWorkOrder(shop.store, number, shop.cast.tess).stage).toBe('lapping')
  })

  test('keeps what was left out as unknown, and a zero as a zero', () => {
    const { add, list } = setUp()
    add({ stockUm: 0 })
    expect(list()[0]).toMatchObject({ stockUm: 0, loadKg: null, plateForm: null, typed: {} })
  })

  test('refuses a component that is no face of this seal', () => {
    const { shop, add, list } = setUp()
    const other = addSeal(shop.store, newSeal(shop.customer.id, { serial: 'S-2' }), operator)
    const strange = other.components.find((one) => one.kind === 'rotating-face')!.id
    const spring = shop.seal.components.find((one) => one.kind === 'spring')!.id
    for (const componentId of [strange, spring]) {
      expect(() => add({ componentId })).toThrow('conflict: not-in-order')
    }
    expect(list()).toEqual([])
  })

  test('is refused where the order is not open', () => {
    const { shop, add, list } = setUp()
    workAndHandOver(shop)
    expect(() => add()).toThrow('conflict: not-open')
    expect(list()).toEqual([])
  })

  test('refuses in the table too what no face and no plate can be', () => {
    const { add } = setUp()
    expect(() => add({ plate: '' })).toThrow('CHECK')
    expect(() => add({ stockUm: -1 })).toThrow('CHECK')
    expect(() => add({ heightBeforeMm: 2, heightAfterMm: 2.1 })).toThrow('CHECK')
    expect(() => add({ heightAfterMm: Number.POSITIVE_INFINITY })).toThrow('CHECK')
  })
})

describe('correcting a lap cycle', () => {
  test('keeps both, happens once, and within the order', () => {
    const { shop, add, list } = setUp()
    const wrong = add({ stockUm: 120 })
    const right = add({ stockUm: 12, replacesId: wrong.id, reason: 'slip of the key' })
    expect(list().map((one) => one.replacedById)).toEqual([right.id, null])
    expect(() => add({ replacesId: wrong.id, reason: 'again' })).toThrow('already-replaced')
    const { id: workOrderId } = anotherOrder(shop)
    const strange = { workOrderId, replacesId: right.id, reason: 'x' }
    expect(() => add(strange)).toThrow('not-in-order')
    expect(() => add({ replacesId: right.id, reason: '' })).toThrow('CHECK')
  })

  test('has a line of its own in the trail, which holds the record', () => {
    const { shop, add } = setUp()
    const wrong = add(everything)
    add({ replacesId: wrong.id, reason: 'misread' })
    const acts = listAudit(shop.store, { limit: 10 }).items.map((one) => one.act)
    expect(acts).toEqual(expect.arrayContaining(['add-lap-cycle', 'correct-lap-cycle']))
    expect(verifyRecords(shop.store)).toEqual([])
    shop.store.raw.exec('DROP TRIGGER lap_cycle_no_update')
    shop.store.raw.exec('UPDATE lap_cycle SET stock_um = 1 WHERE replaces_id IS NULL')
    expect(verifyRecords(shop.store)).toMatchObject([{ table: 'lap_cycle' }])
  })
})

describe('looking back', () => {
  test('finds the cycles of earlier orders of the seal, and of no later or other one', () => {
    const { shop, add } = setUp()
    const { store, workOrder } = shop
    const first = add({ stockUm: 5 })
    const corrected = add({ stockUm: 6, replacesId: first.id, reason: 'misread' })
    const second = anotherOrder(shop)
    add({ workOrderId: second.id })
    const other = addSeal(store, newSeal(shop.customer.id, { serial: 'S-2' }), operator)
    const componentId = other.components.find((one) => one.kind === 'rotating-face')!.id
    const third = anotherOrder(shop, { sealId: other.id })
    add({ workOrderId: third.id, componentId })
    const earlier = listEarlierLapCycles(store, second)
    expect(earlier.map((one) => [one.id, one.replacedById])).toEqual([
      [first.id, corrected.id],
      [corrected.id, null],
    ])
    expect(readEvidence(store, second.id).earlierLapCycles).toEqual(earlier)
    expect(listEarlierLapCycles(store, workOrder)).toEqual([])
    expect(listEarlierLapCycles(store, third)).toEqual([])
  })

  test('tells how was lapped last, newest first', () => {
    const { shop, add } = setUp()
    expect(lastLapCycles(shop.store)).toEqual([])
    add({ plate: 'Plate 1', grit: '6 µm' })
    add({ plate: 'Plate 2', abrasive: 'sheet' })
    const by = { recordedById: shop.cast.tess.id }
    expect(lastLapCycles(shop.store)).toEqual([
      { plate: 'Plate 2', abrasive: 'sheet', grit: '', ...by },
      { plate: 'Plate 1', abrasive: null, grit: '6 µm', ...by },
    ])
  })
})
