import { AppError } from '../domain/app-error.ts'
import type { LimitSet } from '../domain/limit-set.ts'
import { offeredLimitSets } from '../domain/offered-limit-sets.ts'
import { listLimitSets } from './list-limit-sets.ts'
import type { Store } from './open.ts'

/**
 * What a new work order is offered first: of the sets in force, the one of the latest day.
 * @param day calendar day on which the order is received
 * @throws AppError conflict `no-limit-set-yet`: none is approved, or in force yet
 */
export function defaultLimitSet(store: Store, day: string): LimitSet {
  const [first] = offeredLimitSets(listLimitSets(store), day)
  if (first === undefined) throw new AppError('conflict', 'no-limit-set-yet')
  return first
}
