import type { StatedRule } from './agreed-rule.ts'
import type { Service } from './service.ts'
import type { Stage } from './stage.ts'

/** Was the seal declared clean of its last fluid? Asked at receipt, shown until it is answered. */
export const decontaminationStates = ['stated-clean', 'not-needed', 'not-stated'] as const
export type DecontaminationState = (typeof decontaminationStates)[number]

export type WorkOrder = {
  readonly id: number
  /** `W-2026-0042`: what is typed, scanned and written on the tag. */
  readonly number: string
  readonly customerId: number
  readonly sealId: number
  readonly limitSetId: number
  readonly customerOrder: string
  readonly reasonForRemoval: string
  readonly decontamination: DecontaminationState
  readonly lastFluid: string
  /** Service data as stated by the customer; null where not stated. */
  readonly sealedPressureKPa: number | null
  readonly serviceTemperatureC: number | null
  readonly shaftSpeedPerMin: number | null
  readonly service: Service
  readonly receivedAt: string
  readonly dueOn: string | null
  readonly stage: Stage
  readonly isInvented: boolean
}

export type NewWorkOrder = Omit<WorkOrder, 'id' | 'number' | 'stage'>

/** An order as it is received; null: no rule was stated, and what the customer agreed to holds. */
export type ReceivedWorkOrder = NewWorkOrder & { readonly statedRule?: StatedRule | null }

/** One step of the order's way; the list of them is never edited. */
export type StageChange = {
  readonly id: number
  readonly workOrderId: number
  readonly from: Stage | null
  readonly to: Stage
  readonly reason: string
  readonly byName: string
  readonly at: string
}
