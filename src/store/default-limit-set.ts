import { AppError } from '../domain/app-error.ts'
import type { LimitSet } from '../domain/limit-set.ts'
import { listLimitSets } from './list-limit-sets.ts'
import type { Store } from './open.ts'

/**
 * What a new work order is offered: the set of the latest date.
 * @throws AppError not-found `no-limit-set` where there is none yet
 */
export function defaultLimitSet(store: Store): LimitSet {
  const newest = listLimitSets(store)[0]
  if (newest === undefined) throw new AppError('not-found', 'no-limit-set')
  return newest
}
