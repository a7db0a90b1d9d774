import type { FacePhotoValues } from '../../../views/face-photo/form-values.ts'
import type { FacePhotoForm } from '../../../views/face-photo/page-props.ts'
import type { Fault } from '../../domain/fault.ts'
import type { FlatnessReading } from '../../domain/flatness.ts'
import type { WholeFaceAnswer } from '../../domain/whole-face-answer.ts'
import type { PhotoDesk } from './desk.ts'

/** What of the workbench changes from one drawing to the next. */
export type DrawnPhoto = {
  readonly values: FacePhotoValues
  readonly formKey: string
  readonly faults: readonly Fault[]
  readonly answer: WholeFaceAnswer | null
  readonly replaced: FlatnessReading | undefined
}

/** All that the page of a photograph needs. */
export function facePhotoForm(desk: PhotoDesk, drawn: DrawnPhoto): FacePhotoForm {
  const { workOrder, seal, limitSet, photo, photos, face } = desk
  const { number: orderNumber } = workOrder
  return {
    ...drawn,
    replaced: drawn.replaced ?? null,
    orderNumber,
    sealSerial: seal.serial,
    limitSetName: limitSet.name,
    photo,
    pictureHref: `/work-orders/${orderNumber}/face-photos/${photo.id}/picture`,
    face,
    others: photos.filter((one) => one.componentId === photo.componentId && one.id !== photo.id),
    choice: {
      orderNumber,
      instruments: desk.instruments,
      exceptions: desk.exceptions,
      day: desk.today,
    },
  }
}
