import { linearRegression } from 'simple-statistics'
import { seededNormal } from '../science/seeded-random.ts'
import { alternate } from './tools/alternate.ts'
import type { Benchmark, Measured } from './tools/benchmark.ts'
import { importBuilt } from './tools/import-built.ts'
import { msPerCall } from './tools/ms-per-call.ts'

type Leak = typeof import('../../src/science/leak/pressure-trace.ts')

/** An hour at one reading a second: a slow leak, a gauge that shows 10 Pa and has 20 Pa of noise. */
function hourOfReadings() {
  const noise = seededNormal(3600)
  return Array.from({ length: 3600 }, (_, timeS) => ({
    timeS,
    pressureKPaAbs: Math.round((271.3 - 0.0002 * timeS + 0.02 * noise()) * 100) / 100,
    temperatureC: Math.round((20 + 0.02 * noise()) * 100) / 100,
  }))
}

async function run(): Promise<Measured> {
  const { pressureTrace } = await importBuilt<Leak>('src/science/leak/pressure-trace.ts')
  const trace = hourOfReadings()
  const points = trace.map(({ timeS, pressureKPaAbs }) => [timeS, pressureKPaAbs])
  const input = { volumeL: 2.5, referenceTemperatureC: 20, trace }
  if (pressureTrace(input).settling !== 'settled') {
    throw new Error('trace-leak requires a trace that has settled')
  }
  return alternate({
    ours: () => msPerCall(() => pressureTrace(input), 60),
    peer: () => msPerCall(() => linearRegression(points), 60),
    rounds: 15,
    warmUpRounds: 3,
  })
}

export const benchmark: Benchmark = {
  name: 'trace-leak',
  unit: 'ms',
  peerName: 'simple-statistics linearRegression, the same 3600 samples',
  run,
}
