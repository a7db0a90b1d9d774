import { desc } from 'drizzle-orm'
import type { LimitSet } from '../domain/limit-set.ts'
import type { Store } from './open.ts'
import { requireLimitSet } from './require-limit-set.ts'
import { limitSet } from './schema/limit-set.ts'

/** Newest first. */
export function listLimitSets(store: Store): LimitSet[] {
  const ids = store.db
    .select({ id: limitSet.id })
    .from(limitSet)
    .orderBy(desc(limitSet.datedOn), desc(limitSet.version), desc(limitSet.id))
    .all()
  return ids.map(({ id }) => requireLimitSet(store, id))
}
