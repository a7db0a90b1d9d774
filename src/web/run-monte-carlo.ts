import { Worker } from 'node:worker_threads'
import { AppError } from '../domain/app-error.ts'
import { ModelFault, type ModelFaultKind } from '../science/uncertainty/expression/model-fault.ts'
import type { MeasurementModel } from '../science/uncertainty/measurement-model.ts'
import type { MonteCarloResult } from '../science/uncertainty/monte-carlo.ts'

type Answer =
  | { readonly result: MonteCarloResult }
  | { readonly fault: { readonly kind: ModelFaultKind; readonly at: number } }

/** More at once would only wait for each other on a small machine. */
const mostAtOnce = 2
const longestMs = 20_000

let runningCount = 0

/**
 * Runs a Monte Carlo evaluation in a thread beside the one that serves pages.
 * @throws AppError too-many `trials-busy` where others run already, or it takes too long;
 *   ModelFault where the model gives no finite results
 */
export async function runMonteCarlo(
  model: MeasurementModel,
  options: { readonly trials: number; readonly seed: number; readonly probability: number },
): Promise<MonteCarloResult> {
  if (runningCount >= mostAtOnce) throw new AppError('too-many', 'trials-busy')
  runningCount++
  try {
    return await inThread(model, options)
  } finally {
    runningCount--
  }
}

function inThread(model: MeasurementModel, options: object): Promise<MonteCarloResult> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(workerUrl(), { workerData: { model, options } })
    const timer = setTimeout(() => {
      void worker.terminate()
      reject(new AppError('too-many', 'trials-busy'))
    }, longestMs)
    worker.once('message', (answer: Answer) => {
      if ('result' in answer) resolve(answer.result)
      else reject(new ModelFault(answer.fault.kind, answer.fault.at))
    })
    worker.once('error', reject)
    worker.once('exit', () => clearTimeout(timer))
  })
}

/** Beside the bundle when it is built, in its room when it runs from source. */
function workerUrl(): URL {
  const isSource = import.meta.url.endsWith('.ts')
  const place = isSource ? '../workers/monte-carlo.ts' : './monte-carlo.js'
  return new URL(place, import.meta.url)
}
