import { createHash } from 'node:crypto'
import { AppError } from '../../domain/app-error.ts'
import { completeWholeFace } from '../../domain/complete-whole-face.ts'
import { parseFacePhoto } from '../../domain/parse-face-photo.ts'
import type { FlatnessContext } from '../../domain/parse-flatness-reading.ts'
import { parseWholeFaceBody } from '../../domain/parse-whole-face-body.ts'
import type { NewWholeFaceReading } from '../../domain/parse-whole-face-reading.ts'
import type { WorkOrder } from '../../domain/work-order.ts'
import { addFacePhoto } from '../../store/add-face-photo.ts'
import { addFlatnessReading } from '../../store/add-flatness-reading.ts'
import { requireOpenOrder } from '../../store/require-open-order.ts'
import type { AppContext } from '../context.ts'
import { readWholeFace, type WholeFaceRead } from '../read-whole-face.ts'
import { runPhotoEdges } from '../run-photo.ts'
import { actor } from '../viewer.ts'
import { answeredBefore, answerOnce } from './answer-once.ts'
import { InputRefused } from './input-refused.ts'
import { mustParse } from './must-parse.ts'
import { unreadablePicture } from './photo-flatness.ts'
import type { JsonBody } from './read-json.ts'
import { readPhotoUpload } from './read-photo-upload.ts'

/** Keeps a photograph and the reading that comes of it, both or neither. */
export async function createPhotoReading(
  c: AppContext,
  order: WorkOrder,
  context: FlatnessContext,
): Promise<Response> {
  const { store } = c.var.shop
  const { bytes, input } = await readPhotoUpload(c)
  const sha256 = createHash('sha256').update(bytes).digest('hex')
  const body = { text: JSON.stringify([input, sha256]), input }
  const before = answeredBefore(c, body)
  if (before !== undefined) return before
  requireOpenOrder(store, order.id)
  const kept = keptPhoto(Buffer.from(bytes), input.faceId, context)
  const {
    outer,
    inner,
    imageWidth: widthPx,
    imageHeight: heightPx,
  } = await runPhotoEdges(kept.bytes)
  const picture = { widthPx, heightPx, foundEdges: outer === null ? null : { outer, inner } }
  const asked = mustParse(parseWholeFaceBody(input, context, picture))
  const result = await readWholeFace(asked, () => kept.bytes)
  if (result.kind === 'refused') return unreadablePicture(result.refusal)
  return answerOnce(c, body, () => {
    const { componentId } = asked
    const fresh = { ...kept, ...picture, componentId, workOrderId: order.id, note: '' }
    const photo = addFacePhoto(store, fresh, actor(c))
    const source = { ...asked.source, photoId: photo.id }
    return record(c, order, context, { ...asked, source }, result)
  })
}

/** Bands that were marked on a picture which itself is not sent. */
export async function createMarkedReading(
  c: AppContext,
  order: WorkOrder,
  context: FlatnessContext,
  body: JsonBody,
): Promise<Response> {
  const before = answeredBefore(c, body)
  if (before !== undefined) return before
  const asked = mustParse(parseWholeFaceBody(body.input, context, null))
  const result = await readWholeFace(asked, () => {
    throw new AppError('not-found', 'no-face-photo')
  })
  return answerOnce(c, body, () => record(c, order, context, asked, result))
}

/** What is wrong with the file is a fault of the part that it came in. */
function keptPhoto(bytes: Buffer, faceId: unknown, { components }: FlatnessContext) {
  const parsed = parseFacePhoto({ faceId }, { sent: { name: '', bytes }, components })
  if (parsed.ok) return parsed.value
  throw new InputRefused(
    parsed.faults.map((one) => (one.field === 'file' ? { ...one, field: 'image' } : one)),
  )
}

function record(
  c: AppContext,
  order: WorkOrder,
  context: FlatnessContext,
  asked: NewWholeFaceReading,
  result: WholeFaceRead,
) {
  if (result.kind === 'faulty') throw new InputRefused(result.faults)
  if (result.kind === 'refused') throw new InputRefused([])
  const of = { ...asked, workOrderId: order.id }
  const { faceKind: _, ...fresh } = completeWholeFace(of, result.read, context)
  return { status: 201, body: addFlatnessReading(c.var.shop.store, fresh, actor(c)) } as const
}
