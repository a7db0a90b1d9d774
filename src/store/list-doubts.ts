import type { Doubt } from '../domain/doubt.ts'
import type { Store } from './open.ts'

/** Of every record of an order that an instrument found out of tolerance was used for. */
export function listDoubts(_store: Store, _workOrderId: number): Doubt[] {
  return []
}
