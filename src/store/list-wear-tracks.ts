import { asc, eq, sql } from 'drizzle-orm'
import { alias } from 'drizzle-orm/sqlite-core'
import type { WearTrack } from '../domain/wear-track.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { wearTrack } from './schema/wear-track.ts'

const later = alias(wearTrack, 'later')

const ofOrder = prepared((store) =>
  store.db
    .select({ row: wearTrack, replacedById: later.id })
    .from(wearTrack)
    .leftJoin(later, eq(later.replacesId, wearTrack.id))
    .where(eq(wearTrack.workOrderId, sql.placeholder('id')))
    .orderBy(asc(wearTrack.id))
    .prepare(),
)

/** All of an order, replaced ones too, oldest first. */
export function listWearTracks(store: Store, workOrderId: number): WearTrack[] {
  return ofOrder(store)
    .all({ id: workOrderId })
    .map(({ row, replacedById }) => ({ ...row, replacedById }))
}
