import { signInWaitS } from '../domain/sign-in-wait-s.ts'
import { countSignInFailures } from '../store/count-sign-in-failures.ts'
import { clientAddress } from './client-address.ts'
import type { AppContext } from './context.ts'

/**
 * How long the next try of a password must still wait, in seconds. Signing in and signing a
 * decision count together: whoever sits at an open session guesses no faster than at the door.
 */
export function passwordWaitS(c: AppContext, name: string): number {
  const { store, now } = c.var.shop
  const at = now().getTime()
  const since = new Date(at - 15 * 60_000).toISOString()
  const failures = countSignInFailures(store, { name, address: clientAddress(c), since })
  const sinceLastS = failures.lastAt === null ? 0 : (at - Date.parse(failures.lastAt)) / 1000
  return signInWaitS({ ...failures, sinceLastS })
}
