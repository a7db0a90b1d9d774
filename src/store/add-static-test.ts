import type { Actor } from '../domain/actor.ts'
import type { StaticTest } from '../domain/static-test.ts'
import { addAudit } from './add-audit.ts'
import { listStaticTests } from './list-static-tests.ts'
import { moveToBench } from './move-to-bench.ts'
import type { Store } from './open.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireReplaceable } from './require-replaceable.ts'
import { requireUserId } from './require-user-id.ts'
import { staticTest } from './schema/static-test.ts'

/** A test with everything computed, before it stands in the record. */
export type FreshStaticTest = Omit<
  StaticTest,
  'id' | 'recordedById' | 'recordedByName' | 'recordedAt' | 'replacedById'
>

/**
 * Records a static test and moves the order to testing.
 * @throws AppError conflict `not-open`, `not-in-order`, `already-replaced`
 */
export function addStaticTest(store: Store, fresh: FreshStaticTest, actor: Actor): StaticTest {
  const recordedById = requireUserId(actor, 'addStaticTest')
  return store.transact(() => {
    const order = requireOpenOrder(store, fresh.workOrderId)
    if (fresh.replacesId !== null) {
      requireReplaceable(listStaticTests(store, order.id), fresh.replacesId)
    }
    const recorded = { recordedById, recordedByName: actor.name, recordedAt: actor.at }
    const row = store.db
      .insert(staticTest)
      .values({ ...fresh, ...recorded })
      .returning()
      .get()
    moveToBench(store, order, 'testing', actor)
    const added = { ...row, replacedById: null }
    const act = fresh.replacesId === null ? 'add-static-test' : 'correct-static-test'
    addAudit(store, actor, { act, subject: order.number, detail: added })
    return added
  })
}
