import type { UsedException } from './instrument.ts'
import type { UseException, UseFault } from './use-exception.ts'

/**
 * The exception of an order under which an instrument may be used on a day in spite of a fault,
 * the newest where there are several; undefined where no inspector allowed one for that day.
 * @param exceptions of the order, with whatever was answered
 */
export function usedException(
  exceptions: readonly UseException[],
  use: { readonly instrumentId: number; readonly fault: UseFault; readonly day: string },
): UsedException | undefined {
  const found = exceptions.findLast(
    ({ instrumentId, fault, answer }) =>
      instrumentId === use.instrumentId &&
      fault === use.fault &&
      answer?.answer === 'allowed' &&
      answer.validUntil !== null &&
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
