import { type Input, openFields } from './fields.ts'
import { handMoves } from './order-acts.ts'
import { noteLength } from './parse-flatness-reading.ts'
import { receiptTextLength } from './parse-receipt.ts'
import type { Parsed } from './parsed.ts'
import { type DecontaminationState, decontaminationStates } from './work-order.ts'

/** Why an order is withdrawn. */
export const moveReasonLength = { max: 400 } as const

const moves = [...handMoves, 'withdrawn'] as const
export type ParsedMove = { readonly to: (typeof moves)[number]; readonly reason: string }

/** Reads a move made by hand; only a withdrawal needs its reason. */
export function parseMove(input: Input): Parsed<ParsedMove> {
  const fields = openFields(input)
  fields.only('to', 'reason')
  const to = fields.choice('to', moves)
  const { max } = moveReasonLength
  const reason =
    to === 'withdrawn' ? fields.text('reason', max) : fields.optionalText('reason', max)
  return fields.finish({ to, reason })
}

/** Reads what is stated about the last fluid. */
export function parseDecontamination(input: Input): Parsed<{
  readonly decontamination: DecontaminationState
  readonly lastFluid: string
}> {
  const fields = openFields(input)
  fields.only('decontamination', 'lastFluid')
  return fields.finish({
    decontamination: fields.choice('decontamination', decontaminationStates),
    lastFluid: fields.optionalText('lastFluid', receiptTextLength.lastFluid),
  })
}

/** Reads the note that goes with a hand-over. */
export function parseHandOver(input: Input): Parsed<{ readonly note: string }> {
  const fields = openFields(input)
  fields.only('note')
  return fields.finish({ note: fields.optionalText('note', noteLength.max) })
}
