import { eq } from 'drizzle-orm'
import type { Actor } from '../domain/actor.ts'
import { addAudit } from './add-audit.ts'
import type { Store } from './open.ts'
import { requireUser } from './require-user.ts'
import { session } from './schema/session.ts'

/** Signing out twice is no error. */
export function removeSession(store: Store, tokenHash: string, actor: Actor): void {
  store.transact(() => {
    const isIt = eq(session.tokenHash, tokenHash)
    const removed = store.db.delete(session).where(isIt).returning().get()
    if (removed === undefined) return
    const subject = `user ${requireUser(store, removed.userId).name}`
    addAudit(store, actor, { act: 'sign-out', subject, detail: {} })
  })
}
