import type { FacePhotoUpload } from '../../../views/face-photo/page-props.ts'
import { FacePhotoFormPage } from '../../../views/face-photo-form-page.tsx'
import type { AppContext } from '../context.ts'
import type { FlatnessDesk } from '../flatness/desk.ts'
import { faceChoices } from '../flatness/form-page.tsx'
import { frameOf, sendPage } from '../send-page.ts'

/** The page that asks for a photograph, fresh or with what is wrong with it. */
export function sendUploadPage(
  c: AppContext,
  desk: FlatnessDesk,
  drawn: Pick<FacePhotoUpload, 'faceId' | 'note' | 'formKey' | 'faults'>,
): Promise<Response> {
  const { workOrder, seal } = desk
  const upload: FacePhotoUpload = {
    ...drawn,
    orderNumber: workOrder.number,
    sealSerial: seal.serial,
    faces: faceChoices(desk),
  }
  const status = drawn.faults.length > 0 ? 422 : 200
  return sendPage(
    c,
    <FacePhotoFormPage frame={frameOf(c, ['face-photo-upload'])} upload={upload} />,
    status,
  )
}
