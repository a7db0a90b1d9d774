import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { User } from '../domain/user.ts'
import { addAudit } from './add-audit.ts'
import { findUserByName } from './find-user-by-name.ts'
import type { Store } from './open.ts'
import { user } from './schema/user.ts'
import { userColumns } from './user-columns.ts'

export type NewUser = Omit<User, 'id' | 'isActive'> & { readonly passwordHash: string }

/** @throws AppError conflict `name-taken` */
export function addUser(store: Store, fresh: NewUser, actor: Actor): User {
  return store.transact(() => {
    if (findUserByName(store, fresh.name) !== undefined) {
      throw new AppError('conflict', 'name-taken', { name: fresh.name })
    }
    const row = { ...fresh, isActive: true, createdAt: actor.at }
    const added = store.db.insert(user).values(row).returning(userColumns).get()
    addAudit(store, actor, { act: 'add-user', subject: `user ${added.name}`, detail: added })
    return added
  })
}
