import type { Actor } from '../domain/actor.ts'
import type { Decision, HandOver } from '../domain/release.ts'
import type { User } from '../domain/user.ts'
import { decidedBy } from './decided-by.ts'
import type { Store } from './open.ts'
import { decision } from './schema/decision.ts'

/** Adds the inspector's word, inside the transaction that acts on it. */
export function addDecision(
  store: Store,
  fresh: {
    readonly handOver: HandOver
    readonly outcome: Decision['outcome']
    readonly reason: string
    readonly by: User
  },
  actor: Actor,
): Decision {
  const { outcome, reason } = fresh
  const { id: handOverId, workOrderId } = fresh.handOver
  const row = { workOrderId, handOverId, outcome, reason, ...decidedBy(fresh.by, actor) }
  return store.db.insert(decision).values(row).returning().get()
}
