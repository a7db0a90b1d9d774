import { describe, expect, test } from 'vitest'
import type { MeasuredValue } from '../../src/domain/measured-value.ts'
import { addMeasuredValue } from '../../src/store/add-measured-value.ts'
import { addSeal } from '../../src/store/add-seal.ts'
import { lastMeasuringInstrument } from '../../src/store/last-measuring-instrument.ts'
import { listAudit } from '../../src/store/list-audit.ts'
import { listMeasuredValues } from '../../src/store/list-measured-values.ts'
import { readEvidence } from '../../src/store/read-evidence.ts'
import { requireWorkOrder } from '../../src/store/require-work-order.ts'
import { verifyRecords } from '../../src/store/verify-records.ts'
import { withdrawInstrument } from '../../src/store/withdraw-instrument.ts'
import { buildShop, newSeal, type Shop } from '../support/build-shop.ts'
import { actorOf, castAt, operator } from '../support/cast.ts'
import { addMeasuringInstruments } from '../support/measuring-instruments.ts'
import { anotherOrder, freshValue, workAndHandOver } from '../support/shop-steps.ts'

function setUp() {
  const shop = buildShop()
  const bench = addMeasuringInstruments(shop)
  const add = (changes: Partial<MeasuredValue> = {}) =>
    addMeasuredValue(shop.store, freshValue(shop, bench.dial, changes), actorOf(shop.cast.tess))
  return { shop, bench, add }
}
const faceOf = ({ seal }: Pick<Shop, 'seal'>) =>
  seal.components.find((one) => one.kind === 'rotating-face')!.id
const stageOf = ({ store, workOrder, cast }: Shop) =>
  requireWorkOrder(store, workOrder.number, cast.tess).stage

describe('adding a measured value', () => {
  test('keeps it whole, with who recorded it and when', () => {
    const { shop, bench, add } = setUp()
    const added = add({ note: 'at the sleeve' })
    expect(added).toMatchObject({
      ...freshValue(shop, bench.dial, { note: 'at the sleeve' }),
      recordedById: shop.cast.tess.id,
      recordedByName: 'Tess Turner',
      recordedAt: castAt,
      replacedById: null,
    })
    expect(listMeasuredValues(shop.store, shop.workOrder.id)).toEqual([added])
    expect(readEvidence(shop.store, shop.workOrder.id).measuredValues).toEqual([added])
  })

  test('moves the order to lapping where it was read on a face, and else not', () => {
    const { shop, add } = setUp()
    add()
    expect(stageOf(shop)).toBe('received')
    add({ characteristic: 'face-height', componentId: faceOf(shop) })
    expect(stageOf(shop)).toBe('lapping')
  })

  test('refuses a face of another seal, no face, and a face where there is none', () => {
    const { shop, add } = setUp()
    const other = addSeal(shop.store, newSeal(shop.customer.id, { serial: 'S-2' }), operator)
    const spring = shop.seal.components.find((one) => one.kind === 'spring')!.id
    for (const componentId of [faceOf({ seal: other }), spring, null]) {
      expect(() => add({ characteristic: 'roughness', componentId })).toThrow(
        'conflict: not-in-order',
      )
    }
    expect(() => add({ componentId: faceOf(shop) })).toThrow('conflict: not-in-order')
    expect(stageOf(shop)).toBe('received')
  })

  test('is refused where the order is not open', () => {
    const { shop, add } = setUp()
    workAndHandOver(shop)
    expect(() => add()).toThrow('conflict: not-open')
    expect(listMeasuredValues(shop.store, shop.workOrder.id)).toEqual([])
  })
})

describe('correcting a measured value', () => {
  test('keeps both, the earlier with what took its place', () => {
    const { shop, add } = setUp()
    const wrong = add()
    const right = add({ replacesId: wrong.id, reason: 'misread' })
    expect(
      listMeasuredValues(shop.store, shop.workOrder.id).map((one) => one.replacedById),
    ).toEqual([right.id, null])
  })

  test('happens once, and within the order', () => {
    const { shop, add } = setUp()
    const wrong = add()
    add({ replacesId: wrong.id, reason: 'misread' })
    expect(() => add({ replacesId: wrong.id, reason: 'again' })).toThrow('already-replaced')
    const other = anotherOrder(shop)
    const strange = { workOrderId: other.id, replacesId: wrong.id, reason: 'x' }
    expect(() => add(strange)).toThrow('not-in-order')
  })

  test('has a line of its own in the trail, which holds the record', () => {
    const { shop, add } = setUp()
    const wrong = add()
    add({ replacesId: wrong.id, reason: 'misread' })
    const acts = listAudit(shop.store, { limit: 10 }).items.map((one) => one.act)
    expect(acts).toEqual(expect.arrayContaining(['add-measured-value', 'correct-measured-value']))
    expect(verifyRecords(shop.store)).toEqual([])
    shop.store.raw.exec('DROP TRIGGER measured_value_no_update')
    shop.store.raw.exec("UPDATE measured_value SET value_um = 1 WHERE reason = 'misread'")
    expect(verifyRecords(shop.store)).toMatchObject([{ table: 'measured_value' }])
  })
})

test('the instrument in hand last is told for the like alone, while it is in service', () => {
  const { shop, bench, add } = setUp()
  const { store, cast } = shop
  const last = (as = cast.tess) => lastMeasuringInstrument(store, as.id, ['shaft-run-out'])
  expect(last()).toBeUndefined()
  add({ unit: 'graduations' })
  add({
    characteristic: 'roughness',
    componentId: faceOf(shop),
    instrumentId: bench.profilometer.id,
  })
  expect(last()).toEqual({ instrumentId: bench.dial.id, unit: 'graduations' })
  expect(last(cast.tom)).toBeUndefined()
  const withdrawal = { instrumentId: bench.dial.id, on: '2026-11-25', reason: 'x' }
  withdrawInstrument(store, withdrawal, operator)
  expect(last()).toBeUndefined()
})
