import { and, eq } from 'drizzle-orm'
import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { LimitSet, NewLimitSet } from '../domain/limit-set.ts'
import { addAudit } from './add-audit.ts'
import type { Store } from './open.ts'
import { requireLimitSet } from './require-limit-set.ts'
import { limitSet } from './schema/limit-set.ts'
import { limitValue } from './schema/limit-value.ts'

/**
 * A set with its limits. A set is never edited: a change is a new version of the same name.
 * @throws AppError conflict `version-taken`
 */
export function addLimitSet(store: Store, fresh: NewLimitSet, actor: Actor): LimitSet {
  const { limits, ...row } = fresh
  return store.transact(() => {
    const isSame = and(eq(limitSet.name, fresh.name), eq(limitSet.version, fresh.version))
    if (store.db.select().from(limitSet).where(isSame).get() !== undefined) {
      const { name, version } = fresh
      throw new AppError('conflict', 'version-taken', { name, version })
    }
    const { id } = store.db.insert(limitSet).values(row).returning({ id: limitSet.id }).get()
    for (const one of limits) {
      store.db
        .insert(limitValue)
        .values({ ...one, limitSetId: id })
        .run()
    }
    const added = requireLimitSet(store, id)
    addAudit(store, actor, { act: 'add-limit-set', subject: `limit-set ${id}`, detail: added })
    return added
  })
}
