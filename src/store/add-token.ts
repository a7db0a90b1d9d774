import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import { addAudit } from './add-audit.ts'
import { isLive } from './is-live-token.ts'
import type { Store } from './open.ts'
import { requireUser } from './require-user.ts'
import { apiToken } from './schema/api-token.ts'

/** @throws AppError not-found `no-user`; conflict `label-taken` by a live token of the user */
export function addToken(
  store: Store,
  fresh: { readonly userId: number; readonly label: string; readonly tokenHash: string },
  actor: Actor,
): void {
  const { userId, label } = fresh
  store.transact(() => {
    const of = requireUser(store, userId)
    if (store.db.select().from(apiToken).where(isLive(userId, label)).get() !== undefined) {
      throw new AppError('conflict', 'label-taken', { label })
    }
    store.db
      .insert(apiToken)
      .values({ ...fresh, createdAt: actor.at, revokedAt: null })
      .run()
    addAudit(store, actor, { act: 'add-token', subject: `user ${of.name}`, detail: { label } })
  })
}
