import { AppError } from '../domain/app-error.ts'
import type { Input } from '../domain/fields.ts'
import type { AppContext } from './context.ts'

/**
 * Reads a posted form. `readings[0].bands` becomes a list of objects; a repeated name becomes a
 * list of texts, so that nothing is dropped silently.
 */
export async function readForm(c: AppContext): Promise<Input> {
  const type = c.req.header('content-type') ?? ''
  if (!type.startsWith('application/x-www-form-urlencoded')) {
    throw new AppError('invalid', 'not-a-form')
  }
  return nestFields(new URLSearchParams(await c.req.text()))
}

/**
 * The nesting itself. A name that no page of ours draws (a list treated as an object, a text as a
 * list) is refused: it could reach what belongs to the list itself, such as its length.
 * @throws AppError invalid `not-a-form`
 */
export function nestFields(pairs: URLSearchParams): Input {
  const root: Record<string, unknown> = Object.create(null)
  for (const [name, value] of pairs) {
    const parts = name.match(/[^.[\]]+/g)
    if (parts === null || parts.length > 6 || parts.includes('__proto__')) refuse()
    place(root, parts, value)
  }
  return root
}

type Node = Record<string, unknown> | unknown[]

function place(root: Node, parts: readonly string[], value: string): void {
  let at = root
  for (const [depth, part] of parts.entries()) {
    if (Array.isArray(at) && !isIndex(part)) refuse()
    const here = at as Record<string, unknown>
    const next = parts[depth + 1]
    if (next === undefined) {
      setOrRepeat(here, part, value)
      return
    }
    here[part] ??= isIndex(next) ? [] : Object.create(null)
    const node = here[part]
    if (typeof node !== 'object' || node === null) refuse()
    at = node as Node
  }
}

/** A repeated name grows its list in place: a full body of one name is read in no time. */
function setOrRepeat(at: Record<string, unknown>, part: string, value: string): void {
  const before = at[part]
  if (before === undefined) at[part] = value
  else if (Array.isArray(before)) before.push(value)
  else if (typeof before === 'string') at[part] = [before, value]
  else refuse()
}

function isIndex(part: string): boolean {
  return /^\d{1,2}$/.test(part)
}

function refuse(): never {
  throw new AppError('invalid', 'not-a-form')
}
