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

/** The nesting itself, also for query strings. */
export function nestFields(pairs: URLSearchParams): Input {
  const root: Record<string, unknown> = Object.create(null)
  for (const [name, value] of pairs) {
    const parts = name.match(/[^.[\]]+/g)
    if (parts === null || parts.length > 6 || parts.some((p) => p === '__proto__')) continue
    place(root, parts, value)
  }
  return root
}

function place(root: Record<string, unknown>, parts: readonly string[], value: string): void {
  let at = root
  for (const [depth, part] of parts.entries()) {
    if (depth === parts.length - 1) {
      const before = at[part]
      at[part] =
        before === undefined ? value : Array.isArray(before) ? [...before, value] : [before, value]
      return
    }
    const isList = /^\d{1,2}$/.test(parts[depth + 1] ?? '')
    if (typeof at[part] !== 'object' || at[part] === null) {
      at[part] = isList ? [] : Object.create(null)
    }
    at = at[part] as Record<string, unknown>
  }
}
