import { findKeptAnswer } from './find-kept-answer.ts'
import type { KeptAnswer } from './kept-answer.ts'
import type { Store } from './open.ts'
import { keptAnswer } from './schema/kept-answer.ts'

/**
 * Does the work of a request once: a resent one gets the answer that the first one got. Work and
 * answer are one transaction. A refusal (status 400 or more) recorded nothing and is not kept, so
 * that a corrected form can be sent with the same key.
 * @param request `requestHash` over method, path and body; `at` RFC 3339
 * @throws AppError conflict `key-reused` for the same key with another request
 */
export function once(
  store: Store,
  request: {
    readonly userId: number
    readonly key: string
    readonly requestHash: string
    readonly at: string
  },
  work: () => KeptAnswer,
): KeptAnswer & { readonly isRepeat: boolean } {
  const { userId, key, requestHash, at } = request
  return store.transact(() => {
    const kept = findKeptAnswer(store, request)
    if (kept !== undefined) return { ...kept, isRepeat: true }
    const { status, body } = work()
    if (status < 400) {
      store.db.insert(keptAnswer).values({ userId, key, requestHash, status, body, at }).run()
    }
    return { status, body, isRepeat: false }
  })
}
