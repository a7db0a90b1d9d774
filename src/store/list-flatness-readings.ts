import { asc, eq, sql } from 'drizzle-orm'
import { alias } from 'drizzle-orm/sqlite-core'
import type { DirectionReading, FlatnessReading } from '../domain/flatness.ts'
import { flatnessSees } from '../domain/flatness-sees.ts'
import type { FaceKind } from '../domain/seal.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { component } from './schema/component.ts'
import { flatnessDirection } from './schema/flatness-direction.ts'
import { flatnessReading } from './schema/flatness-reading.ts'
import { wholeFace } from './schema/whole-face.ts'

const later = alias(flatnessReading, 'later')

const readingsOfOrder = prepared((store) =>
  store.db
    .select({
      row: flatnessReading,
      kind: component.kind,
      replacedById: later.id,
      wholeFace: wholeFace.details,
    })
    .from(flatnessReading)
    .innerJoin(component, eq(component.id, flatnessReading.componentId))
    .leftJoin(later, eq(later.replacesId, flatnessReading.id))
    .leftJoin(wholeFace, eq(wholeFace.flatnessReadingId, flatnessReading.id))
    .where(eq(flatnessReading.workOrderId, sql.placeholder('id')))
    .orderBy(asc(flatnessReading.id))
    .prepare(),
)

const directionsOfOrder = prepared((store) =>
  store.db
    .select({ row: flatnessDirection })
    .from(flatnessDirection)
    .innerJoin(flatnessReading, eq(flatnessReading.id, flatnessDirection.flatnessReadingId))
    .where(eq(flatnessReading.workOrderId, sql.placeholder('id')))
    .orderBy(asc(flatnessDirection.id))
    .prepare(),
)

/** All of an order, replaced ones too, oldest first. */
export function listFlatnessReadings(store: Store, workOrderId: number): FlatnessReading[] {
  const directions = new Map<number, DirectionReading[]>()
  for (const { row } of directionsOfOrder(store).all({ id: workOrderId })) {
    const { directionDeg, bands, bandsTyped } = row
    const known = directions.get(row.flatnessReadingId) ?? []
    directions.set(row.flatnessReadingId, [...known, { directionDeg, bands, bandsTyped }])
  }
  return readingsOfOrder(store)
    .all({ id: workOrderId })
    .map(({ row, kind, replacedById, wholeFace: whole }) => ({
      ...row,
      faceKind: kind as FaceKind,
      sees: flatnessSees(row.method),
      replacedById,
      wholeFace: whole,
      directions: directions.get(row.id) ?? [],
    }))
}
