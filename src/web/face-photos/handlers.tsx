import { facePhotoWords } from '../../../views/words/en/face-photo.ts'
import { AppError } from '../../domain/app-error.ts'
import { completeWholeFace } from '../../domain/complete-whole-face.ts'
import { currentOnly } from '../../domain/current-only.ts'
import type { Input } from '../../domain/fields.ts'
import type { FlatnessReading } from '../../domain/flatness.ts'
import { parseWholeFaceReading } from '../../domain/parse-whole-face-reading.ts'
import { maySeeResults } from '../../domain/who-may-see.ts'
import { addFlatnessReading } from '../../store/add-flatness-reading.ts'
import { readStoredFile } from '../../store/read-stored-file.ts'
import { requireOpenOrder } from '../../store/require-open-order.ts'
import { requireOutOfQuarantine } from '../../store/require-out-of-quarantine.ts'
import type { AppContext } from '../context.ts'
import { readForm } from '../read-form.ts'
import { newFormKey, recordOnce } from '../record-once.ts'
import { replacedRecord } from '../replaced-record.ts'
import { sendQuarantine } from '../send-quarantine.tsx'
import { typedText } from '../typed-text.ts'
import { actor, viewer } from '../viewer.ts'
import { answerOfPhoto, outcomeOfRead, readAsked, readOrStop, usesOf } from './answer-of.ts'
import { openPhotoDesk, type PhotoDesk } from './desk.ts'
import type { DrawnPhoto } from './face-photo-form.ts'
import { formInput } from './form-input.ts'
import { freshPhotoValues, photoValuesOfInput, photoValuesOfReading } from './form-values.ts'
import { sendPhotoAnswer } from './send-answer.tsx'
import { sendPhotoPage } from './workbench.tsx'

/** The workbench of a photograph: edges, bands, what was seen of the gap. */
export async function showFacePhoto(c: AppContext): Promise<Response> {
  const { store, randomBytes } = c.var.shop
  const desk = openPhotoDesk(c)
  requireOpenOrder(store, desk.workOrder.id)
  const quarantine = sendQuarantine(c, desk.workOrder, facePhotoWords.title)
  if (quarantine !== null) return quarantine
  const replaced = replacedRecord(desk.flatnessReadings, c.req.query('replaces'))
  return sendPhotoPage(c, desk, {
    values:
      replaced === undefined ? freshPhotoValues(c, desk) : photoValuesOfReading(replaced, desk),
    formKey: newFormKey(randomBytes),
    faults: [],
    answer: null,
    replaced,
  })
}

/** The photograph itself: for whoever may see its order. */
export function showFacePicture(c: AppContext): Response {
  const { photo, workOrder, flatnessReadings } = openPhotoDesk(c)
  // A customer sees results, and so what they came from, once the order is released.
  const isResult = currentOnly(flatnessReadings).some((one) => isOfPhoto(one, photo.id))
  const user = viewer(c)
  if (!maySeeResults(user, workOrder.stage) || (user.role === 'customer' && !isResult)) {
    throw new AppError('not-found', 'no-face-photo')
  }
  const { bytes, mediaType } = readStoredFile(c.var.shop.store, photo.sha256)
  return new Response(new Uint8Array(bytes), {
    headers: {
      'content-type': mediaType,
      'content-disposition': 'inline',
      'x-content-type-options': 'nosniff',
      // It never changes: what is shown is told by its number.
      'cache-control': 'private, max-age=86400, immutable',
      'cross-origin-resource-policy': 'same-origin',
    },
  })
}

function isOfPhoto({ wholeFace }: FlatnessReading, photoId: number): boolean {
  const source = wholeFace?.source
  return source !== undefined && 'photoId' in source && source.photoId === photoId
}

/** Reads the photograph as the form stands, with progress for the page's script; records nothing. */
export async function previewFacePhoto(c: AppContext): Promise<Response> {
  const desk = openPhotoDesk(c)
  const input = await readForm(c)
  const asked = formInput(input)
  const drawn = drawnOf(desk, input)
  if (c.req.header('accept')?.includes('application/x-ndjson')) {
    return sendPhotoAnswer(desk, drawn, (limits) => answerOfPhoto(c, desk, asked, limits))
  }
  return sendPhotoPage(c, desk, { ...drawn, answer: await answerOfPhoto(c, desk, asked) })
}

/** Reads it once more and records what came of it. */
export async function recordFacePhoto(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const desk = openPhotoDesk(c)
  const input = await readForm(c)
  const quarantine = sendQuarantine(c, desk.workOrder, facePhotoWords.title)
  if (quarantine !== null) return quarantine
  const asked = formInput(input)
  const drawn = drawnOf(desk, input)
  const parsed = parseWholeFaceReading(asked, desk)
  if (!parsed.ok) {
    return sendPhotoPage(c, desk, { ...drawn, faults: parsed.faults, answer: null }, 422)
  }
  const result = await readOrStop(() => readAsked(c, desk, parsed.value))
  if (result.kind !== 'read') {
    // A picture that gives no honest figure is no reading: the page says why and what to do.
    const outcome = result.kind === 'stopped' ? result : outcomeOfRead(desk, parsed.value, result)
    const answer = { uses: usesOf(desk, asked), outcome }
    return sendPhotoPage(c, desk, { ...drawn, answer }, 422)
  }
  return recordOnce(c, input, () => {
    // Reading took its time: what instruments may be used is asked once more.
    const now = openPhotoDesk(c)
    requireOutOfQuarantine(now.workOrder)
    const again = parseWholeFaceReading(asked, now)
    if (!again.ok) throw new AppError('conflict', 'changed-meanwhile')
    const { workOrder } = now
    const of = { ...again.value, workOrderId: workOrder.id }
    const { faceKind: _, ...fresh } = completeWholeFace(of, result.read, now)
    addFlatnessReading(store, fresh, actor(c))
    return `/work-orders/${workOrder.number}?recorded=flatness`
  })
}

function drawnOf(desk: PhotoDesk, input: Input): Omit<DrawnPhoto, 'answer'> {
  return {
    values: photoValuesOfInput(input),
    formKey: typedText(input.formKey),
    faults: [],
    replaced: replacedRecord(desk.flatnessReadings, typedText(input.replacesId)),
  }
}
