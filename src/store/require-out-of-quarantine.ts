import { AppError } from '../domain/app-error.ts'
import type { WorkOrder } from '../domain/work-order.ts'

/**
 * Nobody opens a seal of which nobody said that it is clean, so nothing is found inside it.
 * @throws AppError conflict `in-quarantine`
 */
export function requireOutOfQuarantine(order: WorkOrder): WorkOrder {
  if (order.decontamination !== 'not-stated') return order
  throw new AppError('conflict', 'in-quarantine', { number: order.number })
}
