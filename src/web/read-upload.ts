import { createHash } from 'node:crypto'
import { AppError } from '../domain/app-error.ts'
import type { Input } from '../domain/fields.ts'
import { instrumentFileBytesAtMost, type SentFile } from '../domain/parse-instrument-file.ts'
import type { AppContext } from './context.ts'

/** Above the largest file, so that one a little too large is answered at its field. */
export const uploadLimitBytes = instrumentFileBytesAtMost + 2 * 1024 * 1024

export type Upload = {
  /** The other fields, as texts, and the hash of the file: what was sent, to know it again. */
  readonly input: Input
  /** Null where none was chosen. */
  readonly sent: SentFile | null
}

/**
 * Reads a posted form with one file, in the field `file`.
 * @throws AppError invalid `not-a-form` where it is none, or holds several files
 */
export async function readUpload(c: AppContext): Promise<Upload> {
  const type = c.req.header('content-type') ?? ''
  if (!type.startsWith('multipart/form-data')) throw new AppError('invalid', 'not-a-form')
  const form = await c.req.formData().catch(() => {
    throw new AppError('invalid', 'not-a-form')
  })
  const input: Record<string, unknown> = Object.create(null)
  let sent: SentFile | null = null
  for (const [name, value] of form) {
    // Camera and choice are one field of two controls: the one that was left empty says nothing.
    if (name === 'file' && typeof value !== 'string' && isNothing(value)) continue
    if (name in input || (name === 'file' && sent !== null)) {
      throw new AppError('invalid', 'not-a-form')
    }
    if (typeof value === 'string') input[name] = value
    else if (name !== 'file') throw new AppError('invalid', 'not-a-form')
    else sent = { name: value.name, bytes: Buffer.from(await value.arrayBuffer()) }
  }
  if (sent === null) return { input, sent }
  const sha256 = createHash('sha256').update(sent.bytes).digest('hex')
  return { input: { ...input, fileSha256: sha256 }, sent: sent.name === '' ? null : sent }
}

function isNothing(file: File): boolean {
  return file.name === '' && file.size === 0
}
