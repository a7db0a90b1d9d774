import type { LimitSet } from './limit-set.ts'
import { type LimitSetState, limitSetState } from './limit-set-state.ts'

/** The state of a set, and `replaced` where a newer version of its name is in force. */
export type LimitSetStanding = LimitSetState | 'replaced'

/** How a set stands among the others of its name; one that is replaced stays with its orders. */
export function limitSetStanding(
  set: LimitSet,
  sets: readonly LimitSet[],
  day: string,
): LimitSetStanding {
  const state = limitSetState(set, day)
  if (state !== 'in-force') return state
  const isReplaced = sets.some(
    (other) =>
      other.name === set.name &&
      other.version > set.version &&
      limitSetState(other, day) === 'in-force',
  )
  return isReplaced ? 'replaced' : 'in-force'
}
