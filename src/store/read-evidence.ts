import type { Evidence } from '../domain/evidence.ts'
import { agreedRuleOf } from './agreed-rule-of.ts'
import { latestHandOver } from './latest-hand-over.ts'
import { listAssemblies } from './list-assemblies.ts'
import { listConcessions } from './list-concessions.ts'
import { listDecisions } from './list-decisions.ts'
import { listDialSurveys } from './list-dial-surveys.ts'
import { listDoubts } from './list-doubts.ts'
import { listDynamicRuns } from './list-dynamic-runs.ts'
import { listEarlierLapCycles } from './list-earlier-lap-cycles.ts'
import { listFindings } from './list-findings.ts'
import { listFlatnessReadings } from './list-flatness-readings.ts'
import { listLapCycles } from './list-lap-cycles.ts'
import { listMeasuredValues } from './list-measured-values.ts'
import { listPartLines } from './list-part-lines.ts'
import { listSpringChecks } from './list-spring-checks.ts'
import { listStageChanges } from './list-stage-changes.ts'
import { listStaticTests } from './list-static-tests.ts'
import { listWearTracks } from './list-wear-tracks.ts'
import type { Store } from './open.ts'
import { requireCustomer } from './require-customer.ts'
import { requireEquipment } from './require-equipment.ts'
import { requireLimitSet } from './require-limit-set.ts'
import { requireSeal } from './require-seal.ts'
import { requireWorkOrderById } from './require-work-order-by-id.ts'

/**
 * Everything recorded about one order, read in one transaction, so that no part is newer than
 * another.
 * @throws AppError not-found `no-work-order`
 */
export function readEvidence(store: Store, workOrderId: number): Evidence {
  const read = store.raw.transaction((): Evidence => {
    const workOrder = requireWorkOrderById(store, workOrderId)
    const seal = requireSeal(store, workOrder.sealId)
    return {
      workOrder,
      customer: requireCustomer(store, workOrder.customerId),
      equipment: seal.equipmentId === null ? null : requireEquipment(store, seal.equipmentId),
      seal,
      limitSet: requireLimitSet(store, workOrder.limitSetId),
      agreedRule: agreedRuleOf(store, workOrderId),
      flatnessReadings: listFlatnessReadings(store, workOrderId),
      staticTests: listStaticTests(store, workOrderId),
      measuredValues: listMeasuredValues(store, workOrderId),
      findings: listFindings(store, workOrderId),
      partLines: listPartLines(store, workOrderId),
      dialSurveys: listDialSurveys(store, workOrderId),
      lapCycles: listLapCycles(store, workOrderId),
      wearTracks: listWearTracks(store, workOrderId),
      springChecks: listSpringChecks(store, workOrderId),
      assemblies: listAssemblies(store, workOrderId),
      dynamicRuns: listDynamicRuns(store, workOrderId),
      earlierLapCycles: listEarlierLapCycles(store, workOrder),
      concessions: listConcessions(store, workOrderId),
      doubts: listDoubts(store, workOrderId),
      stageChanges: listStageChanges(store, workOrderId),
      handOver: latestHandOver(store, workOrderId) ?? null,
      decisions: listDecisions(store, workOrderId),
    }
  })
  return read.deferred()
}
