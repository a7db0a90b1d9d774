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
const usualLongestMs = 20_000

let runningCount = 0

/**
 * Runs a Monte Carlo evaluation in a thread beside the one that serves pages.
 * @param limits longestMs: a run that takes longer is stopped
 * @throws AppError too-many `trials-busy` where others run already, `trials-too-long` where it was
 *   stopped; ModelFault where the model gives no finite results
 */
export async function runMonteCarlo(
  model: MeasurementModel,
  options: { readonly trials: number; readonly seed: number; readonly probability: number },
  limits: { readonly longestMs: number } = { longestMs: usualLongestMs },
): Promise<MonteCarloResult> {
  if (runningCount >= mostAtOnce) throw new AppError('too-many', 'trials-busy')
  runningCount++
  try {
    return await inThread({ model, options }, limits.longestMs)
  } finally {
    runningCount--
  }
}

function inThread(workerData: object, longestMs: number): Promise<MonteCarloResult> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(workerUrl(), { workerData })
    let isStopped = false
    const timer = setTimeout(() => {
      isStopped = true
      void worker.terminate()
    }, longestMs)
    worker.once('message', (answer: Answer) => {
      if ('result' in answer) resolve(answer.result)
      else reject(new ModelFault(answer.fault.kind, answer.fault.at))
    })
    worker.once('error', reject)
    // After an answer this changes nothing, the promise is settled.
    worker.once('exit', () => {
      clearTimeout(timer)
      const noAnswer = new Error('runMonteCarlo: the thread ended without an answer')
      reject(isStopped ? new AppError('too-many', 'trials-too-long') : noAnswer)
    })
  })
}

/** Beside the bundle when it is built, in its room when it runs from source. */
function workerUrl(): URL {
  const isSource = import.meta.url.endsWith('.ts')
  const place = isSource ? '../workers/monte-carlo.ts' : './monte-carlo.js'
  return new URL(place, import.meta.url)
}
