import { calibrationStatus } from './calibration-status.ts'
import { type Input, openFields } from './fields.ts'
import type { Instrument } from './instrument.ts'
import { idBounds } from './parse-instrument-id.ts'
import type { Parsed } from './parsed.ts'
import { type UseException, type UseFault, useFaults } from './use-exception.ts'

export const exceptionReasonLength = { min: 10, max: 400 } as const

export const useExceptionFields = ['instrumentId', 'fault', 'reason'] as const

/** What is asked for; of which order, by whom and when is not typed. */
export type ParsedUseException = Pick<UseException, 'instrumentId' | 'fault' | 'reason'>

/** Reads the request for an exception: which instrument, in spite of what, and why. */
export function parseUseException(
  input: Input,
  context: {
    readonly instruments: readonly Instrument[]
    /** Days on which it may have been used: that of the receipt and today. */
    readonly days: readonly string[]
  },
): Parsed<ParsedUseException> {
  const fields = openFields(input)
  fields.only(...useExceptionFields)
  const instrumentId = fields.whole('instrumentId', idBounds)
  const fault = fields.choice('fault', useFaults)
  const { min, max } = exceptionReasonLength
  const reason = fields.text('reason', max)
  if (reason !== '' && reason.length < min) fields.fault('reason', 'too-short', { min })
  const isFaulty = fields.faults.some((one) => one.field !== 'reason')
  const instrument = context.instruments.find((one) => one.id === instrumentId)
  if (!isFaulty && instrument === undefined) fields.fault('instrumentId', 'not-known')
  if (!isFaulty && instrument !== undefined && !mayHave(instrument, fault, context.days)) {
    fields.fault('fault', 'no-such-fault', { number: instrument.number })
  }
  return fields.finish({ instrumentId, fault, reason })
}

/** An exception from what is not the case would only hide a slip. */
function mayHave(instrument: Instrument, fault: UseFault, days: readonly string[]): boolean {
  const { rangeFrom, rangeTo } = instrument
  if (fault === 'out-of-range') return rangeFrom !== null || rangeTo !== null
  return days.some((day) => calibrationStatus(instrument, day) === fault)
}
