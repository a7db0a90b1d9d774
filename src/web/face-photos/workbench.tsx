import { FacePhotoPage } from '../../../views/face-photo-page.tsx'
import type { AppContext } from '../context.ts'
import { frameOf, sendPage } from '../send-page.ts'
import type { PhotoDesk } from './desk.ts'
import { type DrawnPhoto, facePhotoForm } from './face-photo-form.ts'

/** The page of a photograph: fresh, filled, or with what is wrong with it. */
export function sendPhotoPage(
  c: AppContext,
  desk: PhotoDesk,
  drawn: DrawnPhoto,
  status: 200 | 422 = 200,
): Promise<Response> {
  const frame = frameOf(c, [
    'face-photo',
    'face-photo-zoom',
    'face-photo-edges',
    'face-photo-marks',
    'face-photo-mark-tools',
    'face-photo-grid',
  ])
  return sendPage(c, <FacePhotoPage frame={frame} form={facePhotoForm(desk, drawn)} />, status)
}
