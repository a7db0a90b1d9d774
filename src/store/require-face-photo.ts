import { AppError } from '../domain/app-error.ts'
import type { FacePhoto } from '../domain/face-photo.ts'
import { listFacePhotos } from './list-face-photos.ts'
import type { Store } from './open.ts'

/** @throws AppError not-found `no-face-photo` where the order has no such photograph */
export function requireFacePhoto(store: Store, workOrderId: number, id: number): FacePhoto {
  const found = listFacePhotos(store, workOrderId).find((one) => one.id === id)
  if (found === undefined) throw new AppError('not-found', 'no-face-photo')
  return found
}
