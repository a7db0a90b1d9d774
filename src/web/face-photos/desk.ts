import type { FacePhoto } from '../../domain/face-photo.ts'
import type { Component } from '../../domain/seal.ts'
import { listFacePhotos } from '../../store/list-face-photos.ts'
import { requireFacePhoto } from '../../store/require-face-photo.ts'
import type { AppContext } from '../context.ts'
import { type FlatnessDesk, openFlatnessDesk } from '../flatness/desk.ts'
import { idOf } from '../id-of.ts'

/** All that reading a photograph needs to know of it and of its order. */
export type PhotoDesk = FlatnessDesk & {
  readonly photo: FacePhoto
  /** Of the order, oldest first. */
  readonly photos: readonly FacePhoto[]
  readonly face: Component
}

/** @throws AppError not-found where the order or the photograph is not there */
export function openPhotoDesk(c: AppContext): PhotoDesk {
  const { store } = c.var.shop
  const desk = openFlatnessDesk(c)
  const photos = listFacePhotos(store, desk.workOrder.id)
  const id = idOf(c.req.param('id'), 'no-face-photo')
  const photo = requireFacePhoto(store, desk.workOrder.id, id)
  const face = desk.components.find((one) => one.id === photo.componentId)
  if (face === undefined) throw new RangeError('openPhotoDesk requires the face of a photograph')
  return { ...desk, photo, photos, face }
}
