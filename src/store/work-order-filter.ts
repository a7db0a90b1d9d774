import type { Stage } from '../domain/stage.ts'

export type WorkOrderFilter = {
  readonly stage?: Stage
  readonly customerId?: number
  readonly sealId?: number
  /** Part of the number, the customer's order, the serial, the tag or the customer's name. */
  readonly q?: string
  /** `nextCursor` of the page before. */
  readonly cursor?: string
  readonly limit: number
}
