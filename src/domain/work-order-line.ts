import type { WorkOrder } from './work-order.ts'

/** A work order in a list, with the names that people know it by. */
export type WorkOrderLine = WorkOrder & {
  readonly customerName: string
  readonly sealSerial: string
  readonly equipmentTag: string | null
}
