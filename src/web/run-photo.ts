import { Worker } from 'node:worker_threads'
import { AppError } from '../domain/app-error.ts'
import type { PhotoReading } from '../science/photo/photo-reading.ts'
import type { PhotoRefusal } from '../science/photo/photo-refusal.ts'
import type { EdgeAsSet } from '../science/photo/prepare-face.ts'
import type { PhotoOptions } from '../science/photo/read-photo.ts'

/** What a photograph gives, with the size of the upright photograph in pixels. */
export type PhotoAnswer = (PhotoReading | PhotoRefusal) & {
  readonly imageWidth: number
  readonly imageHeight: number
}

/** What is known beside a photograph; an edge that nobody set is null, and is found in it. */
export type PhotoAsked = Omit<PhotoOptions, 'outer' | 'inner'> & {
  readonly outer: EdgeAsSet | null
  readonly inner: EdgeAsSet | null
}

/** As src/workers/decode-photo.ts says it; that room is not imported here. */
type FaultOfFile = 'heic' | 'not-a-photo' | 'damaged' | 'too-many-pixels'

type Message =
  | { readonly progress: number }
  | { readonly result: PhotoAnswer }
  | { readonly fault: FaultOfFile }

/** One face takes about 300 MB while it is read; two at once would need two such pieces. */
const mostAtOnce = 1
const mostWaiting = 4
const usualLongestMs = 60_000

let runningCount = 0
const waiting: (() => void)[] = []

/**
 * Reads a photograph in a thread beside the one that serves pages; a few wait for their turn.
 * @param bytes of the file, at most 30 MB (asked by the caller); they are not changed
 * @param options what is known beside the photograph, in pixels of the upright photograph, and
 *   onProgress: told the share done, from 0 to 1
 * @param limits longestMs: a reading that takes longer is stopped
 * @throws AppError invalid `photo-heic`, `photo-not-a-photo`, `photo-damaged`,
 *   for a file that can't be read; too-large `photo-too-many-pixels`; too-many `photo-busy` where too many
 *   wait, `photo-too-long` where it was stopped
 */
export async function runPhoto(
  bytes: Uint8Array,
  options: PhotoAsked,
  limits: { readonly longestMs: number } = { longestMs: usualLongestMs },
): Promise<PhotoAnswer> {
  await turn()
  try {
    return await inThread(bytes, options, limits.longestMs)
  } finally {
    // The place goes to the next in the row, or is given back.
    const next = waiting.shift()
    if (next === undefined) runningCount--
    else next()
  }
}

async function turn(): Promise<void> {
  if (runningCount < mostAtOnce) {
    runningCount++
    return
  }
  if (waiting.length >= mostWaiting) throw new AppError('too-many', 'photo-busy')
  await new Promise<void>((resolve) => waiting.push(resolve))
}

function faultOf(fault: FaultOfFile): AppError {
  if (fault === 'heic') return new AppError('invalid', 'photo-heic')
  if (fault === 'not-a-photo') return new AppError('invalid', 'photo-not-a-photo')
  if (fault === 'damaged') return new AppError('invalid', 'photo-damaged')
  return new AppError('too-large', 'photo-too-many-pixels')
}

function inThread(
  bytes: Uint8Array,
  { onProgress, ...options }: PhotoAsked,
  longestMs: number,
): Promise<PhotoAnswer> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(workerUrl(), { workerData: { bytes, options } })
    let isStopped = false
    const timer = setTimeout(() => {
      isStopped = true
      void worker.terminate()
    }, longestMs)
    worker.on('message', (message: Message) => {
      if ('progress' in message) onProgress?.(message.progress)
      else if ('result' in message) resolve(message.result)
      else reject(faultOf(message.fault))
    })
    worker.once('error', reject)
    // After an answer this changes nothing, the promise is settled.
    worker.once('exit', () => {
      clearTimeout(timer)
      const noAnswer = new Error('runPhoto: the thread ended without an answer')
      reject(isStopped ? new AppError('too-many', 'photo-too-long') : noAnswer)
    })
  })
}

/** Beside the bundle when it is built, in its room when it runs from source. */
function workerUrl(): URL {
  const isSource = import.meta.url.endsWith('.ts')
  const place = isSource ? '../workers/photo.ts' : './photo.js'
  return new URL(place, import.meta.url)
}
