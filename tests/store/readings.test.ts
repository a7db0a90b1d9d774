import { describe, expect, test } from 'vitest'
import { currentOnly } from '../../src/domain/current-only.ts'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { addSeal } from '../../src/store/add-seal.ts'
import { addStaticTest } from '../../src/store/add-static-test.ts'
import { lastInstruments } from '../../src/store/last-instruments.ts'
import { listFlatnessReadings } from '../../src/store/list-flatness-readings.ts'
import { listStageChanges } from '../../src/store/list-stage-changes.ts'
import { listStaticTests } from '../../src/store/list-static-tests.ts'
import { moveWorkOrder } from '../../src/store/move-work-order.ts'
import { readEvidence } from '../../src/store/read-evidence.ts'
import { refuse } from '../../src/store/refuse.ts'
import { requireWorkOrder } from '../../src/store/require-work-order.ts'
import { withdrawInstrument } from '../../src/store/withdraw-instrument.ts'
import { addInCalibration, buildShop, newSeal, type Shop } from '../support/build-shop.ts'
import { actorOf, operator } from '../support/cast.ts'
import { anotherOrder, freshReading, freshTest, workAndHandOver } from '../support/shop-steps.ts'

const stageOf = ({ store, workOrder, cast }: Shop) =>
  requireWorkOrder(store, workOrder.number, cast.tess).stage
const read = (shop: Shop, changes: Parameters<typeof freshReading>[2] = {}) =>
  addFlatnessReading(
    shop.store,
    freshReading(shop, 'rotating-face', changes),
    actorOf(shop.cast.tess),
  )
const hold = (shop: Shop, changes: Parameters<typeof freshTest>[1] = {}) =>
  addStaticTest(shop.store, freshTest(shop, changes), actorOf(shop.cast.tess))

describe('a light-band reading', () => {
  test('comes back as it was recorded, bit for bit, with who and when', () => {
    const shop = buildShop()
    const fresh = freshReading(shop, 'rotating-face', { temperatureC: 20.1, soakMin: 0.1 + 0.2 })
    const added = addFlatnessReading(shop.store, fresh, actorOf(shop.cast.tess))
    expect(added).toEqual({
      ...fresh,
      id: 1,
      sees: 'taper',
      faceKind: 'rotating-face',
      recordedById: shop.cast.tess.id,
      recordedByName: 'Tess Turner',
      recordedAt: '2026-11-25T09:00:00.000Z',
      replacedById: null,
    })
    expect(listFlatnessReadings(shop.store, shop.workOrder.id)).toEqual([added])
  })

  test('is recorded of a face that can not be read, without figures', () => {
    const shop = buildShop()
    const added = read(shop, { pattern: 'unreadable', directions: [] })
    expect(added).toMatchObject({ flatnessUm: null, bands: null, directions: [] })
  })

  test('keeps a cause beside an unreadable face alone', () => {
    const shop = buildShop()
    const unreadable = { pattern: 'unreadable', directions: [] } as const
    expect(read(shop, { ...unreadable, unreadableCause: 'matte' }).unreadableCause).toBe('matte')
    expect(() => read(shop, { unreadableCause: 'matte' })).toThrow('CHECK constraint failed')
  })

  test('moves the order to lapping, once', () => {
    const shop = buildShop()
    read(shop)
    expect(stageOf(shop)).toBe('lapping')
    read(shop)
    hold(shop)
    expect(stageOf(shop)).toBe('testing')
    read(shop)
    const steps = listStageChanges(shop.store, shop.workOrder.id).map((one) => one.to)
    expect(steps).toEqual(['received', 'lapping', 'testing', 'lapping'])
  })

  test('is taken after a refusal, and not after hand-over, release or withdrawal', () => {
    const shop = buildShop()
    const handOver = workAndHandOver(shop)
    expect(() => read(shop)).toThrow('conflict: not-open')
    expect(() => hold(shop)).toThrow('conflict: not-open')
    const { ian } = shop.cast
    refuse(shop.store, { handOverId: handOver.id, reason: 'scratch', by: ian }, actorOf(ian))
    read(shop)
    expect(stageOf(shop)).toBe('lapping')
    const out = { workOrderId: shop.workOrder.id, to: 'withdrawn', reason: 'scrap' } as const
    moveWorkOrder(shop.store, out, operator)
    expect(() => read(shop)).toThrow('conflict: not-open')
  })

  test("refuses another seal's face, and a component that has none", () => {
    const shop = buildShop()
    const other = addSeal(shop.store, newSeal(shop.customer.id, { serial: 'S-2' }), operator)
    const spring = shop.seal.components.find((one) => one.kind === 'spring')
    for (const componentId of [other.components[0]?.id, spring?.id, 999]) {
      expect(() => read(shop, { componentId: componentId! })).toThrow('conflict: not-in-order')
    }
  })

  test('is signed by a user, never by the operator at the machine', () => {
    const shop = buildShop()
    expect(() => addFlatnessReading(shop.store, freshReading(shop), operator)).toThrow(
      'addFlatnessReading requires an actor who is a user, got operator',
    )
    expect(() => addStaticTest(shop.store, freshTest(shop), operator)).toThrow(RangeError)
  })

  test.each([
    ['flatnessUm', Number.POSITIVE_INFINITY],
    ['flatnessUm', Number.NaN],
    ['wavelengthNm', Number.NaN],
    ['bandHeightUm', 0],
  ])('is refused with %s of %s by the database itself', (name, value) => {
    expect(() => read(buildShop(), { [name]: value })).toThrow(/constraint failed/)
  })
})

