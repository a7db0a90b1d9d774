import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import { addAudit } from './add-audit.ts'
import type { Store } from './open.ts'
import { requireUser } from './require-user.ts'
import { session } from './schema/session.ts'

/** @throws AppError not-found `no-user`, also where the user is inactive */
export function addSession(
  store: Store,
  fresh: { readonly tokenHash: string; readonly userId: number; readonly expiresAt: string },
  actor: Actor,
): void {
  store.transact(() => {
    const of = requireUser(store, fresh.userId)
    if (!of.isActive) throw new AppError('not-found', 'no-user')
    store.db
      .insert(session)
      .values({ ...fresh, createdAt: actor.at })
      .run()
    const detail = { expiresAt: fresh.expiresAt }
    addAudit(store, actor, { act: 'sign-in', subject: `user ${of.name}`, detail })
  })
}
