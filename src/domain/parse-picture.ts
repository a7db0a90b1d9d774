import { openFields } from './fields.ts'
import { fileType } from './file-type.ts'
import { isHeic } from './is-heic.ts'
import type { SentFile } from './parse-instrument-file.ts'
import type { Parsed } from './parsed.ts'
import { photoBytesAtMost } from './photo-bytes.ts'
import { pictureWithoutMetadata } from './picture-without-metadata.ts'

export type Picture = { readonly bytes: Buffer; readonly mediaType: string }

/**
 * Reads a photograph that may be left out: what it is is told by its bytes, and nothing is kept of
 * where it was taken.
 * @param sent null where no file was chosen
 */
export function parsePicture(sent: SentFile | null): Parsed<Picture | null> {
  const fields = openFields({})
  if (sent === null || sent.bytes.length === 0) return fields.finish(null)
  const { bytes } = sent
  const type = fileType(bytes)
  const maxMB = photoBytesAtMost / 1024 / 1024
  if (bytes.length > photoBytesAtMost) fields.fault('file', 'file-too-large', { maxMB })
  else if (isHeic(bytes)) fields.fault('file', 'photo-heic')
  else if (type?.kind !== 'photo') fields.fault('file', 'photo-type')
  const isWhole = fields.faults.length === 0 && type !== undefined
  const clean = isWhole ? pictureWithoutMetadata(bytes, type) : undefined
  if (isWhole && clean === undefined) fields.fault('file', 'file-broken')
  return fields.finish({ bytes: clean ?? bytes, mediaType: type?.mediaType ?? '' })
}
