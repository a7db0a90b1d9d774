import { type Input, openFields } from './fields.ts'
import type { Calibration } from './instrument.ts'
import type { Parsed } from './parsed.ts'

export const calibrationFields = ['calibratedOn', 'dueOn', 'certificateNumber'] as const
export const certificateNumberLength = { max: 80 } as const

/** An older calibration than this is a slip of the pen. */
export const earliestCalibration = '1990-01-01'

export type ParsedCalibration = Pick<Calibration, (typeof calibrationFields)[number]>

/**
 * Reads a calibration from its certificate: made today or earlier, due later than it was made.
 * @param context today: calendar day, `2026-11-25`
 */
export function parseCalibration(
  input: Input,
  context: { readonly today: string },
): Parsed<ParsedCalibration> {
  const fields = openFields(input)
  fields.only(...calibrationFields)
  const calibratedOn = fields.day('calibratedOn')
  const isMadeDay = fields.faults.every((one) => one.field !== 'calibratedOn')
  const bounds = { min: earliestCalibration, max: context.today }
  if (isMadeDay && calibratedOn > bounds.max) fields.fault('calibratedOn', 'above', bounds)
  if (isMadeDay && calibratedOn < bounds.min) fields.fault('calibratedOn', 'below', bounds)
  const dueOn = fields.day('dueOn')
  const isDueDay = fields.faults.every((one) => one.field !== 'dueOn')
  if (isMadeDay && isDueDay && dueOn <= calibratedOn) fields.fault('dueOn', 'not-later')
  return fields.finish({
    calibratedOn,
    dueOn,
    certificateNumber: fields.text('certificateNumber', certificateNumberLength.max),
  })
}
