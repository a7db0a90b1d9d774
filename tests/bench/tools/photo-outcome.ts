import { fitEllipse } from '../../../src/science/photo/fit-ellipse.ts'
import type { PhotoReading } from '../../../src/science/photo/photo-reading.ts'
import { importBuilt } from './import-built.ts'
import type { PhotoCase } from './photo-case.ts'
import { readPhotoCase } from './read-photo-case.ts'

type Decode = typeof import('../../../src/workers/decode-photo.ts')
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
  /** The same picture read by the edges that the program found, not by the clicks. */
  readonly byFound: { readonly error: number; readonly expanded: number } | null
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

async function findOne(one: PhotoCase, bytes: Uint8Array) {
  const { decodePhoto } = await importBuilt<Decode>('src/workers/decode-photo.ts')
  const { findEdges } = await importBuilt<Find>('src/science/photo/find-edges.ts')
  const decoded = await decodePhoto(bytes)
  if ('fault' in decoded) throw new Error(`${one.id}: ${decoded.fault}`)
  const startedAt = performance.now()
  const found = findEdges(decoded.picture)
  const edgeMs = performance.now() - startedAt
  if (found === null) return { edgeError: null, edgeMs, byFound: null }
  const truth = fitEllipse(one.outerRing)
  const radius = truth === null ? Number.NaN : meanRadius(truth)
  const errors = [
    edgeError(found.outer, one.outerRing, radius),
    edgeError(found.inner, one.innerRing, radius),
  ]
  const isAsked = one.category === 'core'
  const answer = isAsked ? (await readPhotoCase(one, found)).answer : null
  const byFound = answer?.kind === 'read' ? figuresOf(one, answer) : null
  return { edgeError: Math.max(...errors), edgeMs, byFound }
}

const figuresOf = (one: PhotoCase, answer: PhotoReading) => ({
  error: answer.peakToValleyBands - one.pvLS,
  expanded: 2 * answer.standardUncertaintyBands,
})

/** Reads one picture and compares; an exception is kept as what it is, never as a refusal. */
export async function photoOutcome(one: PhotoCase): Promise<PhotoOutcome> {
  const nothing = { error: Number.NaN, expanded: Number.NaN, isStepSeen: false }
  try {
    const { answer, ms, bytes } = await readPhotoCase(one)
    const edges = await findOne(one, bytes)
    if (answer.kind === 'refused') {
      return { of: one, kind: 'refused', reason: answer.reason, ...nothing, ms, ...edges }
    }
    return {
      of: one,
      kind: 'answered',
      reason: '',
      ...figuresOf(one, answer),
      isStepSeen: answer.cautions.includes('local-defect-or-step'),
      ms,
      ...edges,
    }
  } catch (error) {
    const reason = String(error)
    const noEdges = { edgeError: null, edgeMs: 0, byFound: null }
    return { of: one, kind: 'failed', reason, ...nothing, ms: 0, ...noEdges }
  }
}
