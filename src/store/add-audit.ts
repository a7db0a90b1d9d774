import { createHash } from 'node:crypto'
import { desc, sql } from 'drizzle-orm'
import type { Actor } from '../domain/actor.ts'
import type { AuditAct } from '../domain/audit-act.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
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

const lastHash = prepared((store) =>
  store.db.select({ hash: audit.hash }).from(audit).orderBy(desc(audit.id)).limit(1).prepare(),
)
const insertLine = prepared((store) =>
  store.db
    .insert(audit)
    .values({
      at: sql.placeholder('at'),
      userId: sql.placeholder('userId'),
      actor: sql.placeholder('actor'),
      act: sql.placeholder('act'),
      subject: sql.placeholder('subject'),
      detail: sql.placeholder('detail'),
      previousHash: sql.placeholder('previousHash'),
      hash: sql.placeholder('hash'),
    })
    .prepare(),
)

/**
 * Adds one line to the trail. Call it inside the transaction of the act itself, so that no act
 * stands without its line.
 */
export function addAudit(
  store: Store,
  actor: Actor,
  entry: { readonly act: AuditAct; readonly subject: string; readonly detail: unknown },
): void {
  const previousHash = lastHash(store).get()?.hash ?? auditStart
  const line: AuditLine = {
    at: actor.at,
    userId: actor.userId,
    actor: actor.name,
    act: entry.act,
    subject: entry.subject,
    detail: JSON.stringify(entry.detail),
  }
  insertLine(store).run({ ...line, previousHash, hash: auditHash(previousHash, line) })
}
