import { facePhotoWords } from '../../../views/words/en/face-photo.ts'
import { AppError } from '../../domain/app-error.ts'
import type { Fault, FaultKind } from '../../domain/fault.ts'
import { parseFacePhoto } from '../../domain/parse-face-photo.ts'
import { addFacePhoto } from '../../store/add-face-photo.ts'
import { requireOpenOrder } from '../../store/require-open-order.ts'
import type { AppContext } from '../context.ts'
import { openFlatnessDesk } from '../flatness/desk.ts'
import { ownFields } from '../own-fields.ts'
import { readUpload } from '../read-upload.ts'
import { newFormKey, recordOnce } from '../record-once.ts'
import { type PhotoEdges, runPhotoEdges } from '../run-photo.ts'
import { sendQuarantine } from '../send-quarantine.tsx'
import { typedText } from '../typed-text.ts'
import { actor } from '../viewer.ts'
import { sendUploadPage } from './upload-page.tsx'

/** Asks for a photograph of a face. */
export async function newFacePhoto(c: AppContext): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const desk = openFlatnessDesk(c)
  requireOpenOrder(store, desk.workOrder.id)
  const quarantine = sendQuarantine(c, desk.workOrder, facePhotoWords.uploadTitle)
  if (quarantine !== null) return quarantine
  return sendUploadPage(c, desk, {
    faceId: c.req.query('face') ?? '',
    note: '',
    formKey: newFormKey(randomBytes),
    faults: [],
  })
}

/** Keeps the photograph, with its edges where they are found. */
export async function createFacePhoto(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const desk = openFlatnessDesk(c)
  const { input, sent } = await readUpload(c)
  const quarantine = sendQuarantine(c, desk.workOrder, facePhotoWords.uploadTitle)
  if (quarantine !== null) return quarantine
  const again = (faults: readonly Fault[]) =>
    sendUploadPage(c, desk, {
      faceId: typedText(input.faceId),
      note: typedText(input.note),
      formKey: typedText(input.formKey),
      faults,
    })
  const { components } = desk
  const parsed = parseFacePhoto(ownFields(input, 'fileSha256'), { sent, components })
  if (!parsed.ok) return again(parsed.faults)
  const found = await edgesOrFault(parsed.value.bytes)
  if (!('imageWidth' in found)) return again([found])
  const { imageWidth: widthPx, imageHeight: heightPx, outer, inner } = found
  const foundEdges = outer === null ? null : { outer, inner }
  return recordOnce(c, input, () => {
    const { workOrder } = desk
    const fresh = { ...parsed.value, workOrderId: workOrder.id, widthPx, heightPx, foundEdges }
    const { id } = addFacePhoto(store, fresh, actor(c))
    return `/work-orders/${workOrder.number}/face-photos/${id}`
  })
}

const faultOf: Readonly<Record<string, FaultKind>> = {
  'photo-heic': 'photo-heic',
  'photo-not-a-photo': 'photo-type',
  'photo-damaged': 'photo-damaged',
  'photo-too-many-pixels': 'photo-too-many-pixels',
  'photo-busy': 'photo-busy',
  'photo-too-long': 'photo-too-long',
}

/** What is wrong with a photograph stands beside its field, and nothing is kept of it. */
async function edgesOrFault(bytes: Uint8Array): Promise<PhotoEdges | Fault> {
  try {
    return await runPhotoEdges(bytes)
  } catch (error) {
    const kind = error instanceof AppError ? faultOf[error.reason] : undefined
    if (kind === undefined) throw error
    return { field: 'file', kind }
  }
}
