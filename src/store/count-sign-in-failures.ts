import { and, count, eq, gte, max, or } from 'drizzle-orm'
import type { Store } from './open.ts'
import { signInFailure } from './schema/sign-in-failure.ts'

export type SignInFailures = {
  readonly byName: number
  readonly byAddress: number
  /** Of the newest of both; null where there is none. */
  readonly lastAt: string | null
}

/** Failures since an instant, of a name and of the address that tries. */
export function countSignInFailures(
  store: Store,
  of: { readonly name: string; readonly address: string; readonly since: string },
): SignInFailures {
  const isSince = gte(signInFailure.at, of.since)
  const isName = eq(signInFailure.name, of.name)
  const isAddress = eq(signInFailure.address, of.address)
  const counted = (which: typeof isName) =>
    store.db.select({ count: count() }).from(signInFailure).where(and(which, isSince)).get()?.count
  const last = store.db
    .select({ at: max(signInFailure.at) })
    .from(signInFailure)
    .where(and(or(isName, isAddress), isSince))
    .get()
  return {
    byName: counted(isName) ?? 0,
    byAddress: counted(isAddress) ?? 0,
    lastAt: last?.at ?? null,
  }
}
