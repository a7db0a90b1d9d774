import type { Benchmark, Measured } from './tools/benchmark.ts'
import { ownPhotos } from './tools/own-photos.ts'
import { photoBars } from './tools/photo-bars.ts'
import type { PhotoCase } from './tools/photo-case.ts'
import { photoMemoryMb } from './tools/photo-memory.ts'
import { type PhotoOutcome, photoOutcome } from './tools/photo-outcome.ts'
import { photoPeer } from './tools/photo-peer.ts'
import { publicPhotos } from './tools/public-photos.ts'
import { withScratchFolder } from './tools/scratch-folder.ts'

/** Seeds of our own pictures that no limit of the method was chosen on. */
const firstSeed = 90_000
/** A share of the recipe of the suite: as many of each kind, so that it takes a minute or two. */
const counts = { core: 30, hard: 10, maybe: 5, refuse: 14 } as const

async function outcomesOf(cases: readonly PhotoCase[]): Promise<PhotoOutcome[]> {
  const outcomes: PhotoOutcome[] = []
  for (const one of cases) outcomes.push(await photoOutcome(one))
  return outcomes
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN
}

async function run(): Promise<Measured> {
  const known = publicPhotos()
  // The first reading compiles: it is not counted.
  await photoOutcome(known[0] as PhotoCase)
  const outcomes = await outcomesOf(known)
  const own = (Object.keys(counts) as (keyof typeof counts)[]).flatMap((category) =>
    ownPhotos(category, firstSeed, counts[category]),
  )
  const memoryMb = await withScratchFolder(photoMemoryMb)
  const core = outcomes.filter((one) => one.of.category === 'core')
  const peer = await withScratchFolder((folder) => photoPeer(folder, core))
  return {
    value: median(core.map((one) => one.ms)),
    peerValue: peer.ms,
    notes: [
      ...photoBars('Public suite', outcomes),
      ...photoBars(`Our own, seeds from ${firstSeed}`, await outcomesOf(own)),
      '',
      `memory for 12 megapixels ${memoryMb.toFixed(0)} MB, bar 400: ${memoryMb <= 400 ? 'reached' : 'MISSED'}`,
      peer.note,
    ],
  }
}

export const benchmark: Benchmark = {
  name: 'photo-reading',
  unit: 'ms',
  peerName: 'the main path of the same method in numpy and scipy, the same pictures',
  run,
}
