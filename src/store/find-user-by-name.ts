import { eq } from 'drizzle-orm'
import type { User } from '../domain/user.ts'
import type { Store } from './open.ts'
import { user } from './schema/user.ts'
import { userColumns } from './user-columns.ts'

/** For sign-in, without regard to capitals; the only function that hands out the hash. */
export function findUserByName(
  store: Store,
  name: string,
): (User & { readonly passwordHash: string }) | undefined {
  return store.db
    .select({ ...userColumns, passwordHash: user.passwordHash })
    .from(user)
    .where(eq(user.name, name))
    .get()
}
