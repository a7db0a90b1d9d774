import { eq, sql } from 'drizzle-orm'
import { AppError } from '../domain/app-error.ts'
import type { User } from '../domain/user.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { user } from './schema/user.ts'
import { userColumns } from './user-columns.ts'

const userById = prepared((store) =>
  store.db
    .select(userColumns)
    .from(user)
    .where(eq(user.id, sql.placeholder('id')))
    .prepare(),
)

/** @throws AppError not-found `no-user` */
export function requireUser(store: Store, id: number): User {
  const found = userById(store).get({ id })
  if (found === undefined) throw new AppError('not-found', 'no-user')
  return found
}
