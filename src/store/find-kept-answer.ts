import { and, eq } from 'drizzle-orm'
import { AppError } from '../domain/app-error.ts'
import type { KeptAnswer } from './kept-answer.ts'
import type { Store } from './open.ts'
import { keptAnswer } from './schema/kept-answer.ts'

/**
 * The answer that a request got before; undefined where there is none. For work that takes long:
 * `once` asks again when it is done.
 * @throws AppError conflict `key-reused` for the same key with another request
 */
export function findKeptAnswer(
  store: Store,
  request: { readonly userId: number; readonly key: string; readonly requestHash: string },
): KeptAnswer | undefined {
  const { userId, key, requestHash } = request
  const isSame = and(eq(keptAnswer.userId, userId), eq(keptAnswer.key, key))
  const kept = store.db.select().from(keptAnswer).where(isSame).get()
  if (kept === undefined) return undefined
  if (kept.requestHash !== requestHash) throw new AppError('conflict', 'key-reused')
  return { status: kept.status, body: kept.body }
}
