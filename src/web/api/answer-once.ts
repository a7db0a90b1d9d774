import { createHash } from 'node:crypto'
import { AppError } from '../../domain/app-error.ts'
import { findKeptAnswer } from '../../store/find-kept-answer.ts'
import { once } from '../../store/once.ts'
import type { AppContext } from '../context.ts'
import { viewer } from '../viewer.ts'
import type { JsonBody } from './read-json.ts'

type Answer = { readonly status: 200 | 201; readonly body: unknown }

/**
 * Records what a request sent, once for each `Idempotency-Key`: the same key and body gives the
 * first answer again, the same key with another body is a conflict. Without a key each request
 * records.
 */
export function answerOnce(c: AppContext, body: JsonBody, work: () => Answer): Response {
  const { store, now } = c.var.shop
  const key = c.req.header('idempotency-key')
  if (key === undefined)
    return send(
      store.transact(() => toKept(work())),
      false,
    )
  const asked = { ...requestOf(c, key, body), at: now().toISOString() }
  const kept = once(store, asked, () => toKept(work()))
  return send(kept, kept.isRepeat)
}

/**
 * The first answer to a request that is sent again, before any work is done for it; undefined where
 * it is new. What may have changed meanwhile, an order, a calibration, doesn't matter to it.
 */
export function answeredBefore(c: AppContext, body: JsonBody): Response | undefined {
  const key = c.req.header('idempotency-key')
  if (key === undefined) return undefined
  const kept = findKeptAnswer(c.var.shop.store, requestOf(c, key, body))
  return kept === undefined ? undefined : send(kept, true)
}

function requestOf(c: AppContext, key: string, body: JsonBody) {
  if (key.trim() === '' || key.length > 150) throw new AppError('invalid', 'bad-key')
  const requestHash = createHash('sha256')
    .update(JSON.stringify([c.req.method, c.req.path, body.text]))
    .digest('hex')
  return { userId: viewer(c).id, key: `api ${key}`, requestHash }
}

function toKept(answer: Answer): { status: number; body: string } {
  return { status: answer.status, body: JSON.stringify(answer.body) }
}

function send(kept: { status: number; body: string }, isRepeat: boolean): Response {
  return new Response(kept.body, {
    status: kept.status,
    headers: {
      'content-type': 'application/json',
      ...(isRepeat ? { 'idempotency-replayed': 'true' } : {}),
    },
  })
}
