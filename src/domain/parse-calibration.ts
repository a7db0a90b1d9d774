import { atMost } from '../science/acceptance/at-most.ts'
import { calibrationUnit } from './calibration-unit.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { type Calibration, type Instrument, toleranceStates } from './instrument.ts'
import type { Parsed } from './parsed.ts'
import { permittedError } from './permitted-error.ts'

export const calibrationFields = [
  'calibratedOn',
  'dueOn',
  'certificateNumber',
  'laboratory',
  'asFound',
  'asFoundError',
  'asLeft',
  'asLeftError',
  'expandedUncertainty',
  'coverageFactor',
  'note',
] as const
export const calibrationTextLength = { certificateNumber: 80, laboratory: 120, note: 400 } as const

/** An older calibration than this is a slip of the pen. */
export const earliestCalibration = '1990-01-01'

export const calibrationBounds = {
  error: { min: -1e6, max: 1e6 },
  expandedUncertainty: { min: 1e-9, max: 1e6 },
  /** From the plain standard uncertainty to Student's t of a single repeat, 95 %: 12.71. */
  coverageFactor: { min: 1, max: 13 },
} as const

/** What a certificate means where it states no factor: common practice. */
const usualCoverageFactor = 2

export type ParsedCalibration = Pick<Calibration, (typeof calibrationFields)[number]>

type Context = {
  /** Calendar day, `2026-11-25`. */
  readonly today: string
  readonly instrument: Pick<Instrument, 'kind' | 'unit' | 'largestError' | 'flatToleranceUm'>
  /** The unit that the form showed beside its numbers: it may have been amended since. */
  readonly seenUnit: string
}

/**
 * Reads a calibration from its certificate: made today or earlier, due later than it was made. What
 * was found is `not-stated` where nothing is chosen; numbers are in the unit of the instrument.
 */
export function parseCalibration(input: Input, context: Context): Parsed<ParsedCalibration> {
  const fields = openFields(input)
  fields.only(...calibrationFields)
  const length = calibrationTextLength
  return fields.finish({
    ...parseDays(fields, context.today),
    certificateNumber: fields.text('certificateNumber', length.certificateNumber),
    laboratory: fields.optionalText('laboratory', length.laboratory),
    ...parseFigures(fields, context),
    note: fields.optionalText('note', length.note),
  })
}

function parseDays(fields: Fields, today: string) {
  const calibratedOn = fields.day('calibratedOn')
  const isMadeDay = fields.faults.every((one) => one.field !== 'calibratedOn')
  const bounds = { min: earliestCalibration, max: today }
  if (isMadeDay && calibratedOn > bounds.max) fields.fault('calibratedOn', 'above', bounds)
  if (isMadeDay && calibratedOn < bounds.min) fields.fault('calibratedOn', 'below', bounds)
  const dueOn = fields.day('dueOn')
  const isDueDay = fields.faults.every((one) => one.field !== 'dueOn')
  if (isMadeDay && isDueDay && dueOn <= calibratedOn) fields.fault('dueOn', 'not-later')
  return { calibratedOn, dueOn }
}

function parseFigures(fields: Fields, { instrument, seenUnit }: Context) {
  const { error, expandedUncertainty, coverageFactor } = calibrationBounds
  const numbers = ['asFoundError', 'asLeftError', 'expandedUncertainty'] as const
  const unit = calibrationUnit(instrument)
  if (unit === '' || unit !== seenUnit) {
    const kind = unit === '' ? 'no-unit' : 'amended-meanwhile'
    for (const name of numbers) if (fields.isGiven(name)) fields.fault(name, kind)
  }
  const asFound = fields.optionalChoice('asFound', toleranceStates) ?? 'not-stated'
  const asFoundError = fields.optionalDecimal('asFoundError', error)
  const asLeft = fields.optionalChoice('asLeft', toleranceStates) ?? 'not-stated'
  const asLeftError = fields.optionalDecimal('asLeftError', error)
  const uncertainty = fields.optionalDecimal('expandedUncertainty', expandedUncertainty)
  const factor = fields.optionalDecimal('coverageFactor', coverageFactor)
  const max = permittedError(instrument)
  const isTooFar = (found: number | null) =>
    found !== null && max !== null && !atMost({ value: Math.abs(found), limit: max })
  if (asFound !== 'beyond' && isTooFar(asFoundError)) {
    fields.fault('asFound', 'error-beyond', { max: max ?? 0 })
  }
  if (asLeft !== 'beyond' && isTooFar(asLeftError)) {
    fields.fault('asLeft', 'error-beyond', { max: max ?? 0 })
  }
  return {
    asFound,
    asFoundError,
    asLeft,
    asLeftError,
    expandedUncertainty: uncertainty,
    // The factor belongs to the uncertainty: without it, what the form offers says nothing.
    coverageFactor: uncertainty === null ? null : (factor ?? usualCoverageFactor),
  }
}
