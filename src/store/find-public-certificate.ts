import type { PublicCertificate } from '../domain/public-certificate.ts'
import { findRevision } from './find-revision.ts'
import type { Store } from './open.ts'

/**
 * What anyone who holds the certificate may check against it: nothing that does not stand on it.
 * The newest revision; undefined where there is no such number.
 */
export function findPublicCertificate(store: Store, number: string): PublicCertificate | undefined {
  const found = findRevision(store, number)
  if (found === undefined) return undefined
  const { record, revision, issuedAt, sha256 } = found
  return {
    number: found.number,
    revision,
    issuedAt,
    sha256,
    isInvented: record.isInvented,
    workshopName: record.workshop.name,
    workOrderNumber: record.workOrder.number,
    sealSerial: record.seal.serial,
    sealDrawing: `${record.seal.drawing} ${record.seal.drawingRevision}`.trim(),
    verdict: record.verdict,
    releasedByName: record.release.byName,
  }
}
