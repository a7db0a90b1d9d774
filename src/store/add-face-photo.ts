import type { Actor } from '../domain/actor.ts'
import type { FacePhoto } from '../domain/face-photo.ts'
import { addAudit } from './add-audit.ts'
import { addStoredFile } from './add-stored-file.ts'
import type { Store } from './open.ts'
import { requireFace } from './require-face.ts'
import { requireFacePhoto } from './require-face-photo.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireUserId } from './require-user-id.ts'
import { facePhoto } from './schema/face-photo.ts'

export type FreshFacePhoto = Pick<
  FacePhoto,
  'workOrderId' | 'componentId' | 'mediaType' | 'widthPx' | 'heightPx' | 'foundEdges' | 'note'
> & { readonly bytes: Buffer }

/**
 * Keeps a photograph of the bands of a face.
 * @throws AppError conflict `not-open`, `not-in-order` for a face of another order
 */
export function addFacePhoto(store: Store, fresh: FreshFacePhoto, actor: Actor): FacePhoto {
  const recordedById = requireUserId(actor, 'addFacePhoto')
  const { bytes, mediaType, ...row } = fresh
  return store.transact(() => {
    const order = requireOpenOrder(store, fresh.workOrderId)
    requireFace(store, fresh.componentId, order.sealId)
    const sha256 = addStoredFile(store, { bytes, mediaType }, actor)
    const recorded = { recordedById, recordedByName: actor.name, recordedAt: actor.at }
    const { id } = store.db
      .insert(facePhoto)
      .values({ ...row, sha256, ...recorded })
      .returning({ id: facePhoto.id })
      .get()
    const added = requireFacePhoto(store, order.id, id)
    addAudit(store, actor, { act: 'add-face-photo', subject: order.number, detail: added })
    return added
  })
}
