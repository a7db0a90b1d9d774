import { type Input, openFields } from './fields.ts'
import { fileName } from './file-name.ts'
import { fileType } from './file-type.ts'
import type { Calibration, InstrumentFile } from './instrument.ts'
import { idBounds } from './parse-instrument-id.ts'
import type { Parsed } from './parsed.ts'
import { pictureWithoutMetadata } from './picture-without-metadata.ts'

/** A photo of a phone has 3 to 8 MB, a scanned certificate less (our own choice). */
export const instrumentFileBytesAtMost = 10 * 1024 * 1024

/** A file as it was sent; the name is the sender's. */
export type SentFile = { readonly name: string; readonly bytes: Buffer }

export type ParsedInstrumentFile = Pick<
  InstrumentFile,
  'calibrationId' | 'kind' | 'name' | 'mediaType'
> & { readonly bytes: Buffer }

/**
 * Reads a photo or document of an instrument: what it is is told by its bytes, and of a picture
 * nothing is kept but the picture.
 * @param sent null where no file was chosen
 */
export function parseInstrumentFile(
  input: Input,
  context: {
    readonly sent: SentFile | null
    readonly calibrations: readonly Pick<Calibration, 'id'>[]
  },
): Parsed<ParsedInstrumentFile> {
  const fields = openFields(input)
  fields.only('calibrationId')
  const before = fields.faults.length
  const calibrationId = fields.optionalWhole('calibrationId', idBounds)
  const isRead = fields.faults.length === before
  const isKnown = context.calibrations.some((one) => one.id === calibrationId)
  if (isRead && calibrationId !== null && !isKnown) fields.fault('calibrationId', 'not-known')
  const { name, bytes } = context.sent ?? { name: '', bytes: Buffer.alloc(0) }
  const type = fileType(bytes)
  const maxMB = instrumentFileBytesAtMost / 1024 / 1024
  if (bytes.length === 0) fields.fault('file', 'file-empty')
  else if (bytes.length > instrumentFileBytesAtMost)
    fields.fault('file', 'file-too-large', { maxMB })
  else if (type === undefined) fields.fault('file', 'file-type')
  const clean = type === undefined ? undefined : pictureWithoutMetadata(bytes, type)
  if (type === undefined || fields.faults.some((one) => one.field === 'file')) {
    const nothing = { kind: 'file', name: '', mediaType: '', bytes } as const
    return fields.finish({ calibrationId, ...nothing })
  }
  if (clean === undefined) fields.fault('file', 'file-broken')
  const { kind, mediaType } = type
  const kept = { kind, mediaType, name: fileName(name, type), bytes: clean ?? bytes }
  return fields.finish({ calibrationId, ...kept })
}
