import { parentPort, workerData } from 'node:worker_threads'
import { findEdges } from '../science/photo/find-edges.ts'
import type { EdgeAsSet } from '../science/photo/prepare-face.ts'
import type { PhotoOptions } from '../science/photo/read-photo.ts'
import { readScaledPhoto } from '../science/photo/read-scaled-photo.ts'
import { scaleEllipse } from '../science/photo/scale-ellipse.ts'
import { decodePhoto } from './decode-photo.ts'

/** A face of this radius shows all that is needed; a larger one only takes longer. */
const wantedRadiusPx = 600

/** An edge that nobody set is null, and is found in the picture. */
type Asked = Omit<PhotoOptions, 'outer' | 'inner'> & {
  readonly outer: EdgeAsSet | null
  readonly inner: EdgeAsSet | null
}

/** About the radius of an edge as it was set: half of the longer side of its box. */
function radiusOf(edge: EdgeAsSet): number {
  if (!('length' in edge)) return Math.max(edge.rx, edge.ry)
  const span = (values: readonly number[]) => Math.max(...values) - Math.min(...values)
  return Math.max(span(edge.map(([x]) => x)), span(edge.map(([, y]) => y))) / 2
}

type Decoded = Exclude<Awaited<ReturnType<typeof decodePhoto>>, { readonly fault: unknown }>

/** Both edges in pixels of the photograph: as set, else as found; null where they were not. */
function edgesOf({ picture, scale }: Decoded, { outer, inner }: Asked) {
  if (outer !== null && inner !== null) return { outer, inner }
  const found = findEdges(picture)
  if (found === null) return null
  return {
    outer: outer ?? scaleEllipse(found.outer, 1 / scale),
    inner: inner ?? scaleEllipse(found.inner, 1 / scale),
  }
}

function answerOf(decoded: Decoded, asked: Asked) {
  const edges = edgesOf(decoded, asked)
  if (edges === null) {
    return { kind: 'refused', reason: 'edges-not-found', measured: null, limit: null } as const
  }
  const onProgress = (share: number) => parentPort?.postMessage({ progress: share })
  return readScaledPhoto(decoded.picture, decoded.scale, { ...asked, ...edges, onProgress })
}

/** Both edges as they are found, in pixels of the photograph; null where they are not. */
function foundIn({ picture, scale }: Decoded) {
  const found = findEdges(picture)
  if (found === null) return { kind: 'edges', outer: null, inner: null } as const
  const { outer, inner } = found
  const back = 1 / scale
  const edges = { outer: scaleEllipse(outer, back), inner: scaleEllipse(inner, back) }
  return { kind: 'edges', ...edges } as const
}

/** One photograph in a thread of its own, so that pages are served meanwhile. */
const { bytes, options } = workerData as { bytes: Uint8Array; options: Asked | null }
const radius = options === null || options.outer === null ? 0 : radiusOf(options.outer)
const decoded = await decodePhoto(bytes, radius > 0 ? wantedRadiusPx / radius : 1)
if ('fault' in decoded) parentPort?.postMessage({ fault: decoded.fault })
else {
  const { width, height } = decoded
  const answer = options === null ? foundIn(decoded) : answerOf(decoded, options)
  parentPort?.postMessage({ result: { ...answer, imageWidth: width, imageHeight: height } })
}
