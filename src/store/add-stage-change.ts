import type { Actor } from '../domain/actor.ts'
import type { StageChange } from '../domain/work-order.ts'
import type { Store } from './open.ts'
import { stageChange } from './schema/stage-change.ts'

/** Adds the step alone: the first one, at receipt, comes from nowhere. */
export function addStageChange(
  store: Store,
  step: Pick<StageChange, 'workOrderId' | 'from' | 'to' | 'reason'>,
  actor: Actor,
): void {
  store.db
    .insert(stageChange)
    .values({ ...step, byName: actor.name, at: actor.at })
    .run()
}
