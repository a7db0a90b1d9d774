import { alternate } from './tools/alternate.ts'
import type { Benchmark, Measured } from './tools/benchmark.ts'
import { importBuilt } from './tools/import-built.ts'
import { msPerCall } from './tools/ms-per-call.ts'

type Science = typeof import('../../src/science/uncertainty/monte-carlo.ts')

const trials = 1_000_000
const names = ['volume', 'start', 'end', 'duration']

/** A leak from four uncertain quantities: volume, two pressures and the time held. */
const model = {
  expression: 'volume * (start - end) / duration',
  quantities: names.map((name, index) => ({
    name,
    value: [5, 271.3, 268.1, 600][index] ?? 1,
    distribution: 'normal' as const,
    standardUncertainty: [0.1, 0.03, 0.03, 1][index] ?? 1,
    degreesOfFreedom: null,
  })),
}

async function run(): Promise<Measured> {
  const { monteCarlo } = await importBuilt<Science>('src/science/uncertainty/monte-carlo.ts')
  let seed = 0
  const ours = () => monteCarlo(model, { trials, seed: seed++, probability: 0.95 })
  const bare = () => {
    const results = new Float64Array(trials)
    for (let i = 0; i < trials; i++) {
      results[i] = Math.random() + Math.random() + Math.random() + Math.random()
    }
    return results.sort()
  }
  return alternate({
    ours: () => msPerCall(ours, 1),
    peer: () => msPerCall(bare, 1),
    rounds: 7,
    warmUpRounds: 2,
  })
}

export const benchmark: Benchmark = {
  name: 'monte-carlo',
  unit: 'ms',
  peerName: 'Math.random four times a trial and Float64Array.sort, as many trials',
  run,
}
