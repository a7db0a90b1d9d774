import { computeDynamicRun } from '../../domain/compute-dynamic-run.ts'
import { parseDynamicRunBody } from '../../domain/parse-dynamic-run-body.ts'
import { parseRunSamples } from '../../domain/parse-run-samples.ts'
import { addDynamicRun } from '../../store/add-dynamic-run.ts'
import { addRunSamples } from '../../store/add-run-samples.ts'
import type { Store } from '../../store/open.ts'
import { readRunBatches } from '../../store/read-run-batches.ts'
import { requireDynamicRun } from '../../store/require-dynamic-run.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { idOf } from '../id-of.ts'
import { actor, viewer } from '../viewer.ts'
import { answerOnce } from './answer-once.ts'
import { mustParse } from './must-parse.ts'
import { readJson } from './read-json.ts'

/** Begins a run on the rig; its readings may come with it, or in batches later. */
export async function apiCreateDynamicRun(c: AppContext): Promise<Response> {
  const body = await readJson(c)
  const { store } = c.var.shop
  const order = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  return answerOnce(c, body, () => {
    const by = actor(c)
    const { run, samples } = mustParse(parseDynamicRunBody(body.input, by.at))
    const { id } = addDynamicRun(store, { ...run, workOrderId: order.id }, samples, by)
    return { status: 201, body: { ...answerOf(store, id), startedAt: run.startedAt } }
  })
}

/** Keeps a batch of readings of a run. */
export async function apiAddRunSamples(c: AppContext): Promise<Response> {
  const body = await readJson(c)
  const { store } = c.var.shop
  const run = requireDynamicRun(store, idOf(c.req.param('id'), 'no-run'))
  return answerOnce(c, body, () => {
    const samples = mustParse(parseRunSamples(body.input))
    const { id: batchId } = addRunSamples(store, run, samples, actor(c))
    return { status: 201, body: { runId: run.id, batchId, keptCount: samples.length } }
  })
}

function answerOf(store: Store, id: number) {
  // Not the kept one: this may still be undone.
  const { densityKgPerM3 } = requireDynamicRun(store, id)
  const computed = computeDynamicRun(readRunBatches(store, id), densityKgPerM3)
  const leak = computed?.leak ?? null
  return {
    id,
    sampleCount: computed?.samples.length ?? 0,
    steadyGPerH: leak?.steadyGPerH ?? null,
    steadyMlPerH: leak?.steadyMlPerH ?? null,
    confidence95GPerH: leak?.confidence95GPerH ?? null,
    runIn: leak?.runIn ?? null,
    steadyFromS: leak?.steadyFromS ?? null,
    cautions: [...(computed?.cautions ?? []), ...(leak?.cautions ?? [])],
  }
}
