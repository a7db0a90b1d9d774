import type { AuditEntry } from '../domain/audit.ts'
import { auditHash, auditStart } from './add-audit.ts'
import type { Store } from './open.ts'

/**
 * Walks the whole trail and says what is wrong with it, a sentence a line; empty when nothing is.
 * It finds a line that was edited, taken out, put in or moved. It can't see that the end was cut
 * off, since every beginning of a chain is a chain: `verifyStore` counts the records against
 * their lines for that, and a printed or backed-up last hash proves it.
 */
export function verifyAudit(store: Store): string[] {
  const faults: string[] = []
  const lines = store.raw
    .prepare(
      `SELECT id, at, user_id AS userId, actor, act, subject, detail,
        previous_hash AS previousHash, hash FROM audit ORDER BY id`,
    )
    .iterate() as IterableIterator<AuditEntry>
  let previousHash = auditStart
  let id = 0
  for (const line of lines) {
    id += 1
    if (line.id !== id) faults.push(`audit line ${id} is missing before line ${line.id}`)
    if (line.previousHash !== previousHash) {
      faults.push(`audit line ${line.id} does not follow the line before it`)
    }
    if (line.hash !== auditHash(line.previousHash, line)) {
      faults.push(`audit line ${line.id} was changed after it was written`)
    }
    previousHash = line.hash
    id = line.id
  }
  return faults
}
