import { asc } from 'drizzle-orm'
import type { User } from '../domain/user.ts'
import type { Store } from './open.ts'
import { user } from './schema/user.ts'
import { userColumns } from './user-columns.ts'

/** By name, inactive ones included. */
export function listUsers(store: Store): User[] {
  return store.db.select(userColumns).from(user).orderBy(asc(user.name)).all()
}
