import { parentPort, workerData } from 'node:worker_threads'
import { type PhotoBytesAsked, readPhotoBytes } from './read-photo-bytes.ts'

/** One photograph in a thread of its own, so that pages are served meanwhile. */
const { bytes, options } = workerData as { bytes: Uint8Array; options: PhotoBytesAsked | null }
const onProgress = (share: number) => parentPort?.postMessage({ progress: share })
parentPort?.postMessage(
  await readPhotoBytes(bytes, options === null ? null : { ...options, onProgress }),
)
