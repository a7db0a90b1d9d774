import { lamps } from '../../src/science/optics/lamps.ts'
import { alternate } from './tools/alternate.ts'
import type { Benchmark, Measured } from './tools/benchmark.ts'
import { importBuilt } from './tools/import-built.ts'
import { msPerCall } from './tools/ms-per-call.ts'

type Count = typeof import('../../src/science/surface/counted-flatness.ts')
type Budget = typeof import('../../src/science/uncertainty/counted-flatness-budget.ts')

/** Quarter bands from 0.25 to 16, so that no figure can be known beforehand. */
const counts = Array.from({ length: 64 }, (_, index) => (index + 1) / 4)

async function run(): Promise<Measured> {
  const { countedFlatness } = await importBuilt<Count>('src/science/surface/counted-flatness.ts')
  const { countedFlatnessBudget } = await importBuilt<Budget>(
    'src/science/uncertainty/counted-flatness-budget.ts',
  )
  const { wavelengthNm } = lamps.helium
  const answer = (bands: number): number => {
    const readings = [
      { directionDeg: 0, bands },
      { directionDeg: 90, bands: bands / 2 },
    ]
    const result = countedFlatness({ pattern: 'convex', readings, wavelengthNm })
    const budget = countedFlatnessBudget({
      ...result,
      isSumOfTwoDirections: false,
      opticalFlatToleranceUm: 0.05,
      viewingAngleLimitDeg: 10,
      repeatability: { standardDeviationBands: 0.1, count: 3 },
    })
    return result.flatnessUm + budget.expandedUncertaintyUm
  }
  const bare = (bands: number): number => (wavelengthNm / 2000) * bands
  const usPerCall = (work: (bands: number) => number) => () =>
    (msPerCall(() => counts.reduce((sum, bands) => sum + work(bands), 0), 60) * 1000) /
    counts.length
  return alternate({
    ours: usPerCall(answer),
    peer: usPerCall(bare),
    rounds: 15,
    warmUpRounds: 3,
  })
}

export const benchmark: Benchmark = {
  name: 'counted-flatness',
  unit: 'µs',
  peerName: 'the bare formula, wavelength / 2 × bands',
  run,
}
