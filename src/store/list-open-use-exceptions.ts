import { asc, isNull } from 'drizzle-orm'
import type { UseException } from '../domain/use-exception.ts'
import type { Store } from './open.ts'
import { useException } from './schema/use-exception.ts'
import { useExceptionAnswer } from './schema/use-exception-answer.ts'
import { asUseException, useExceptionsQuery } from './use-exceptions-query.ts'

/** Those of every order that no inspector has answered, oldest first. */
export function listOpenUseExceptions(store: Store): UseException[] {
  return useExceptionsQuery(store)
    .where(isNull(useExceptionAnswer.id))
    .orderBy(asc(useException.id))
    .all()
    .map(asUseException)
}
