import type { EdgeAsSet } from '../../../src/science/photo/prepare-face.ts'
import { importBuilt } from './import-built.ts'
import type { PhotoCase } from './photo-case.ts'

type Decode = typeof import('../../../src/workers/decode-photo.ts')
type Read = typeof import('../../../src/science/photo/read-scaled-photo.ts')

/** What the app makes a picture smaller for. */
const wantedRadiusPx = 600

function radiusOf(edge: EdgeAsSet): number {
  if (!('length' in edge)) return Math.sqrt(edge.rx * edge.ry)
  const xs = edge.map(([x]) => x)
  return (Math.max(...xs) - Math.min(...xs)) / 2
}

/** Reads a picture as the app does: decoded for the size of the face, by its clicks or by edges. */
export async function readPhotoCase(
  one: PhotoCase,
  edges: { readonly outer: EdgeAsSet; readonly inner: EdgeAsSet } = one.clicks,
) {
  const { decodePhoto } = await importBuilt<Decode>('src/workers/decode-photo.ts')
  const { readScaledPhoto } = await importBuilt<Read>('src/science/photo/read-scaled-photo.ts')
  const bytes = await one.jpeg()
  const startedAt = performance.now()
  const decoded = await decodePhoto(bytes, wantedRadiusPx / radiusOf(edges.outer))
  if ('fault' in decoded) throw new Error(`${one.id}: ${decoded.fault}`)
  const answer = readScaledPhoto(decoded.picture, decoded.scale, edges)
  return { answer, ms: performance.now() - startedAt, bytes }
}
