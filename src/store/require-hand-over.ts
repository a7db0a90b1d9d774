import { eq } from 'drizzle-orm'
import { AppError } from '../domain/app-error.ts'
import type { HandOver } from '../domain/release.ts'
import type { Store } from './open.ts'
import { handOver } from './schema/hand-over.ts'

/** @throws AppError conflict `not-handed-over` where there is no such hand-over */
export function requireHandOver(store: Store, id: number): HandOver {
  const found = store.db.select().from(handOver).where(eq(handOver.id, id)).get()
  if (found === undefined) throw new AppError('conflict', 'not-handed-over')
  return found
}
