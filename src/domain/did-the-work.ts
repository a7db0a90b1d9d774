import type { Evidence } from './evidence.ts'
import type { HandOver } from './release.ts'
import { surveyHands } from './survey-hands.ts'

/**
 * Says whether a person recorded anything of an order, one since replaced too, or handed it over:
 * EN 10204:2004, type 3.1, asks that whoever releases is independent of those who did.
 */
export function didTheWork(evidence: Evidence, userId: number, handOver: HandOver | null): boolean {
  const records = [
    ...evidence.flatnessReadings,
    ...evidence.staticTests,
    ...evidence.measuredValues,
    ...evidence.lapCycles,
    ...evidence.dialSurveys.flatMap(surveyHands),
    ...evidence.findings,
    ...evidence.partLines,
    ...evidence.wearTracks,
    ...evidence.springChecks,
    ...evidence.assemblies,
    ...evidence.dynamicRuns.flatMap((run) => run.hands.map((recordedById) => ({ recordedById }))),
  ]
  return records.some((one) => one.recordedById === userId) || handOver?.byId === userId
}
