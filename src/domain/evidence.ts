import type { Customer } from './customer.ts'
import type { Equipment } from './equipment.ts'
import type { FlatnessReading } from './flatness.ts'
import type { LimitSet } from './limit-set.ts'
import type { Decision, HandOver } from './release.ts'
import type { Seal } from './seal.ts'
import type { StaticTest } from './static-test.ts'
import type { StageChange, WorkOrder } from './work-order.ts'

/** Everything recorded about one work order: what the inspector sees and the rules judge. */
export type Evidence = {
  readonly workOrder: WorkOrder
  readonly customer: Customer
  readonly equipment: Equipment | null
  readonly seal: Seal
  readonly limitSet: LimitSet
  /** All of them, replaced ones too, oldest first; so are the lists below. */
  readonly flatnessReadings: readonly FlatnessReading[]
  readonly staticTests: readonly StaticTest[]
  readonly stageChanges: readonly StageChange[]
  /** The latest one. */
  readonly handOver: HandOver | null
  readonly decisions: readonly Decision[]
}
