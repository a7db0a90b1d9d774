import { AppError } from '../../domain/app-error.ts'
import { readEvidence } from '../../store/read-evidence.ts'
import { refuse } from '../../store/refuse.ts'
import type { Shop } from '../context.ts'
import type { DecisionAsked } from './decision-asked.ts'
import { evidenceFingerprint } from './evidence-fingerprint.ts'

/**
 * Sends an order back to the bench.
 * @returns where to go
 * @throws AppError conflict `already-decided`, `not-handed-over`, `evidence-changed`
 */
export function refuseOrder({ store }: Shop, asked: DecisionAsked): string {
  const { workOrderId, reason, by, actor, fingerprint } = asked
  const evidence = readEvidence(store, workOrderId)
  const { handOver, workOrder } = evidence
  if (handOver === null) throw new AppError('conflict', 'not-handed-over')
  // Who was faster is the better answer than that the page is old, so the store speaks first.
  const isStale = fingerprint !== evidenceFingerprint(evidence)
  store.transact(() => {
    refuse(store, { handOverId: handOver.id, reason, by }, actor)
    if (isStale) throw new AppError('conflict', 'evidence-changed')
  })
  return `/work-orders/${workOrder.number}/inspection`
}
