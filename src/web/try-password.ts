import type { User } from '../domain/user.ts'
import { addSignInFailure } from '../store/add-sign-in-failure.ts'
import { clearSignInFailures } from '../store/clear-sign-in-failures.ts'
import { findUserByName } from '../store/find-user-by-name.ts'
import { clientAddress } from './client-address.ts'
import type { AppContext } from './context.ts'
import { passwordWaitS } from './haste.ts'

export type Tried =
  | { readonly kind: 'right'; readonly user: User }
  | { readonly kind: 'wrong' }
  /** Too many wrong ones: nothing was tried. */
  | { readonly kind: 'too-soon'; readonly waitS: number }

/** A hash of nothing in particular: an unknown name must take as long as a known one. */
export const strangerHash =
  '$argon2id$v=19$m=65536,t=3,p=1$c3RyYW5nZXJzdHJhbmdlcg$7pWHJLJmbMqKtfqLvXZqXtUsvGNkBmqvS+kcHvKlkZs'

/**
 * Tries a password, wherever one is asked for: signing in, signing a decision and changing it
 * count together. A try counts as failed until it is found right, so that many at once are no
 * faster than one after another.
 */
export async function tryPassword(c: AppContext, name: string, password: string): Promise<Tried> {
  const { store, now, verifyPassword } = c.var.shop
  const waitS = passwordWaitS(c, name)
  if (waitS > 0) return { kind: 'too-soon', waitS }
  const by = { userId: null, name: name || 'nobody', at: now().toISOString() }
  addSignInFailure(store, { name, address: clientAddress(c) }, by)
  const user = findUserByName(store, name)
  const isRight = await verifyPassword(user?.passwordHash ?? strangerHash, password)
  if (user === undefined || !user.isActive || !isRight) return { kind: 'wrong' }
  clearSignInFailures(store, name)
  return { kind: 'right', user }
}
