import { type Input, openFields } from './fields.ts'
import type { Parsed } from './parsed.ts'

export const holderFields = ['holder'] as const
export const holderLength = { max: 120 } as const

/** Reads who, or which place, holds an instrument from now on. */
export function parseHolder(input: Input): Parsed<{ readonly holder: string }> {
  const fields = openFields(input)
  fields.only(...holderFields)
  return fields.finish({ holder: fields.text('holder', holderLength.max) })
}
