import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import { addAudit } from './add-audit.ts'
import { findUserByName } from './find-user-by-name.ts'
import { isLive } from './is-live-token.ts'
import type { Store } from './open.ts'
import { apiToken } from './schema/api-token.ts'

/** @throws AppError not-found `no-user`, `no-token` */
export function revokeToken(
  store: Store,
  which: { readonly userName: string; readonly label: string },
  actor: Actor,
): void {
  const { userName, label } = which
  store.transact(() => {
    const of = findUserByName(store, userName)
    if (of === undefined) throw new AppError('not-found', 'no-user')
    const { changes } = store.db
      .update(apiToken)
      .set({ revokedAt: actor.at })
      .where(isLive(of.id, label))
      .run()
    if (changes === 0) throw new AppError('not-found', 'no-token')
    addAudit(store, actor, { act: 'revoke-token', subject: `user ${of.name}`, detail: { label } })
  })
}
