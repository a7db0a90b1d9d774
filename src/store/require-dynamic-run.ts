import { eq } from 'drizzle-orm'
import { AppError } from '../domain/app-error.ts'
import type { Store } from './open.ts'
import { dynamicRun } from './schema/dynamic-run.ts'

/** A run by its number alone. @throws AppError not-found `no-run` */
export function requireDynamicRun(store: Store, id: number) {
  const found = store.db.select().from(dynamicRun).where(eq(dynamicRun.id, id)).get()
  if (found === undefined) throw new AppError('not-found', 'no-run')
  return found
}
