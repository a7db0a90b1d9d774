import { Worker } from 'node:worker_threads'
import { AppError } from '../domain/app-error.ts'

/** As src/workers/decode-photo.ts says it; that room is not imported here. */
type FaultOfFile = 'heic' | 'not-a-photo' | 'damaged' | 'too-many-pixels'

type Message<T> =
  | { readonly progress: number }
  | { readonly result: T }
  | { readonly fault: FaultOfFile }

export interface PhotoLimits {
  /** A reading that takes longer is stopped. */
  readonly longestMs?: number
  /** Stops the reading, or the waiting for it: nobody asks for it any more. */
  readonly signal?: AbortSignal | undefined
  readonly onProgress?: ((share: number) => void) | undefined
}

/** One face takes about 300 MB while it is read; two at once would need two such pieces. */
const mostAtOnce = 1
const mostWaiting = 4
const usualLongestMs = 60_000

let runningCount = 0
const waiting: (() => void)[] = []

/**
 * Hands a photograph to a thread of its own; a few wait for their turn.
 * @param options for the thread; null: it looks for the edges alone
 * @throws AppError invalid `photo-heic`, `photo-not-a-photo`, `photo-damaged` for a file that can't
 *   be read; too-large `photo-too-many-pixels`; too-many `photo-busy` where too many wait,
 *   `photo-too-long` where it was stopped
 */
export async function runPhotoThread<T>(
  bytes: Uint8Array,
  options: object | null,
  limits: PhotoLimits,
): Promise<T> {
  await turn(limits.signal)
  try {
    limits.signal?.throwIfAborted()
    return await inThread<T>(bytes, options, limits)
  } finally {
    // The place goes to the next in the row, or is given back.
    const next = waiting.shift()
    if (next === undefined) runningCount--
    else next()
  }
}

async function turn(signal: AbortSignal | undefined): Promise<void> {
  signal?.throwIfAborted()
  if (runningCount < mostAtOnce) {
    runningCount++
    return
  }
  if (waiting.length >= mostWaiting) throw new AppError('too-many', 'photo-busy')
  await new Promise<void>((resolve, reject) => {
    waiting.push(resolve)
    // Whoever went away leaves the row.
    const leave = () => {
      const place = waiting.indexOf(resolve)
      if (place >= 0) waiting.splice(place, 1)
      if (place >= 0) reject(signal?.reason)
    }
    signal?.addEventListener('abort', leave, { once: true })
  })
}

function faultOf(fault: FaultOfFile): AppError {
  if (fault === 'heic') return new AppError('invalid', 'photo-heic')
  if (fault === 'not-a-photo') return new AppError('invalid', 'photo-not-a-photo')
  if (fault === 'damaged') return new AppError('invalid', 'photo-damaged')
  return new AppError('too-large', 'photo-too-many-pixels')
}

function inThread<T>(
  bytes: Uint8Array,
  options: object | null,
  { longestMs = usualLongestMs, signal, onProgress }: PhotoLimits,
): Promise<T> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(workerUrl(), { workerData: { bytes, options } })
    let isTooLong = false
    const timer = setTimeout(() => {
      isTooLong = true
      void worker.terminate()
    }, longestMs)
    const stop = () => void worker.terminate()
    signal?.addEventListener('abort', stop, { once: true })
    worker.on('message', (message: Message<T>) => {
      if ('progress' in message) onProgress?.(message.progress)
      else if ('result' in message) resolve(message.result)
      else reject(faultOf(message.fault))
    })
    worker.once('error', reject)
    // After an answer this changes nothing, the promise is settled.
    worker.once('exit', () => {
      clearTimeout(timer)
      signal?.removeEventListener('abort', stop)
      if (signal?.aborted) reject(signal.reason)
      else if (isTooLong) reject(new AppError('too-many', 'photo-too-long'))
      else reject(new Error('runPhotoThread: the thread ended without an answer'))
    })
  })
}

/** Beside the bundle when it is built, in its room when it runs from source. */
function workerUrl(): URL {
  const isSource = import.meta.url.endsWith('.ts')
  const place = isSource ? '../workers/photo.ts' : './photo.js'
  return new URL(place, import.meta.url)
}
