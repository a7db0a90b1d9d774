import type { Evidence } from '../../domain/evidence.ts'
import { missingForHandOver } from '../../domain/missing-for-hand-over.ts'

/** A work order as the machine interface shows it: the record, and what is missing to hand over. */
export function workOrderAnswer(evidence: Evidence) {
  const { workOrder, seal, flatnessReadings, staticTests, handOver, decisions } = evidence
  return {
    ...workOrder,
    customer: { id: evidence.customer.id, name: evidence.customer.name },
    equipment: evidence.equipment,
    seal,
    limitSet: evidence.limitSet,
    flatnessReadings,
    staticTests,
    stageChanges: evidence.stageChanges,
    handOver,
    decisions,
    missing: missingForHandOver(evidence),
  }
}
