import type { Evidence } from '../../domain/evidence.ts'
import { readEvidence } from '../../store/read-evidence.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { viewer } from '../viewer.ts'

/**
 * Everything of the order on the strip bench.
 * @throws AppError not-found where the order is not there
 */
export function openStripDesk(c: AppContext): Evidence {
  const { store } = c.var.shop
  const order = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  return readEvidence(store, order.id)
}
