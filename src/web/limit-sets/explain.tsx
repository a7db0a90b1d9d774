import { LimitReasonsPage } from '../../../views/limit-reasons-page.tsx'
import { explainOrderLimits } from '../../domain/explain-order-limits.ts'
import { requireLimitSet } from '../../store/require-limit-set.ts'
import { requireSeal } from '../../store/require-seal.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { viewer } from '../viewer.ts'

/** Which limits an order is judged by, and why these: asked of the set that the order keeps. */
export function explainLimits(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const workOrder = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  const limitSet = requireLimitSet(store, workOrder.limitSetId)
  const seal = requireSeal(store, workOrder.sealId)
  const page = (
    <LimitReasonsPage
      frame={frameOf(c)}
      orderNumber={workOrder.number}
      limitSet={limitSet}
      parts={explainOrderLimits({ limitSet, seal, workOrder })}
    />
  )
  return sendPage(c, page)
}
