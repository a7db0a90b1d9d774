import type { Evidence } from './evidence.ts'
import { type FinishOrder, finishOrder } from './finish-order.ts'

/** Of every component of a seal that leaves matted: when it was matted, and what was read of it. */
export function finishOrders(
  evidence: Evidence,
): readonly (FinishOrder & { readonly componentId: number })[] {
  return evidence.seal.components.flatMap(({ id: componentId }) => {
    const order = finishOrder(evidence, componentId)
    return order === null ? [] : [{ componentId, ...order }]
  })
}
