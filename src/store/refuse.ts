import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { Decision } from '../domain/release.ts'
import { releaseFaults } from '../domain/release-faults.ts'
import type { User } from '../domain/user.ts'
import { addAudit } from './add-audit.ts'
import { addDecision } from './add-decision.ts'
import { changeStage } from './change-stage.ts'
import type { Store } from './open.ts'
import { readEvidence } from './read-evidence.ts'
import { requireHandOver } from './require-hand-over.ts'

/**
 * Sends a hand-over back to the bench. Any inspector may, also one who lapped or tested: the rule
 * of independence guards the release.
 * @throws AppError forbidden `not-inspector`; conflict `already-decided` with `by`,
 *   `not-handed-over`; invalid `reason-needed`
 */
export function refuse(
  store: Store,
  fresh: { readonly handOverId: number; readonly reason: string; readonly by: User },
  actor: Actor,
): Decision {
  const { reason, by } = fresh
  if (reason.trim() === '') throw new AppError('invalid', 'reason-needed')
  return store.transact(() => {
    const handOver = requireHandOver(store, fresh.handOverId)
    const evidence = readEvidence(store, handOver.workOrderId)
    for (const fault of releaseFaults({ evidence, user: by, handOver })) {
      if (fault.id === 'not-inspector') throw new AppError('forbidden', fault.id)
      if (fault.id === 'not-handed-over') throw new AppError('conflict', fault.id)
      if (fault.id === 'already-decided') {
        throw new AppError('conflict', fault.id, { by: fault.byName })
      }
    }
    const decision = addDecision(store, { handOver, outcome: 'refused', reason, by }, actor)
    const order = evidence.workOrder
    changeStage(store, order, { to: 'refused', reason }, actor)
    addAudit(store, actor, { act: 'refuse', subject: order.number, detail: decision })
    return decision
  })
}
