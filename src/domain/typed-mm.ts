import type { Bounds, Fields } from './fields.ts'
import type { TypedMm } from './wear-track.ts'

/** Reads a length in mm with the text as typed; null where it is left out. */
export function optionalTypedMm(fields: Fields, name: string, bounds: Bounds): TypedMm | null {
  const mm = fields.optionalDecimal(name, bounds)
  return mm === null ? null : { mm, typed: fields.typed(name).trim() }
}

/** The same for a length that is needed. */
export function typedMm(fields: Fields, name: string, bounds: Bounds): TypedMm {
  return { mm: fields.decimal(name, bounds), typed: fields.typed(name).trim() }
}
