import { DynamicRunPage } from '../../../views/dynamic-run-page.tsx'
import { AppError } from '../../domain/app-error.ts'
import { listDynamicRuns } from '../../store/list-dynamic-runs.ts'
import { requireSeal } from '../../store/require-seal.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { idOf } from '../id-of.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { viewer } from '../viewer.ts'
import { computedRun } from './computed-run.ts'

/** One run on the rig with all that its readings say so far. */
export function showDynamicRun(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const order = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  const id = idOf(c.req.param('id'), 'no-run')
  const run = listDynamicRuns(store, order.id).find((one) => one.id === id)
  if (run === undefined) throw new AppError('not-found', 'no-run')
  const page = (
    <DynamicRunPage
      frame={frameOf(c, ['live-run'])}
      orderNumber={order.number}
      sealSerial={requireSeal(store, order.sealId).serial}
      run={run}
      {...computedRun(store, run)}
    />
  )
  return sendPage(c, page)
}
