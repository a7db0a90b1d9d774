import { parentPort, workerData } from 'node:worker_threads'
import type { EdgeAsSet } from '../science/photo/prepare-face.ts'
import type { PhotoOptions } from '../science/photo/read-photo.ts'
import { readScaledPhoto } from '../science/photo/read-scaled-photo.ts'
import { decodePhoto } from './decode-photo.ts'

/** A face of this radius shows all that is needed; a larger one only takes longer. */
const wantedRadiusPx = 600

/** About the radius of an edge as it was set: half of the longer side of its box. */
function radiusOf(edge: EdgeAsSet): number {
  if (!('length' in edge)) return Math.max(edge.rx, edge.ry)
  const span = (values: readonly number[]) => Math.max(...values) - Math.min(...values)
  return Math.max(span(edge.map(([x]) => x)), span(edge.map(([, y]) => y))) / 2
}

/** One photograph in a thread of its own, so that pages are served meanwhile. */
const { bytes, options } = workerData as { bytes: Uint8Array; options: PhotoOptions }
const radius = radiusOf(options.outer)
const decoded = await decodePhoto(bytes, radius > 0 ? wantedRadiusPx / radius : 1)
if ('fault' in decoded) parentPort?.postMessage({ fault: decoded.fault })
else {
  const onProgress = (share: number) => parentPort?.postMessage({ progress: share })
  const { picture, width, height, scale } = decoded
  const answer = readScaledPhoto(picture, scale, { ...options, onProgress })
  parentPort?.postMessage({ result: { ...answer, imageWidth: width, imageHeight: height } })
}
