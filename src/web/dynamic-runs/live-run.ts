import { streamSSE } from 'hono/streaming'
import { AppError } from '../../domain/app-error.ts'
import { latestRunBatch } from '../../store/latest-run-batch.ts'
import { listDynamicRuns } from '../../store/list-dynamic-runs.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { idOf } from '../id-of.ts'
import { leaving } from '../leaving.ts'
import { viewer } from '../viewer.ts'

const tickMs = 1000
/** Proxies drop a connection that says nothing. */
const ticksOfSilence = 15
/** Then the browser comes again, and is asked again who it is. */
const mostTicks = 600

/**
 * Tells a page that readings of a run have come, as server-sent events: the number of the last batch.
 * The first event comes at once, so that a page that lost the connection misses nothing.
 */
export function liveDynamicRun(c: AppContext): Response {
  const { store } = c.var.shop
  const order = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  const id = idOf(c.req.param('id'), 'no-run')
  if (!listDynamicRuns(store, order.id).some((one) => one.id === id)) {
    throw new AppError('not-found', 'no-run')
  }
  c.header('cache-control', 'no-store')
  return streamSSE(c, async (stream) => {
    let told = -1
    for (let tick = 0; tick < mostTicks && !isOver(stream); tick++) {
      const latest = latestRunBatch(store, id)
      if (latest !== told) {
        told = latest
        await stream.writeSSE({ event: 'readings', data: String(latest), id: String(latest) })
      } else if (tick % ticksOfSilence === ticksOfSilence - 1) await stream.write(': here\n\n')
      await stream.sleep(tickMs)
    }
  })
}

function isOver(stream: { readonly aborted: boolean }): boolean {
  return stream.aborted || leaving.signal.aborted
}
