import type { FacePhoto } from './face-photo.ts'
import { type Input, openFields } from './fields.ts'
import { fileType } from './file-type.ts'
import { isHeic } from './is-heic.ts'
import { noteLength } from './parse-flatness-reading.ts'
import type { SentFile } from './parse-instrument-file.ts'
import { idBounds } from './parse-instrument-id.ts'
import type { Parsed } from './parsed.ts'
import { photoBytesAtMost } from './photo-bytes.ts'
import { pictureWithoutMetadata } from './picture-without-metadata.ts'
import { type Component, faceKinds } from './seal.ts'

export type ParsedFacePhoto = Pick<FacePhoto, 'componentId' | 'mediaType' | 'note'> & {
  readonly bytes: Buffer
}

/**
 * Reads a photograph of the bands of a face: what it is is told by its bytes, and nothing is kept
 * but the picture and which side of it is up.
 * @param sent null where no file was chosen
 */
export function parseFacePhoto(
  input: Input,
  context: { readonly sent: SentFile | null; readonly components: readonly Component[] },
): Parsed<ParsedFacePhoto> {
  const fields = openFields(input)
  fields.only('faceId', 'note')
  const before = fields.faults.length
  const componentId = fields.whole('faceId', idBounds)
  const component = context.components.find((one) => one.id === componentId)
  const isFace = faceKinds.some((kind) => kind === component?.kind)
  if (fields.faults.length === before && !isFace) fields.fault('faceId', 'not-known')
  const note = fields.optionalText('note', noteLength.max)
  const bytes = context.sent?.bytes ?? Buffer.alloc(0)
  const type = fileType(bytes)
  const isPicture = type?.kind === 'photo'
  const maxMB = photoBytesAtMost / 1024 / 1024
  if (bytes.length === 0) fields.fault('file', 'file-empty')
  else if (bytes.length > photoBytesAtMost) fields.fault('file', 'file-too-large', { maxMB })
  else if (isHeic(bytes)) fields.fault('file', 'photo-heic')
  else if (!isPicture) fields.fault('file', 'photo-type')
  const isWhole = isPicture && !fields.faults.some((one) => one.field === 'file')
  const clean = isWhole ? pictureWithoutMetadata(bytes, type) : bytes
  if (clean === undefined) fields.fault('file', 'file-broken')
  const mediaType = type?.mediaType ?? ''
  return fields.finish({ componentId, mediaType, note, bytes: clean ?? bytes })
}
