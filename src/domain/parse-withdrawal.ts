import { type Input, openFields } from './fields.ts'
import type { Parsed } from './parsed.ts'

export const withdrawalReasonLength = { max: 400 } as const

/** Reads why an instrument is taken out of use; without a reason it stays in use. */
export function parseWithdrawal(input: Input): Parsed<{ readonly reason: string }> {
  const fields = openFields(input)
  fields.only('reason')
  return fields.finish({ reason: fields.text('reason', withdrawalReasonLength.max) })
}
