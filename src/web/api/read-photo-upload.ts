import { AppError } from '../../domain/app-error.ts'
import type { Input } from '../../domain/fields.ts'
import { photoBytesAtMost } from '../../domain/photo-bytes.ts'
import type { AppContext } from '../context.ts'
import { InputRefused } from './input-refused.ts'
import { refuseForeignPage } from './refuse-foreign-page.ts'
import { WrongType } from './wrong-type.ts'

export type PhotoUpload = { readonly bytes: Uint8Array; readonly input: Input }

/**
 * Reads a photograph under `image` and what is known beside it as JSON under `request`.
 * @throws WrongType where it is no multipart form; InputRefused, named by its part; AppError
 *   too-large `too-large`
 */
export async function readPhotoUpload(c: AppContext): Promise<PhotoUpload> {
  refuseForeignPage(c)
  const type = c.req.header('content-type') ?? ''
  if (!type.toLowerCase().startsWith('multipart/form-data')) throw new WrongType()
  const form = await c.req.formData().catch(() => {
    throw new WrongType()
  })
  for (const name of form.keys()) {
    if (name !== 'image' && name !== 'request') {
      throw new InputRefused([{ field: name, kind: 'unknown-field' }])
    }
  }
  const image = form.get('image')
  if (!(image instanceof Blob) || image.size === 0) {
    throw new InputRefused([{ field: 'image', kind: 'empty' }])
  }
  if (image.size > photoBytesAtMost) throw new AppError('too-large', 'too-large')
  const input = inputOf(await textOf(form.get('request')))
  return { bytes: new Uint8Array(await image.arrayBuffer()), input }
}

/** A program may send the JSON as a text or as a file. */
async function textOf(part: FormDataEntryValue | null): Promise<string> {
  const text = typeof part === 'string' ? part : ((await part?.text()) ?? '')
  if (text.trim() === '') throw new InputRefused([{ field: 'request', kind: 'empty' }])
  return text
}

function inputOf(text: string): Input {
  let value: unknown
  try {
    value = JSON.parse(text)
  } catch {
    value = null
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw new InputRefused([{ field: 'request', kind: 'not-json' }])
  }
  return value as Input
}
