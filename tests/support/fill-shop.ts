import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { addHandOver } from '../../src/store/add-hand-over.ts'
import { addLimitSet } from '../../src/store/add-limit-set.ts'
import { addStaticTest } from '../../src/store/add-static-test.ts'
import { refuse } from '../../src/store/refuse.ts'
import { buildShop, newLimitSet, type Shop } from './build-shop.ts'
import { actorOf, operator } from './cast.ts'
import {
  anotherOrder,
  doTheWork,
  freshReading,
  freshTest,
  workAndHandOver,
  workAndRelease,
} from './shop-steps.ts'

/**
 * A shop with a row in every table of records: one order released with its certificate, one
 * refused, corrected and handed over again. The newest reading and test are corrections, and the
 * newest limit set is used by nobody yet.
 */
export function fillShop(shop: Shop = buildShop()): Shop {
  const { store, cast } = shop
  const [tess, ian] = [actorOf(cast.tess), actorOf(cast.ian)]
  workAndRelease(shop)
  const second = anotherOrder(shop)
  const handOver = workAndHandOver(shop, second)
  refuse(store, { handOverId: handOver.id, reason: 'seat is scratched', by: cast.ian }, ian)
  doTheWork(shop, second)
  const of = { workOrderId: second.id }
  const wrong = addFlatnessReading(store, freshReading(shop, 'stationary-seat', of), tess)
  const reading = { ...of, replacesId: wrong.id, reason: 'counted the wrong band' }
  addFlatnessReading(store, freshReading(shop, 'stationary-seat', reading), tess)
  const leak = addStaticTest(store, freshTest(shop, of), tess)
  addStaticTest(
    store,
    freshTest(shop, { ...of, replacesId: leak.id, reason: 'gauge misread' }),
    tess,
  )
  addHandOver(store, { workOrderId: second.id, note: 'second time' }, tess)
  const limits = newLimitSet().limits.map((one) => {
    return one.characteristic === 'static-drop' ? { ...one, startAtLeastKPaGauge: 170 } : one
  })
  addLimitSet(store, newLimitSet({ version: 2, datedOn: '2026-06-01', limits }), operator)
  return shop
}
