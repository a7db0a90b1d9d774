import { findEdges } from '../science/photo/find-edges.ts'
import type { EdgeAsSet } from '../science/photo/prepare-face.ts'
import type { PhotoOptions } from '../science/photo/read-photo.ts'
import { readScaledPhoto } from '../science/photo/read-scaled-photo.ts'
import { scaleEllipse } from '../science/photo/scale-ellipse.ts'
import { decodePhoto } from './decode-photo.ts'

/** A face of this radius shows all that is needed; a larger one only takes longer. */
const wantedRadiusPx = 600

/** An edge that nobody set is null, and is found in the picture. */
export type PhotoBytesAsked = Omit<PhotoOptions, 'outer' | 'inner'> & {
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
function edgesOf({ picture, scale }: Decoded, { outer, inner }: PhotoBytesAsked) {
  if (outer !== null && inner !== null) return { outer, inner }
  const found = findEdges(picture)
  if (found === null) return null
  return {
    outer: outer ?? scaleEllipse(found.outer, 1 / scale),
    inner: inner ?? scaleEllipse(found.inner, 1 / scale),
  }
}

function answerOf(decoded: Decoded, asked: PhotoBytesAsked) {
  const edges = edgesOf(decoded, asked)
  if (edges === null) {
    return { kind: 'refused', reason: 'edges-not-found', measured: null, limit: null } as const
  }
  return readScaledPhoto(decoded.picture, decoded.scale, { ...asked, ...edges })
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

/**
 * Decodes a photograph and reads it, or finds its edges where nothing is asked.
 * @param asked what is known beside it, in pixels of the photograph; null: only its edges are found
 * @returns the answer with the size of the upright photograph, or what is wrong with the file
 */
export async function readPhotoBytes(bytes: Uint8Array, asked: PhotoBytesAsked | null) {
  const radius = asked === null || asked.outer === null ? 0 : radiusOf(asked.outer)
  const decoded = await decodePhoto(bytes, radius > 0 ? wantedRadiusPx / radius : 1)
  if ('fault' in decoded) return { fault: decoded.fault }
  const { width, height } = decoded
  const answer = asked === null ? foundIn(decoded) : answerOf(decoded, asked)
  return { result: { ...answer, imageWidth: width, imageHeight: height } }
}
