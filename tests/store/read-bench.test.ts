import { expect, test } from 'vitest'
import type { Bench } from '../../src/domain/bench.ts'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { moveWorkOrder } from '../../src/store/move-work-order.ts'
import { readBench } from '../../src/store/read-bench.ts'
import { refuse } from '../../src/store/refuse.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { actorOf, operator } from '../support/cast.ts'
import {
  anotherOrder,
  doTheWork,
  freshReading,
  workAndHandOver,
  workAndRelease,
} from '../support/shop-steps.ts'

const today = '2026-11-25'
const badly = [0, 90].map((directionDeg) => ({ directionDeg, bands: 5, bandsTyped: '5' }))
const show = (lines: Bench['waiting']) =>
  lines.map((one) => `${one.number.slice(-4)} ${one.whatNext}`)

function readBadly(shop: Shop, workOrderId: number, condition: 'as-found' | 'as-left') {
  const changes = { workOrderId, condition, directions: badly } as const
  addFlatnessReading(
    shop.store,
    freshReading(shop, 'rotating-face', changes),
    actorOf(shop.cast.tess),
  )
}

test('each order in the workshop stands in one list, with what it waits for', () => {
  const shop = buildShop() // 0001: just received
  const { store, cast } = shop
  anotherOrder(shop, { decontamination: 'not-stated' }) // 0002
  doTheWork(shop, anotherOrder(shop)) // 0003
  anotherOrder(shop, { dueOn: '2026-12-02' }) // 0004: in seven days
  anotherOrder(shop, { dueOn: '2026-11-24' }) // 0005: was yesterday
  const failing = anotherOrder(shop, { dueOn: '2026-11-24' }) // 0006
  readBadly(shop, failing.id, 'as-left')
  const refused = workAndHandOver(shop, anotherOrder(shop)) // 0007
  refuse(store, { handOverId: refused.id, reason: 'scratch', by: cast.ian }, actorOf(cast.ian))
  workAndHandOver(shop, anotherOrder(shop)) // 0008
  workAndRelease(shop, anotherOrder(shop)) // 0009: gone from the bench
  const withdrawn = {
    workOrderId: anotherOrder(shop).id,
    to: 'withdrawn',
    reason: 'scrap',
  } as const
  moveWorkOrder(store, withdrawn, operator) // 0010: gone too
  const bench = readBench(store, today)
  expect(show(bench.waiting)).toEqual(['0001 flatness', '0002 decontamination', '0003 hand-over'])
  expect(show(bench.dueSoon)).toEqual(['0005 flatness', '0004 flatness'])
  expect(show(bench.failed)).toEqual(['0006 rework', '0007 hand-over'])
  expect(show(bench.inspection)).toEqual(['0008 decision'])
  expect(bench.dueSoon.map((one) => one.isOverdue)).toEqual([true, false])
})

test('a worn face as found is no failure of the work', () => {
  const shop = buildShop()
  readBadly(shop, shop.workOrder.id, 'as-found')
  const { waiting, failed } = readBench(shop.store, today)
  expect(waiting.map((one) => one.isFailing)).toEqual([false])
  expect(failed).toEqual([])
})

test('an empty workshop has an empty bench', () => {
  const shop = buildShop()
  const gone = { workOrderId: shop.workOrder.id, to: 'withdrawn', reason: 'scrap' } as const
  moveWorkOrder(shop.store, gone, operator)
  expect(readBench(shop.store, today)).toEqual({
    waiting: [],
    dueSoon: [],
    failed: [],
    inspection: [],
  })
})
