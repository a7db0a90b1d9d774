import type { AuditEntry } from '../domain/audit.ts'
import type { AuditFault } from '../domain/store-fault.ts'
import { auditHash, auditStart } from './add-audit.ts'
import type { Store } from './open.ts'

/**
 * Walks the whole trail and gives what is wrong with it, line by line; empty when nothing is.
 * It finds a line that was edited, taken out, put in or moved. It can't see that the end was cut
 * off, since every beginning of a chain is a chain: `verifyStore` counts the records against
 * their lines for that, and a printed or backed-up last hash proves it.
 */
export function verifyAudit(store: Store): AuditFault[] {
  const faults: AuditFault[] = []
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
    if (line.id !== id) {
      faults.push({ kind: 'audit-line-missing', missingId: id, beforeId: line.id })
    }
    if (line.previousHash !== previousHash) {
      faults.push({ kind: 'audit-line-unlinked', lineId: line.id })
    }
    if (line.hash !== auditHash(line.previousHash, line)) {
      faults.push({ kind: 'audit-line-changed', lineId: line.id })
    }
    previousHash = line.hash
    id = line.id
  }
  return faults
}
