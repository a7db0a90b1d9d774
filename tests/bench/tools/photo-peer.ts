import { execFileSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { projectRoot } from '../../../src/project-root.ts'
import { shrinkPicture } from '../../../src/science/photo/edges/shrink-picture.ts'
import { fitEllipse } from '../../../src/science/photo/fit-ellipse.ts'
import { ringMap } from '../../../src/science/photo/ring-map.ts'
import { scaleEllipse } from '../../../src/science/photo/scale-ellipse.ts'
import { importBuilt } from './import-built.ts'
import type { PhotoOutcome } from './photo-outcome.ts'

type Decode = typeof import('../../../src/workers/decode-photo.ts')

/** Writes a picture as 32-bit numbers, with the true edges: the peer follows none of its own. */
async function caseOf(folder: string, { of: one }: PhotoOutcome, index: number) {
  const { decodePhoto } = await importBuilt<Decode>('src/workers/decode-photo.ts')
  const decoded = await decodePhoto(await one.jpeg())
  const [outer, inner] = [fitEllipse(one.outerRing), fitEllipse(one.innerRing)]
  if ('fault' in decoded || outer === null || inner === null) throw new RangeError(one.id)
  const { light, width, height, scale } = shrinkPicture(decoded.picture, 1600)
  const file = `${index}.f32`
  writeFileSync(join(folder, file), light)
  const edge = scaleEllipse(outer, scale)
  const eps = Math.sqrt((inner.rx * inner.ry) / (outer.rx * outer.ry))
  const axisRatio = Math.min(edge.rx, edge.ry) / Math.max(edge.rx, edge.ry)
  return { file, width, height, eps, axisRatio, ...ringMap(edge) }
}

/** The peer's median time of one picture; null, and why, where there is no numpy and scipy. */
export async function photoPeer(
  folder: string,
  outcomes: readonly PhotoOutcome[],
): Promise<{ readonly ms: number | null; readonly note: string }> {
  try {
    execFileSync('python3', ['-c', 'import numpy, scipy'], { stdio: 'ignore' })
  } catch {
    return { ms: null, note: 'peer not available: python3 with numpy and scipy is not here' }
  }
  const cases = []
  for (const [index, one] of outcomes.entries()) cases.push(await caseOf(folder, one, index))
  writeFileSync(join(folder, 'cases.json'), JSON.stringify(cases))
  const script = join(projectRoot(), 'tests/bench/photo-peer.py')
  const env = { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1' }
  const printed = execFileSync('python3', [script, folder], { encoding: 'utf8', env })
  const answers = JSON.parse(printed) as { ms: number; flatness: number }[]
  const times = answers.map((one) => one.ms).sort((a, b) => a - b)
  const right = answers.filter(({ flatness }, i) => {
    return Math.abs(flatness - (outcomes[i] as PhotoOutcome).of.pvLS) <= 0.1
  }).length
  return {
    ms: times[Math.floor(times.length / 2)] ?? null,
    note: `the peer is within 0.1 band in ${right} of ${answers.length}, refusing none`,
  }
}
