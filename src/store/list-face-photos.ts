import { asc, eq, sql } from 'drizzle-orm'
import type { FacePhoto } from '../domain/face-photo.ts'
import type { FaceKind } from '../domain/seal.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { component } from './schema/component.ts'
import { facePhoto } from './schema/face-photo.ts'
import { storedFile } from './schema/stored-file.ts'

const photosOfOrder = prepared((store) =>
  store.db
    .select({ row: facePhoto, kind: component.kind, mediaType: storedFile.mediaType })
    .from(facePhoto)
    .innerJoin(component, eq(component.id, facePhoto.componentId))
    .innerJoin(storedFile, eq(storedFile.sha256, facePhoto.sha256))
    .where(eq(facePhoto.workOrderId, sql.placeholder('id')))
    .orderBy(asc(facePhoto.id))
    .prepare(),
)

/** The photographs of an order's faces, oldest first. */
export function listFacePhotos(store: Store, workOrderId: number): FacePhoto[] {
  return photosOfOrder(store)
    .all({ id: workOrderId })
    .map(({ row, kind, mediaType }) => ({ ...row, faceKind: kind as FaceKind, mediaType }))
}
