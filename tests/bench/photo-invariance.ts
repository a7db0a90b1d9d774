import type { PhotoReading } from '../../src/science/photo/photo-reading.ts'
import type { Benchmark, Measured } from './tools/benchmark.ts'
import { importBuilt } from './tools/import-built.ts'
import { ownPhotos } from './tools/own-photos.ts'
import type { PhotoCase } from './tools/photo-case.ts'
import { photoVariants } from './tools/photo-variants.ts'
import { pressPair } from './tools/press-pairs.ts'
import { publicPhotos } from './tools/public-photos.ts'
import { rolledPhoto } from './tools/rolled-photo.ts'

type Read = typeof import('../../src/workers/read-photo-bytes.ts')
type Figures = typeof import('../../src/science/surface/surface-figures.ts')
type Maps = typeof import('../../src/science/surface/surface-map.ts')
type Press = typeof import('../../src/science/surface/press-test.ts')

/** Seeds that no limit of the method was chosen on. */
const firstSeed = 95_000
const ownCount = 8
const pairCount = 10
const size = { ringCount: 17, angleCount: 180 } as const

async function read(
  jpeg: Uint8Array,
  clicks: Pick<PhotoCase, 'clicks'>['clicks'],
): Promise<PhotoReading | null> {
  const { readPhotoBytes } = await importBuilt<Read>('src/workers/read-photo-bytes.ts')
  const answer = await readPhotoBytes(jpeg, clicks)
  return 'result' in answer && answer.result.kind === 'read' ? answer.result : null
}

type Tally = { within: number; answered: number; asked: number; shares: number[] }
const none = (): Tally => ({ within: 0, answered: 0, asked: 0, shares: [] })

async function run(): Promise<Measured> {
  const { surfaceFigures } = await importBuilt<Figures>('src/science/surface/surface-figures.ts')
  const { surfaceMap } = await importBuilt<Maps>('src/science/surface/surface-map.ts')
  const own = ownPhotos('core', firstSeed, ownCount)
  const cases = [...publicPhotos().filter((one) => one.category === 'core'), ...own]
  const tallies = new Map<string, Tally>()
  const zoneErrors: number[] = []
  let zonesCovered = 0
  for (const [index, one] of cases.entries()) {
    const base = await read(await one.jpeg(), one.clicks)
    if (base === null) continue
    const expanded = 2 * base.standardUncertaintyBands
    const zone = surfaceFigures(surfaceMap(base.surface, size)).minimumZone
    const error = Math.abs(zone - one.pvMZ)
    zoneErrors.push(error)
    if (error <= expanded) zonesCovered++
    const at = own.indexOf(one)
    const rolled = at < 0 ? [] : [await rolledPhoto(firstSeed + at)]
    for (const variant of [...(await photoVariants(one, index + 1)), ...rolled]) {
      const tally = tallies.get(variant.of) ?? none()
      tallies.set(variant.of, tally)
      tally.asked++
      const again = await read(variant.jpeg, variant.clicks)
      if (again === null) continue
      tally.answered++
      const share = Math.abs(again.peakToValleyBands - base.peakToValleyBands) / expanded
      tally.shares.push(share)
      if (share < 0.5) tally.within++
    }
  }
  const shares = [...tallies.values()].flatMap((one) => one.shares)
  const rows = [...tallies].map(
    ([name, { within, answered, asked, shares: own }]) =>
      `${name}: change below U/2 in ${within} of ${answered} answered of ${asked}; largest ${Math.max(...own).toFixed(3)} U`,
  )
  return {
    value: Math.max(...shares),
    peerValue: 0.5,
    notes: [
      '',
      `${zoneErrors.length} faces, ${ownCount} of them our own, seeds from ${firstSeed}`,
      ...rows,
      `minimum zone: error median ${median(zoneErrors).toFixed(4)}, largest ${Math.max(...zoneErrors).toFixed(4)} band; U of the flatness covers ${zonesCovered} of ${zoneErrors.length}`,
      await pressed(),
    ],
  }
}

async function pressed(): Promise<string> {
  const { pressTest } = await importBuilt<Press>('src/science/surface/press-test.ts')
  let [right, wrong, open, refused] = [0, 0, 0, 0]
  for (let k = 0; k < pairCount; k++) {
    const { first, second, clicks, opensTowardsDeg } = await pressPair(firstSeed + 1000 + k)
    const [one, other] = [await read(first, clicks), await read(second, clicks)]
    if (one === null || other === null) refused++
    else {
      const { sign } = pressTest(one.gap, other.gap)
      const saidDeg = one.tiltDirectionDeg + (sign < 0 ? 180 : 0)
      const isRight = Math.cos(((saidDeg - opensTowardsDeg) * Math.PI) / 180) > 0
      if (sign === 0) open++
      else if (isRight) right++
      else wrong++
    }
  }
  return `press test with two photographs, 0.1 to 0.35 band: ${right} right, ${wrong} wrong, ${open} open, ${refused} not read, of ${pairCount}`
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN
}

export const benchmark: Benchmark = {
  name: 'photo-invariance',
  unit: 'U',
  peerName: 'the bar: turning, mirroring and clicking again change the flatness by less than U/2',
  run,
}
