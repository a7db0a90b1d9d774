import { parentPort, workerData } from 'node:worker_threads'
import { ModelFault } from '../science/uncertainty/expression/model-fault.ts'
import { monteCarlo } from '../science/uncertainty/monte-carlo.ts'

/** One evaluation in a thread of its own, so that pages are served meanwhile. */
try {
  const { model, options } = workerData
  parentPort?.postMessage({ result: monteCarlo(model, options) })
} catch (error) {
  if (!(error instanceof ModelFault)) throw error
  parentPort?.postMessage({ fault: { kind: error.kind, at: error.at } })
}
