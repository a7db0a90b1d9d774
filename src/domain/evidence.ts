import type { AgreedRule } from './agreed-rule.ts'
import type { Assembly } from './assembly.ts'
import type { Concession } from './concession.ts'
import type { Customer } from './customer.ts'
import type { SurveyRecord } from './dial-survey.ts'
import type { Doubt } from './doubt.ts'
import type { DynamicRun } from './dynamic-run.ts'
import type { Equipment } from './equipment.ts'
import type { Finding } from './finding.ts'
import type { FlatnessReading } from './flatness.ts'
import type { LapCycle } from './lap-cycle.ts'
import type { LimitSet } from './limit-set.ts'
import type { MeasuredValue } from './measured-value.ts'
import type { PartLine } from './part-line.ts'
import type { Decision, HandOver } from './release.ts'
import type { Seal } from './seal.ts'
import type { SpringCheck } from './spring-check.ts'
import type { StaticTest } from './static-test.ts'
import type { WearTrack } from './wear-track.ts'
import type { StageChange, WorkOrder } from './work-order.ts'

/** Everything recorded about one work order: what the inspector sees and the rules judge. */
export type Evidence = {
  readonly workOrder: WorkOrder
  readonly customer: Customer
  readonly equipment: Equipment | null
  readonly seal: Seal
  readonly limitSet: LimitSet
  readonly agreedRule: AgreedRule
  /** All of them, replaced ones too, oldest first; so are the lists below. */
  readonly flatnessReadings: readonly FlatnessReading[]
  readonly staticTests: readonly StaticTest[]
  readonly measuredValues: readonly MeasuredValue[]
  readonly findings: readonly Finding[]
  readonly partLines: readonly PartLine[]
  /** With everything read; open ones and those given up too. */
  readonly dialSurveys: readonly SurveyRecord[]
  readonly lapCycles: readonly LapCycle[]
  readonly wearTracks: readonly WearTrack[]
  readonly springChecks: readonly SpringCheck[]
  readonly assemblies: readonly Assembly[]
  readonly dynamicRuns: readonly DynamicRun[]
  /** Of the orders of this seal before it. */
  readonly earlierLapCycles: readonly LapCycle[]
  readonly concessions: readonly Concession[]
  /** Of every record of the order that an instrument found out of tolerance was used for. */
  readonly doubts: readonly Doubt[]
  readonly stageChanges: readonly StageChange[]
  /** The latest one. */
  readonly handOver: HandOver | null
  readonly decisions: readonly Decision[]
}
