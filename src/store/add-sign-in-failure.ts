import type { Actor } from '../domain/actor.ts'
import type { Store } from './open.ts'
import { signInFailure } from './schema/sign-in-failure.ts'

/**
 * Counts a failed try. No line in the audit trail: it is kept for ever, what was typed as a name
 * may be a password, and a stranger could fill the disk with it.
 */
export function addSignInFailure(
  store: Store,
  failure: { readonly name: string; readonly address: string },
  actor: Actor,
): void {
  store.transact(() => {
    store.db
      .insert(signInFailure)
      .values({ ...failure, at: actor.at })
      .run()
  })
}
