import { addSignInFailure } from '../../store/add-sign-in-failure.ts'
import { clearSignInFailures } from '../../store/clear-sign-in-failures.ts'
import { findUserByName } from '../../store/find-user-by-name.ts'
import { clientAddress } from '../client-address.ts'
import type { AppContext } from '../context.ts'
import { passwordWaitS } from '../haste.ts'
import { actor, viewer } from '../viewer.ts'

export type Signature =
  | { readonly kind: 'right' }
  | { readonly kind: 'wrong' }
  /** Too many wrong ones: nothing was tried. */
  | { readonly kind: 'too-soon'; readonly waitS: number }

/** Tries the viewer's password again, for an act that only they in person may sign. */
export async function trySignature(c: AppContext, password: string): Promise<Signature> {
  const { store, verifyPassword } = c.var.shop
  const { name } = viewer(c)
  const waitS = passwordWaitS(c, name)
  if (waitS > 0) return { kind: 'too-soon', waitS }
  const known = findUserByName(store, name)
  const isRight = known?.isActive === true && (await verifyPassword(known.passwordHash, password))
  if (isRight) {
    clearSignInFailures(store, name)
    return { kind: 'right' }
  }
  addSignInFailure(store, { name, address: clientAddress(c) }, actor(c))
  return { kind: 'wrong' }
}
