import { createHash } from 'node:crypto'
import type { Input } from '../domain/fields.ts'
import { once } from '../store/once.ts'
import type { AppContext } from './context.ts'
import { viewer } from './viewer.ts'

/**
 * Records what a form sent exactly once: the key made when the form was drawn (`formKey`) is kept
 * with the answer in the same transaction, so that a double click or a resent form goes to the
 * same place and adds nothing.
 * @param work records, and answers where to go
 */
export function recordOnce(c: AppContext, input: Input, work: () => string): Response {
  const { store, now, randomBytes } = c.var.shop
  const given = typeof input.formKey === 'string' ? input.formKey : ''
  const key = given === '' ? newFormKey(randomBytes) : given.slice(0, 100)
  const requestHash = createHash('sha256')
    .update(JSON.stringify([c.req.method, c.req.path, input]))
    .digest('hex')
  const answer = once(
    store,
    { userId: viewer(c).id, key: `form ${key}`, requestHash, at: now().toISOString() },
    () => ({ status: 303, body: work() }),
  )
  return c.redirect(answer.body, 303)
}

/** A key for a form that is about to be drawn. */
export function newFormKey(randomBytes: (count: number) => Uint8Array): string {
  return Buffer.from(randomBytes(18)).toString('base64url')
}
