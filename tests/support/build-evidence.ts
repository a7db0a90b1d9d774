import { houseRule } from '../../src/domain/agreed-rule.ts'
import type { Evidence } from '../../src/domain/evidence.ts'
import { buildCustomer } from './build-customer.ts'
import { buildFlatnessReading } from './build-flatness-reading.ts'
import { buildLimitSet } from './build-limit-set.ts'
import { buildHandOver } from './build-release.ts'
import { buildSeal } from './build-seal.ts'
import { buildStaticTest } from './build-static-test.ts'
import { buildWorkOrder } from './build-work-order.ts'

/** The least evidence that user 2 can release: both faces read, one test, handed over. */
export function buildEvidence(changes: Partial<Evidence> = {}): Evidence {
  return {
    workOrder: buildWorkOrder({ stage: 'handed-over' }),
    customer: buildCustomer(),
    equipment: null,
    seal: buildSeal(),
    limitSet: buildLimitSet(),
    flatnessReadings: [
      buildFlatnessReading(),
      buildFlatnessReading({ id: 2, componentId: 12, faceKind: 'stationary-seat' }),
    ],
    staticTests: [buildStaticTest()],
    measuredValues: [],
    findings: [],
    partLines: [],
    dialSurveys: [],
    lapCycles: [],
    wearTracks: [],
    dynamicRuns: [],
    springChecks: [],
    assemblies: [],
    earlierLapCycles: [],
    concessions: [],
    doubts: [],
    agreedRule: houseRule,
    stageChanges: [],
    handOver: buildHandOver(),
    decisions: [],
    ...changes,
  }
}