describe('a correction', () => {
  test('replaces one record of the order, once, and leaves both to be seen', () => {
    const shop = buildShop()
    const wrong = read(shop)
    const right = read(shop, { replacesId: wrong.id, reason: 'counted on the wrong side' })
    const readings = listFlatnessReadings(shop.store, shop.workOrder.id)
    expect(readings.map((one) => one.replacedById)).toEqual([right.id, null])
    expect(currentOnly(readings)).toEqual([right])
    expect(() => read(shop, { replacesId: wrong.id, reason: 'again' })).toThrow('already-replaced')
    read(shop, { replacesId: right.id, reason: 'and again' })
  })

  test("refuses another order's record, and one that is not there", () => {
    const shop = buildShop()
    const other = { ...shop, workOrder: anotherOrder(shop) }
    const strangerReading = read(other)
    const strangerTest = hold(other)
    for (const replacesId of [strangerReading.id, 999]) {
      expect(() => read(shop, { replacesId, reason: 'x' })).toThrow('conflict: not-in-order')
    }
    for (const replacesId of [strangerTest.id, 999]) {
      expect(() => hold(shop, { replacesId, reason: 'x' })).toThrow('conflict: not-in-order')
    }
  })

  test('of a static test works the same', () => {
    const shop = buildShop()
    const wrong = hold(shop)
    const right = hold(shop, { replacesId: wrong.id, reason: 'gauge misread' })
    const tests = listStaticTests(shop.store, shop.workOrder.id)
    expect(tests.map((one) => one.replacedById)).toEqual([right.id, null])
    expect(() => hold(shop, { replacesId: wrong.id, reason: 'x' })).toThrow('already-replaced')
  })

  test('without a reason is refused by the database itself', () => {
    const shop = buildShop()
    const wrong = read(shop)
    expect(() => read(shop, { replacesId: wrong.id })).toThrow('CHECK constraint failed')
  })
})

test('a static test comes back as it was recorded, bit for bit, with the text as typed', () => {
  const shop = buildShop()
  const fresh = freshTest(shop, { volumeL: 2.1, note: 'äöü ≤ µ' })
  const added = addStaticTest(shop.store, fresh, actorOf(shop.cast.tom))
  expect(added).toMatchObject({ ...fresh, recordedByName: 'Tom Tiller', replacedById: null })
  expect(listStaticTests(shop.store, shop.workOrder.id)).toEqual([added])
  expect(stageOf(shop)).toBe('testing')
})

test('the instruments used last are remembered for each user, unless they were withdrawn', () => {
  const shop = buildShop()
  const { store, cast, lamp, flat, gauge, thermometer } = shop
  const none = {
    lampInstrumentId: null,
    flatInstrumentId: null,
    gaugeInstrumentId: null,
    thermometerInstrumentId: null,
  }
  expect(lastInstruments(store, cast.tess.id)).toEqual(none)
  read(shop)
  const second = addInCalibration(store, { kind: 'lamp', number: 'L-02', lampId: 'sodium' })
  read(shop, { lampInstrumentId: second.id })
  hold(shop)
  expect(lastInstruments(store, cast.tess.id)).toEqual({
    lampInstrumentId: second.id,
    flatInstrumentId: flat.id,
    gaugeInstrumentId: gauge.id,
    thermometerInstrumentId: thermometer.id,
  })
  expect(lastInstruments(store, cast.tom.id)).toEqual(none)
  withdrawInstrument(store, { instrumentId: second.id, on: '2026-11-25', reason: 'x' }, operator)
  expect(lastInstruments(store, cast.tess.id).lampInstrumentId).toBeNull()
  expect(lamp.id).not.toBe(second.id)
})

test('the evidence of an order holds everything recorded about it and nothing of another', () => {
  const shop = buildShop()
  const other = anotherOrder(shop)
  workAndHandOver(shop, other)
  const wrong = read(shop)
  read(shop, { replacesId: wrong.id, reason: 'misread' })
  const evidence = readEvidence(shop.store, shop.workOrder.id)
  expect(evidence).toMatchObject({
    customer: shop.customer,
    equipment: shop.equipment,
    seal: shop.seal,
    limitSet: shop.limitSet,
    handOver: null,
    decisions: [],
    staticTests: [],
  })
  expect(evidence.flatnessReadings.map((one) => one.id)).toEqual([wrong.id, wrong.id + 1])
  expect(readEvidence(shop.store, other.id).flatnessReadings).toHaveLength(2)
  expect(readEvidence(shop.store, other.id).handOver?.workOrderId).toBe(other.id)
  expect(() => readEvidence(shop.store, 99)).toThrow('not-found: no-work-order')
})
