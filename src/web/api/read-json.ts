import type { Input } from '../../domain/fields.ts'
import type { AppContext } from '../context.ts'
import { InputRefused } from './input-refused.ts'
import { refuseForeignPage } from './refuse-foreign-page.ts'
import { WrongType } from './wrong-type.ts'

/** A JSON body as it came, for the hash of a repeated request, and as read. */
export type JsonBody = { readonly text: string; readonly input: Input }

/** Reads the JSON object of a request. @throws WrongType, InputRefused */
export async function readJson(c: AppContext): Promise<JsonBody> {
  refuseForeignPage(c)
  const type = (c.req.header('content-type') ?? '').split(';')[0]?.trim().toLowerCase()
  if (type !== 'application/json') throw new WrongType()
  const text = await c.req.text()
  let value: unknown
  try {
    value = JSON.parse(text)
  } catch {
    throw new InputRefused([{ field: '', kind: 'not-json' }])
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw new InputRefused([{ field: '', kind: 'not-json' }])
  }
  return { text, input: value as Input }
}
