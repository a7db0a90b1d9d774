import type { AgreedRule } from './agreed-rule.ts'
import type { LimitSet } from './limit-set.ts'
import type { Seal } from './seal.ts'
import type { WorkOrder } from './work-order.ts'

/** What every result of an order is judged by, beside itself. Evidence has all of it. */
export type JudgeContext = {
  readonly limitSet: LimitSet
  readonly agreedRule: AgreedRule
  readonly seal: Seal
  readonly workOrder: WorkOrder
}
