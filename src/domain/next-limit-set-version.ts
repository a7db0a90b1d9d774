import { AppError } from './app-error.ts'
import type { LimitSet } from './limit-set.ts'

/**
 * The version that follows a set. Only the newest version of a name is followed, else a change
 * made in between would be lost silently.
 * @param sets every set there is
 * @throws AppError conflict `not-newest`
 */
export function nextLimitSetVersion(set: LimitSet, sets: readonly LimitSet[]): number {
  if (newestVersion(set.name, sets) !== set.version) throw new AppError('conflict', 'not-newest')
  return set.version + 1
}

/** The newest version of a name; 0 where there is none. */
export function newestVersion(name: string, sets: readonly LimitSet[]): number {
  return Math.max(0, ...sets.filter((one) => one.name === name).map((one) => one.version))
}
