import { createHash } from 'node:crypto'
import type { Evidence } from '../../domain/evidence.ts'

/**
 * Stands for everything that was on the page when a decision was taken: a decision that comes
 * with another fingerprint was taken on something that is no longer so.
 */
export function evidenceFingerprint(evidence: Evidence): string {
  return createHash('sha256').update(JSON.stringify(evidence)).digest('base64url')
}
