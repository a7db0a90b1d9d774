import { DynamicRunPage } from '../../../views/dynamic-run-page.tsx'
import { AppError } from '../../domain/app-error.ts'
import { computeDynamicRun } from '../../domain/compute-dynamic-run.ts'
import { latestRunBatch } from '../../store/latest-run-batch.ts'
import { listDynamicRuns } from '../../store/list-dynamic-runs.ts'
import { readRunSamples } from '../../store/read-run-samples.ts'
import { requireSeal } from '../../store/require-seal.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { idOf } from '../id-of.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { viewer } from '../viewer.ts'

/** One run on the rig with all that its readings say so far. */
export function showDynamicRun(c: AppContext): Promise<Response> {
  const { store } = c.var.shop
  const order = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  const id = idOf(c.req.param('id'), 'no-run')
  const run = listDynamicRuns(store, order.id).find((one) => one.id === id)
  if (run === undefined) throw new AppError('not-found', 'no-run')
  // Before its readings are read: what comes between is told by the stream once more.
  const latestBatch = latestRunBatch(store, id)
  const page = (
    <DynamicRunPage
      frame={frameOf(c, ['live-run'])}
      orderNumber={order.number}
      sealSerial={requireSeal(store, order.sealId).serial}
      run={run}
      latestBatch={latestBatch}
      computed={computeDynamicRun(readRunSamples(store, id), run.densityKgPerM3)}
    />
  )
  return sendPage(c, page)
}
