import type { Evidence } from '../../domain/evidence.ts'
import { finishOrders } from '../../domain/finish-orders.ts'
import { missingForHandOver } from '../../domain/missing-for-hand-over.ts'
import type { User } from '../../domain/user.ts'
import { maySeeResults } from '../../domain/who-may-see.ts'

/**
 * A work order as the machine interface shows it: the record, and what is missing to hand over.
 * Customers get it without what the workshop says to itself, and its results once released.
 */
export function workOrderAnswer(evidence: Evidence, viewer: Pick<User, 'role'>) {
  const { workOrder, seal, handOver, decisions } = evidence
  const { flatnessReadings, staticTests, measuredValues, lapCycles, concessions } = evidence
  const { dialSurveys, findings, partLines } = evidence
  const { steps, writtenById, writtenByName, ...limitSet } = evidence.limitSet
  return {
    ...workOrder,
    customer: { id: evidence.customer.id, name: evidence.customer.name },
    equipment: evidence.equipment,
    seal,
    limitSet: viewer.role === 'customer' ? limitSet : evidence.limitSet,
    agreedRule: evidence.agreedRule,
    ...(maySeeResults(viewer, workOrder.stage)
      ? { flatnessReadings, staticTests, measuredValues, concessions }
      : {}),
    ...(viewer.role === 'customer'
      ? {}
      : {
          stageChanges: evidence.stageChanges,
          lapCycles,
          wearTracks: evidence.wearTracks,
          springChecks: evidence.springChecks,
          assemblies: evidence.assemblies,
          dynamicRuns: evidence.dynamicRuns,
          dialSurveys,
          findings,
          partLines,
          finishOrders: finishOrders(evidence),
          handOver,
          decisions,
          missing: missingForHandOver(evidence),
        }),
  }
}
