import { beforeEach, describe, expect, test } from 'vitest'
import { useFaults } from '../../src/domain/use-exception.ts'
import { addUseException } from '../../src/store/add-use-exception.ts'
import { answerUseException } from '../../src/store/answer-use-exception.ts'
import { listAudit } from '../../src/store/list-audit.ts'
import { listOpenUseExceptions } from '../../src/store/list-open-use-exceptions.ts'
import { listUseExceptions } from '../../src/store/list-use-exceptions.ts'
import { moveWorkOrder } from '../../src/store/move-work-order.ts'
import { verifyRecords } from '../../src/store/verify-records.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { actorOf, castAt, operator } from '../support/cast.ts'
import { anotherOrder } from '../support/shop-steps.ts'

let shop: Shop

beforeEach(() => {
  shop = buildShop()
})

const ask = (changes: Partial<Parameters<typeof addUseException>[1]> = {}) => {
  const { store, cast, gauge, workOrder } = shop
  const of = { workOrderId: workOrder.id, instrumentId: gauge.id, by: cast.tess }
  const wish = { fault: 'overdue', reason: 'the other one is away' } as const
  return addUseException(store, { ...wish, ...of, ...changes }, actorOf(cast.tess))
}
const said = { answer: 'allowed', validUntil: '2026-11-30', reason: 'compared today' } as const
const answer = (
  useExceptionId: number,
  changes: Partial<Parameters<typeof answerUseException>[1]> = {},
) => {
  const { store, cast } = shop
  const fresh = { ...said, useExceptionId, by: cast.ian, ...changes }
  return answerUseException(store, fresh, actorOf(fresh.by))
}

describe('a request for an exception', () => {
  test('stands with its order, open until it is answered', () => {
    const { store, cast, gauge, workOrder } = shop
    const asked = ask()
    expect(asked).toEqual({
      id: 1,
      workOrderId: workOrder.id,
      workOrderNumber: workOrder.number,
      instrumentId: gauge.id,
      instrumentNumber: 'G-01',
      fault: 'overdue',
      reason: 'the other one is away',
      askedById: cast.tess.id,
      askedByName: 'Tess Turner',
      askedAt: castAt,
      answer: null,
    })
    expect(listUseExceptions(store, workOrder.id)).toEqual([asked])
    expect(listOpenUseExceptions(store)).toEqual([asked])
  })

  test('may be for every fault that an instrument can have', () => {
    for (const fault of useFaults) expect(ask({ fault }).fault).toBe(fault)
    expect(listOpenUseExceptions(shop.store)).toHaveLength(useFaults.length)
  })

  test('belongs to one order alone', () => {
    const second = anotherOrder(shop)
    ask()
    expect(listUseExceptions(shop.store, second.id)).toEqual([])
    ask({ workOrderId: second.id })
    expect(listOpenUseExceptions(shop.store).map((one) => one.workOrderNumber)).toEqual([
      shop.workOrder.number,
      second.number,
    ])
  })

  test('is made once while it waits, and again after its answer', () => {
    ask()
    expect(() => ask()).toThrow('conflict: already-asked')
    expect(ask({ fault: 'out-of-range' }).id).toBe(2)
    answer(1, { answer: 'declined', validUntil: null })
    expect(ask().id).toBe(3)
  })

  test('needs an order on the bench and an instrument that is there', () => {
    const { store, workOrder } = shop
    expect(() => ask({ workOrderId: 99 })).toThrow('not-found: no-work-order')
    expect(() => ask({ instrumentId: 99 })).toThrow('not-found: no-instrument')
    moveWorkOrder(store, { workOrderId: workOrder.id, to: 'withdrawn', reason: 'gone' }, operator)
    expect(() => ask()).toThrow('conflict: not-open')
    expect(listOpenUseExceptions(store)).toEqual([])
  })
})

describe('its answer', () => {
  test('stands with the request, which waits no longer', () => {
    ask()
    const answered = answer(1)
    const by = { byName: 'Ian Ives', at: castAt }
    expect(answered.answer).toEqual({ ...said, ...by })
    expect(listUseExceptions(shop.store, shop.workOrder.id)).toEqual([answered])
    expect(listOpenUseExceptions(shop.store)).toEqual([])
  })

  test('is given once: the second inspector hears of the first', () => {
    ask()
    answer(1, { answer: 'declined', validUntil: null })
    expect(() => answer(1, { by: shop.cast.ina })).toThrow('conflict: already-answered')
    expect(listUseExceptions(shop.store, shop.workOrder.id)[0]?.answer?.answer).toBe('declined')
  })

  test('is an inspector’s, and never of who asked', () => {
    const { store, cast } = shop
    ask({ by: cast.ian })
    expect(() => answer(1)).toThrow('forbidden: own-request')
    expect(() => answer(1, { by: cast.tom })).toThrow('forbidden: not-inspector')
    expect(() => answer(1, { by: cast.mo })).toThrow('forbidden: not-inspector')
    expect(() => answer(1, { by: { ...cast.ina, isActive: false } })).toThrow('not-inspector')
    expect(() => answer(9, { by: cast.ina })).toThrow('not-found: no-use-exception')
    expect(listOpenUseExceptions(store)).toHaveLength(1)
    expect(answer(1, { by: cast.ina }).answer?.byName).toBe('Ina Irwin')
  })
})

test('both have their line in the trail, and an edited one is found', () => {
  const { store, workOrder } = shop
  ask()
  answer(1)
  const acts = listAudit(store, { subject: workOrder.number, limit: 50 }).items.map(
    (one) => one.act,
  )
  expect(acts).toEqual(expect.arrayContaining(['ask-use-exception', 'answer-use-exception']))
  expect(verifyRecords(store)).toEqual([])
  store.raw.exec('DROP TRIGGER use_exception_no_update')
  store.raw.exec('DROP TRIGGER use_exception_answer_no_update')
  store.raw.exec("UPDATE use_exception SET fault = 'withdrawn'")
  store.raw.exec("UPDATE use_exception_answer SET valid_until = '2027-11-30'")
  expect(verifyRecords(store)).toMatchObject([
    { kind: 'record-changed', table: 'use_exception', fields: ['fault'] },
    { kind: 'record-changed', table: 'use_exception_answer', fields: ['validUntil'] },
  ])
})
