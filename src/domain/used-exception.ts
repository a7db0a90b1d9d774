import type { UsedException } from './instrument.ts'
import type { UseException, UseFault } from './use-exception.ts'

/**
 * The exception of an order under which an instrument may be used on a day in spite of a fault,
 * the newest where there are several; undefined where no inspector allowed one for that day.
 *
 * Two days count. It must be allowed when the use is recorded: nobody covers a record by allowing
 * it afterwards. And the day of use must not lie after its last day. A use before it was allowed
 * may still be recorded under it, for the inspector was asked before there was a record, and both
 * days stand beside each other in it.
 * @param exceptions of the order, with whatever was answered
 * @param use day: of use; recordedOn: calendar day on which it is recorded, both `2026-11-25`
 */
export function usedException(
  exceptions: readonly UseException[],
  use: {
    readonly instrumentId: number
    readonly fault: UseFault
    readonly day: string
    readonly recordedOn: string
  },
): UsedException | undefined {
  const found = exceptions.findLast(
    ({ instrumentId, fault, answer }) =>
      instrumentId === use.instrumentId &&
      fault === use.fault &&
      answer?.answer === 'allowed' &&
      answer.validUntil !== null &&
      answer.at.slice(0, 10) <= use.recordedOn &&
      use.day <= answer.validUntil,
  )
  if (found?.answer == null) return undefined
  const { id, fault, answer } = found
  return {
    id,
    fault,
    reason: answer.reason,
    allowedByName: answer.byName,
    allowedAt: answer.at,
  }
}
