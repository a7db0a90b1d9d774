import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { MeasuredValue } from '../domain/measured-value.ts'
import { isOfFace } from '../domain/parse-measured-figures.ts'
import { addAudit } from './add-audit.ts'
import { listMeasuredValues } from './list-measured-values.ts'
import { moveToBench } from './move-to-bench.ts'
import type { Store } from './open.ts'
import { requireFace } from './require-face.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireOutOfQuarantine } from './require-out-of-quarantine.ts'
import { requireReplaceable } from './require-replaceable.ts'
import { requireUserId } from './require-user-id.ts'
import { measuredValue } from './schema/measured-value.ts'

/** A value with everything computed, before it stands in the record. */
export type FreshMeasuredValue = Omit<
  MeasuredValue,
  'id' | 'recordedById' | 'recordedByName' | 'recordedAt' | 'replacedById'
>

/**
 * Records a value read with an instrument. What is read on a face moves the order to lapping, as a
 * light-band reading does; what is read at the machine leaves it where it stands.
 * @throws AppError conflict `not-open`, `in-quarantine` for what is read on a face, `not-in-order`
 *   (the face or the replaced value belongs to another order), `already-replaced`
 */
export function addMeasuredValue(
  store: Store,
  fresh: FreshMeasuredValue,
  actor: Actor,
): MeasuredValue {
  const recordedById = requireUserId(actor, 'addMeasuredValue')
  return store.transact(() => {
    const order = requireOpenOrder(store, fresh.workOrderId)
    if (isOfFace(fresh.characteristic)) requireOutOfQuarantine(order)
    requirePlace(store, fresh, order.sealId)
    if (fresh.replacesId !== null) {
      requireReplaceable(listMeasuredValues(store, order.id), fresh.replacesId)
    }
    const recorded = { recordedById, recordedByName: actor.name, recordedAt: actor.at }
    const row = store.db
      .insert(measuredValue)
      .values({ ...fresh, ...recorded })
      .returning()
      .get()
    if (isOfFace(fresh.characteristic)) moveToBench(store, order, 'lapping', actor)
    const added = { ...row, replacedById: null }
    const act = fresh.replacesId === null ? 'add-measured-value' : 'correct-measured-value'
    addAudit(store, actor, { act, subject: order.number, detail: added })
    return added
  })
}

function requirePlace(store: Store, fresh: FreshMeasuredValue, sealId: number): void {
  const { characteristic, componentId } = fresh
  if (isOfFace(characteristic) !== (componentId !== null)) {
    throw new AppError('conflict', 'not-in-order')
  }
  if (componentId !== null) requireFace(store, componentId, sealId)
}
