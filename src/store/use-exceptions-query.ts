import { eq } from 'drizzle-orm'
import type { UseException } from '../domain/use-exception.ts'
import type { Store } from './open.ts'
import { instrument } from './schema/instrument.ts'
import { useException } from './schema/use-exception.ts'
import { useExceptionAnswer } from './schema/use-exception-answer.ts'
import { workOrder } from './schema/work-order.ts'

/** Requests with their order, instrument and answer, to be narrowed down by who asks. */
export function useExceptionsQuery(store: Store) {
  return store.db
    .select({
      asked: useException,
      workOrderNumber: workOrder.number,
      instrumentNumber: instrument.number,
      answer: useExceptionAnswer,
    })
    .from(useException)
    .innerJoin(workOrder, eq(workOrder.id, useException.workOrderId))
    .innerJoin(instrument, eq(instrument.id, useException.instrumentId))
    .leftJoin(useExceptionAnswer, eq(useExceptionAnswer.useExceptionId, useException.id))
    .$dynamic()
}

type Row = ReturnType<ReturnType<typeof useExceptionsQuery>['all']>[number]

/** A row of the query as the domain knows it. */
export function asUseException(row: Row): UseException {
  const { asked, workOrderNumber, instrumentNumber } = row
  if (row.answer === null) return { ...asked, workOrderNumber, instrumentNumber, answer: null }
  const { answer, validUntil, reason, byName, at } = row.answer
  const answered = { answer, validUntil, reason, byName, at }
  return { ...asked, workOrderNumber, instrumentNumber, answer: answered }
}
