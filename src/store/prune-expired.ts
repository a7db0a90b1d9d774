import { lt, lte } from 'drizzle-orm'
import type { Store } from './open.ts'
import { keptAnswer } from './schema/kept-answer.ts'
import { session } from './schema/session.ts'
import { signInFailure } from './schema/sign-in-failure.ts'

const dayMs = 86_400_000
/** Nobody resends a form after a month; failed tries are asked for the last quarter of an hour. */
export const keptDays = { answer: 30, signInFailure: 1 } as const

/**
 * Throws away what has had its time: ended sessions, kept answers, failed tries. Records are
 * never pruned.
 * @param now RFC 3339 in UTC
 * @returns how many rows of each went
 */
export function pruneExpired(
  store: Store,
  now: string,
): { readonly sessions: number; readonly answers: number; readonly signInFailures: number } {
  const ago = (days: number) => new Date(Date.parse(now) - days * dayMs).toISOString()
  return store.transact(() => {
    const { db } = store
    return {
      sessions: db.delete(session).where(lte(session.expiresAt, now)).run().changes,
      answers: db
        .delete(keptAnswer)
        .where(lt(keptAnswer.at, ago(keptDays.answer)))
        .run().changes,
      signInFailures: db
        .delete(signInFailure)
        .where(lt(signInFailure.at, ago(keptDays.signInFailure)))
        .run().changes,
    }
  })
}
