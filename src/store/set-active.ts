import { eq } from 'drizzle-orm'
import type { Actor } from '../domain/actor.ts'
import type { User } from '../domain/user.ts'
import { addAudit } from './add-audit.ts'
import type { Store } from './open.ts'
import { requireUser } from './require-user.ts'
import { session } from './schema/session.ts'
import { user } from './schema/user.ts'

/** An inactive user keeps every record and loses every session. */
export function setActive(
  store: Store,
  fresh: { readonly userId: number; readonly isActive: boolean },
  actor: Actor,
): User {
  const { userId, isActive } = fresh
  return store.transact(() => {
    const of = requireUser(store, userId)
    store.db.update(user).set({ isActive }).where(eq(user.id, userId)).run()
    if (!isActive) store.db.delete(session).where(eq(session.userId, userId)).run()
    addAudit(store, actor, { act: 'set-active', subject: `user ${of.name}`, detail: { isActive } })
    return { ...of, isActive }
  })
}
