import { describe, expect, test } from 'vitest'
import type { LimitSet } from '../../src/domain/limit-set.ts'
import { allStages, type Stage, stageTransitions } from '../../src/domain/stage.ts'
import { addLimitSet } from '../../src/store/add-limit-set.ts'
import { addLimitSetStep } from '../../src/store/add-limit-set-step.ts'
import { addSeal } from '../../src/store/add-seal.ts'
import { addWorkOrder } from '../../src/store/add-work-order.ts'
import { listStageChanges } from '../../src/store/list-stage-changes.ts'
import { moveWorkOrder } from '../../src/store/move-work-order.ts'
import { requireWorkOrder } from '../../src/store/require-work-order.ts'
import { stateDecontamination } from '../../src/store/state-decontamination.ts'
import {
  approved,
  buildShop,
  newLimitSet,
  newSeal,
  newWorkOrder,
  type Shop,
} from '../support/build-shop.ts'
import { actorOf, operator } from '../support/cast.ts'
import { anotherOrder } from '../support/shop-steps.ts'

describe('receiving a seal', () => {
  test('gives the next number of the year of receipt', () => {
    const shop = buildShop()
    expect(shop.workOrder.number).toBe('W-2026-0001')
    expect(anotherOrder(shop).number).toBe('W-2026-0002')
    const nextYear = anotherOrder(shop, { receivedAt: '2027-01-01T00:00:00.000Z' })
    expect(nextYear.number).toBe('W-2027-0001')
    expect(anotherOrder(shop).number).toBe('W-2026-0003')
  })

  test('leaves no gap in the numbers when an order fails', () => {
    const shop = buildShop()
    expect(() => anotherOrder(shop, { limitSetId: 99 })).toThrow('not-found: no-limit-set')
    expect(() => anotherOrder(shop, { sealId: 99 })).toThrow('not-found: no-seal')
    expect(() =>
      shop.store.transact(() => {
        anotherOrder(shop)
        throw new Error('later fault')
      }),
    ).toThrow('later fault')
    expect(anotherOrder(shop).number).toBe('W-2026-0002')
  })

  test('stands as received, with its first step in the list', () => {
    const { store, workOrder } = buildShop()
    expect(workOrder.stage).toBe('received')
    expect(listStageChanges(store, workOrder.id)).toMatchObject([
      { from: null, to: 'received', byName: 'operator' },
    ])
  })

  test("refuses another customer's seal", () => {
    const { store, cast, customer, limitSet } = buildShop()
    const seal = addSeal(store, newSeal(cast.olga.customerId ?? 0), operator)
    const mixed = newWorkOrder({
      customerId: customer.id,
      sealId: seal.id,
      limitSetId: limitSet.id,
    })
    expect(() => addWorkOrder(store, mixed, operator)).toThrow('not-found: no-seal')
  })
})

describe('the limit set of an order', () => {
  const refusal = 'conflict: limit-set-not-offered'
  const retire = ({ store, cast }: Shop, { id }: LimitSet) => {
    const step = { limitSetId: id, step: 'retired', effectiveOn: '2026-11-25' } as const
    addLimitSetStep(store, { ...step, reason: 'Withdrawn.', by: cast.ian }, actorOf(cast.ian))
  }

  test('is looked at again as the order is stored: someone may have retired it since', () => {
    const shop = buildShop()
    retire(shop, shop.limitSet)
    expect(() => anotherOrder(shop)).toThrow(refusal)
    // What was received on the day before stands, and can be entered late.
    expect(anotherOrder(shop, { receivedAt: '2026-11-24T09:00:00.000Z' }).stage).toBe('received')
  })

  test('is no draft, none that comes into force later, and none with a newer version', () => {
    const shop = buildShop()
    const { store, cast } = shop
    const next = addLimitSet(store, newLimitSet({ version: 2, datedOn: '2026-11-26' }), operator)
    expect(() => anotherOrder(shop, { limitSetId: next.id })).toThrow(refusal)
    approved(store, next, cast.ian)
    expect(() => anotherOrder(shop, { limitSetId: next.id })).toThrow(refusal)
    expect(anotherOrder(shop).stage).toBe('received')
    const receivedAt = '2026-11-26T09:00:00.000Z'
    expect(() => anotherOrder(shop, { receivedAt })).toThrow(refusal)
    expect(anotherOrder(shop, { receivedAt, limitSetId: next.id }).stage).toBe('received')
  })
})

describe('a work order', () => {
  test('is not found by a stranger, as one that is not there', () => {
    const { store, cast, workOrder } = buildShop()
    for (const viewer of [cast.tess, cast.ian, cast.mo, cast.cora]) {
      expect(requireWorkOrder(store, workOrder.number, viewer)).toEqual(workOrder)
    }
    const refusal = 'not-found: no-work-order'
    expect(() => requireWorkOrder(store, workOrder.number, cast.olga)).toThrow(refusal)
    expect(() => requireWorkOrder(store, 'W-2026-9999', cast.tess)).toThrow(refusal)
  })
})

const move = (shop: Shop, to: Stage, reason = '') =>
  moveWorkOrder(shop.store, { workOrderId: shop.workOrder.id, to, reason }, actorOf(shop.cast.tess))

describe('moving a work order by hand', () => {
  test('goes where the stage may go, and keeps each step', () => {
    const shop = buildShop()
    expect(move(shop, 'stripped').stage).toBe('stripped')
    expect(move(shop, 'withdrawn', 'customer scraps it').stage).toBe('withdrawn')
    expect(listStageChanges(shop.store, shop.workOrder.id).slice(1)).toMatchObject([
      { from: 'received', to: 'stripped', byName: 'Tess Turner' },
      { from: 'stripped', to: 'withdrawn', reason: 'customer scraps it' },
    ])
  })

  test.each(allStages)('from received to %s follows the table of stages', (to) => {
    const shop = buildShop()
    if (stageTransitions.received.includes(to)) expect(move(shop, to, 'why').stage).toBe(to)
    else expect(() => move(shop, to, 'why')).toThrow('conflict: stage-not-next')
  })

  test.each(['handed-over', 'released', 'refused'] as const)('never signs: not to %s', (to) => {
    const shop = buildShop()
    move(shop, 'lapping')
    expect(() => move(shop, to, 'why')).toThrow('conflict: stage-not-next')
  })

  test('asks for a reason where the order is withdrawn', () => {
    expect(() => move(buildShop(), 'withdrawn', '  ')).toThrow('invalid: reason-needed')
  })

  test('does not open a seal of which nobody has said that it is clean', () => {
    const shop = buildShop()
    const order = anotherOrder(shop, { decontamination: 'not-stated' })
    const dirty = { ...shop, workOrder: order }
    for (const to of ['stripped', 'lapping', 'testing'] as const) {
      expect(() => move(dirty, to), to).toThrow('conflict: decontamination-not-stated')
    }
    const stated = {
      workOrderId: order.id,
      decontamination: 'stated-clean',
      lastFluid: 'milk',
    } as const
    expect(stateDecontamination(shop.store, stated, operator).lastFluid).toBe('milk')
    expect(move(dirty, 'stripped').stage).toBe('stripped')
  })
})

test('decontamination is not restated once the order has left', () => {
  const shop = buildShop()
  move(shop, 'withdrawn', 'scrap')
  const stated = { decontamination: 'not-needed', lastFluid: '' } as const
  expect(() =>
    stateDecontamination(shop.store, { workOrderId: shop.workOrder.id, ...stated }, operator),
  ).toThrow('conflict: not-open')
})
