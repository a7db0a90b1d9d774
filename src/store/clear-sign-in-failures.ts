import { eq } from 'drizzle-orm'
import type { Store } from './open.ts'
import { signInFailure } from './schema/sign-in-failure.ts'

/** After a success the name starts afresh. */
export function clearSignInFailures(store: Store, name: string): void {
  store.transact(() => {
    store.db.delete(signInFailure).where(eq(signInFailure.name, name)).run()
  })
}
