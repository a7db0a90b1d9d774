import { AppError } from '../domain/app-error.ts'
import type { LimitSet } from '../domain/limit-set.ts'
import { listLimitSets } from './list-limit-sets.ts'
import type { Store } from './open.ts'

/**
 * What a new work order is offered: the set of the latest date.
 * @throws AppError conflict `no-limit-set-yet`: the manager makes the first one
 */
export function defaultLimitSet(store: Store): LimitSet {
  const newest = listLimitSets(store)[0]
  if (newest === undefined) throw new AppError('conflict', 'no-limit-set-yet')
  return newest
}
