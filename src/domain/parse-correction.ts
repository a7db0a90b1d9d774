import type { Fields } from './fields.ts'
import { idBounds } from './parse-instrument-id.ts'

export const correctionFields = ['replacesId', 'reason'] as const
export const reasonLength = { min: 1, max: 400 } as const

export type Correction = { readonly replacesId: number | null; readonly reason: string }

/** Reads what a record replaces and why; a correction without a reason is refused. */
export function parseCorrection(fields: Fields): Correction {
  const replacesId = fields.optionalWhole('replacesId', idBounds)
  const reason = fields.optionalText('reason', reasonLength.max)
  const isReasonFaulty = fields.faults.some((one) => one.field === 'reason')
  if (replacesId !== null && reason === '' && !isReasonFaulty)
    fields.fault('reason', 'reason-needed')
  return { replacesId, reason }
}
