import { and, eq, ne } from 'drizzle-orm'
import type { Actor } from '../domain/actor.ts'
import { addAudit } from './add-audit.ts'
import type { Store } from './open.ts'
import { requireUser } from './require-user.ts'
import { session } from './schema/session.ts'
import { user } from './schema/user.ts'

/**
 * Sets the hash and ends the user's sessions, but for the one that changes it.
 * @throws AppError not-found `no-user`
 */
export function setPassword(
  store: Store,
  fresh: {
    readonly userId: number
    readonly passwordHash: string
    /** The session that goes on. */
    readonly keepTokenHash?: string
  },
  actor: Actor,
): void {
  const { userId, passwordHash, keepTokenHash } = fresh
  store.transact(() => {
    const of = requireUser(store, userId)
    store.db.update(user).set({ passwordHash }).where(eq(user.id, userId)).run()
    const isOther = keepTokenHash === undefined ? undefined : ne(session.tokenHash, keepTokenHash)
    store.db
      .delete(session)
      .where(and(eq(session.userId, userId), isOther))
      .run()
    addAudit(store, actor, { act: 'set-password', subject: `user ${of.name}`, detail: {} })
  })
}
