import { FacePhotoAnswerView } from '../../../views/face-photo/answer.tsx'
import type { WholeFaceAnswer } from '../../domain/whole-face-answer.ts'
import type { PhotoLimits } from '../run-photo-thread.ts'
import type { PhotoDesk } from './desk.ts'
import type { DrawnPhoto } from './face-photo-form.ts'
import { facePhotoForm } from './face-photo-form.ts'

/**
 * Streams how far the reading is, a JSON line each time, and at last the drawn answer. Whoever goes
 * away stops the reading.
 */
export function sendPhotoAnswer(
  desk: PhotoDesk,
  drawn: Omit<DrawnPhoto, 'answer'>,
  ask: (limits: PhotoLimits) => Promise<WholeFaceAnswer>,
): Response {
  const away = new AbortController()
  const text = new TextEncoder()
  const stream = new ReadableStream<Uint8Array>({
    async start(controller) {
      const line = (value: object) => {
        if (!away.signal.aborted) controller.enqueue(text.encode(`${JSON.stringify(value)}\n`))
      }
      try {
        const onProgress = (progress: number) => line({ progress })
        const answer = await ask({ signal: away.signal, onProgress })
        const form = facePhotoForm(desk, { ...drawn, answer })
        line({ html: String(await (<FacePhotoAnswerView form={form} answer={answer} />)) })
        controller.close()
      } catch (error) {
        if (!away.signal.aborted) controller.error(error)
      }
    },
    cancel: () => away.abort(),
  })
  return new Response(stream, {
    headers: { 'content-type': 'application/x-ndjson', 'cache-control': 'no-store' },
  })
}
