import { eq } from 'drizzle-orm'
import { AppError } from '../domain/app-error.ts'
import type { UseException } from '../domain/use-exception.ts'
import type { Store } from './open.ts'
import { useException } from './schema/use-exception.ts'
import { asUseException, useExceptionsQuery } from './use-exceptions-query.ts'

/** @throws AppError not-found `no-use-exception` */
export function requireUseException(store: Store, id: number): UseException {
  const [found] = useExceptionsQuery(store).where(eq(useException.id, id)).all()
  if (found === undefined) throw new AppError('not-found', 'no-use-exception')
  return asUseException(found)
}
