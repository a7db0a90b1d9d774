import { AppError } from '../../domain/app-error.ts'
import { parseInstrumentFile } from '../../domain/parse-instrument-file.ts'
import { addInstrumentFile as storeFile } from '../../store/add-instrument-file.ts'
import { listInstrumentFiles } from '../../store/list-instrument-files.ts'
import { readStoredFile } from '../../store/read-stored-file.ts'
import type { AppContext } from '../context.ts'
import { fileDisposition } from '../file-disposition.ts'
import { idOf } from '../id-of.ts'
import { ownFields } from '../own-fields.ts'
import { readUpload } from '../read-upload.ts'
import { recordOnce } from '../record-once.ts'
import { actor } from '../viewer.ts'
import { instrumentOf } from './instrument-of.ts'
import { sendInstrument } from './pages.tsx'

/** Keeps a photo or document; of a picture nothing but the picture. */
export async function addInstrumentFile(c: AppContext): Promise<Response> {
  const instrument = instrumentOf(c)
  const { input, sent } = await readUpload(c)
  const { calibrations } = instrument
  const parsed = parseInstrumentFile(ownFields(input, 'fileSha256'), { sent, calibrations })
  if (!parsed.ok) return sendInstrument(c, instrument, { input, faults: parsed.faults })
  return recordOnce(c, input, () => {
    storeFile(c.var.shop.store, { ...parsed.value, instrumentId: instrument.id }, actor(c))
    return `/instruments/${instrument.id}?recorded#files`
  })
}

/** Pictures are shown, everything else is handed over as a file; a browser guesses no type. */
export function showInstrumentFile(c: AppContext): Response {
  const { store } = c.var.shop
  const instrument = instrumentOf(c)
  const id = idOf(c.req.param('fileId'), 'no-file')
  const file = listInstrumentFiles(store, instrument.id).find((one) => one.id === id)
  if (file === undefined) throw new AppError('not-found', 'no-file')
  const { bytes } = readStoredFile(store, file.sha256)
  return new Response(new Uint8Array(bytes), {
    headers: {
      'content-type': file.mediaType,
      'content-disposition': fileDisposition(
        file.kind === 'photo' ? 'inline' : 'attachment',
        file.name,
      ),
      'x-content-type-options': 'nosniff',
      'cache-control': 'private, no-cache',
      'cross-origin-resource-policy': 'same-origin',
    },
  })
}
