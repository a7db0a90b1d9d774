import { fitEllipse } from '../../../src/science/photo/fit-ellipse.ts'
import { importBuilt } from './import-built.ts'
import type { PhotoCase } from './photo-case.ts'

type Decode = typeof import('../../../src/workers/decode-photo.ts')
type Read = typeof import('../../../src/science/photo/read-scaled-photo.ts')
type Find = typeof import('../../../src/science/photo/find-edges.ts')
type Ellipse = import('../../../src/science/photo/ellipse.ts').Ellipse

/** What became of one picture. */
export interface PhotoOutcome {
  readonly of: PhotoCase
  readonly kind: 'answered' | 'refused' | 'failed'
  readonly reason: string
  /** Read less true flatness, and expanded uncertainty, bands; NaN when not answered. */
  readonly error: number
  readonly expanded: number
  readonly isStepSeen: boolean
  readonly ms: number
  /** Largest error of a found edge, middle or mean radius, in outer radii; null: not found. */
  readonly edgeError: number | null
  readonly edgeMs: number
}

const meanRadius = ({ rx, ry }: Ellipse) => Math.sqrt(rx * ry)

function edgeError(found: Ellipse, ring: PhotoCase['outerRing'], radius: number): number {
  const truth = fitEllipse(ring)
  if (truth === null) throw new RangeError('edgeError requires a ring that is an ellipse')
  const off = Math.hypot(found.cx - truth.cx, found.cy - truth.cy)
  return Math.max(off, Math.abs(meanRadius(found) - meanRadius(truth))) / radius
}

/** Reads a picture as the app does: decoded for the size of the face, by the edges as set. */
async function readOne(one: PhotoCase) {
  const { decodePhoto } = await importBuilt<Decode>('src/workers/decode-photo.ts')
  const { readScaledPhoto } = await importBuilt<Read>('src/science/photo/read-scaled-photo.ts')
  const bytes = await one.jpeg()
  const xs = one.clicks.outer.map(([x]) => x)
  const radius = (Math.max(...xs) - Math.min(...xs)) / 2
  const startedAt = performance.now()
  const decoded = await decodePhoto(bytes, 600 / radius)
  if ('fault' in decoded) throw new Error(`${one.id}: ${decoded.fault}`)
  const answer = readScaledPhoto(decoded.picture, decoded.scale, one.clicks)
  return { answer, ms: performance.now() - startedAt, bytes }
}

async function findOne(one: PhotoCase, bytes: Uint8Array) {
  const { decodePhoto } = await importBuilt<Decode>('src/workers/decode-photo.ts')
  const { findEdges } = await importBuilt<Find>('src/science/photo/find-edges.ts')
  const decoded = await decodePhoto(bytes)
  if ('fault' in decoded) throw new Error(`${one.id}: ${decoded.fault}`)
  const startedAt = performance.now()
  const found = findEdges(decoded.picture)
  const edgeMs = performance.now() - startedAt
  if (found === null) return { edgeError: null, edgeMs }
  const truth = fitEllipse(one.outerRing)
  const radius = truth === null ? Number.NaN : meanRadius(truth)
  const errors = [
    edgeError(found.outer, one.outerRing, radius),
    edgeError(found.inner, one.innerRing, radius),
  ]
  return { edgeError: Math.max(...errors), edgeMs }
}

/** Reads one picture and compares; an exception is kept as what it is, never as a refusal. */
export async function photoOutcome(one: PhotoCase): Promise<PhotoOutcome> {
  const nothing = { error: Number.NaN, expanded: Number.NaN, isStepSeen: false }
  try {
    const { answer, ms, bytes } = await readOne(one)
    const edges = await findOne(one, bytes)
    if (answer.kind === 'refused') {
      return { of: one, kind: 'refused', reason: answer.reason, ...nothing, ms, ...edges }
    }
    return {
      of: one,
      kind: 'answered',
      reason: '',
      error: answer.peakToValleyBands - one.pvLS,
      expanded: 2 * answer.standardUncertaintyBands,
      isStepSeen: answer.cautions.includes('local-defect-or-step'),
      ms,
      ...edges,
    }
  } catch (error) {
    const reason = String(error)
    return { of: one, kind: 'failed', reason, ...nothing, ms: 0, edgeError: null, edgeMs: 0 }
  }
}
