import { createHash } from 'node:crypto'
import { desc } from 'drizzle-orm'
import type { Actor } from '../domain/actor.ts'
import type { Store } from './open.ts'
import { audit } from './schema/audit.ts'

/** What the first line of a trail points back to. */
export const auditStart = '0'.repeat(64)

/** The fields that a line's hash covers, in this order, as a JSON array. */
export type AuditLine = {
  readonly at: string
  readonly userId: number | null
  readonly actor: string
  readonly act: string
  readonly subject: string
  readonly detail: string
}

/** SHA-256, hex, over the hash of the line before and this line. */
export function auditHash(previousHash: string, line: AuditLine): string {
  const { at, userId, actor, act, subject, detail } = line
  return createHash('sha256')
    .update(JSON.stringify([previousHash, at, userId, actor, act, subject, detail]))
    .digest('hex')
}

/**
 * Adds one line to the trail. Call it inside the transaction of the act itself, so that no act
 * stands without its line.
 */
export function addAudit(
  store: Store,
  actor: Actor,
  entry: { readonly act: string; readonly subject: string; readonly detail: unknown },
): void {
  const last = store.db.select({ hash: audit.hash }).from(audit).orderBy(desc(audit.id)).get()
  const previousHash = last?.hash ?? auditStart
  const line: AuditLine = {
    at: actor.at,
    userId: actor.userId,
    actor: actor.name,
    act: entry.act,
    subject: entry.subject,
    detail: JSON.stringify(entry.detail),
  }
  store.db
    .insert(audit)
    .values({ ...line, previousHash, hash: auditHash(previousHash, line) })
    .run()
}
