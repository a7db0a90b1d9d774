import { isDeepStrictEqual } from 'node:util'
import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { Certificate, CertificateRecord } from '../domain/certificate.ts'
import { certificateRecord } from '../domain/certificate-record.ts'
import type { Evidence } from '../domain/evidence.ts'
import type { Decision } from '../domain/release.ts'
import { type ReleaseFault, releaseFaults } from '../domain/release-faults.ts'
import type { User } from '../domain/user.ts'
import { addAudit } from './add-audit.ts'
import { addDecision } from './add-decision.ts'
import { addStoredFile } from './add-stored-file.ts'
import { changeStage } from './change-stage.ts'
import { decidedBy } from './decided-by.ts'
import { fileHash } from './file-hash.ts'
import type { Store } from './open.ts'
import { readEvidence } from './read-evidence.ts'
import { requireHandOver } from './require-hand-over.ts'
import { certificate } from './schema/certificate.ts'
import { takeCertificateNumber } from './take-certificate-number.ts'

export type Release = {
  readonly handOverId: number
  readonly by: User
  /** What the inspector wrote; '' where nothing was to be acknowledged. */
  readonly reason: string
  readonly certificate: {
    readonly number: string
    readonly revision: number
    readonly record: CertificateRecord
    readonly pdf: Buffer
    /** As reserved; another release may have taken it meanwhile. */
    readonly expectedSequence: number
  }
}

/**
 * Releases a hand-over and issues its certificate, in one transaction: both or neither. Every rule
 * is asked again here, and the record must say what the store says at this moment.
 * @throws AppError forbidden `not-inspector`; conflict with the id of a release fault,
 *   `already-decided` with `by`, `number-taken`, `evidence-changed`
 */
export function release(
  store: Store,
  fresh: Release,
  actor: Actor,
): { readonly decision: Decision; readonly certificate: Certificate } {
  const { by, reason } = fresh
  const { number, revision, record, pdf, expectedSequence } = fresh.certificate
  return store.transact(() => {
    const handOver = requireHandOver(store, fresh.handOverId)
    const evidence = readEvidence(store, handOver.workOrderId)
    const faults = releaseFaults({ evidence, user: by, handOver, acknowledgement: reason })
    if (faults[0] !== undefined) throw refusalOf(faults[0])
    requireSameRecord(evidence, fresh, actor)
    takeCertificateNumber(store, number, expectedSequence)
    const outcome = 'released' as const
    const decision = addDecision(store, { handOver, outcome, reason, by }, actor)
    const sha256 = addStoredFile(store, { bytes: pdf, mediaType: 'application/pdf' }, actor)
    const { id: workOrderId, customerId, number: subject } = evidence.workOrder
    const row = {
      number,
      revision,
      workOrderId,
      decisionId: decision.id,
      customerId,
      record,
      sha256,
      issuedAt: actor.at,
    }
    const issued = store.db.insert(certificate).values(row).returning().get()
    changeStage(store, evidence.workOrder, { to: 'released', reason }, actor)
    addAudit(store, actor, { act: 'release', subject, detail: decision })
    const recordSha256 = fileHash(Buffer.from(JSON.stringify(issued.record)))
    const detail = { certificateId: issued.id, number, revision, sha256, recordSha256 }
    addAudit(store, actor, { act: 'issue-certificate', subject, detail })
    return { decision, certificate: issued }
  })
}

function refusalOf(fault: ReleaseFault): AppError {
  if (fault.id === 'not-inspector') return new AppError('forbidden', fault.id)
  if (fault.id === 'already-decided')
    return new AppError('conflict', fault.id, { by: fault.byName })
  if (fault.id === 'instrument-not-acknowledged') {
    return new AppError('conflict', fault.id, { numbers: fault.numbers.join(', ') })
  }
  return new AppError('conflict', fault.id)
}

/** The record was drawn up before the transaction: it must still be the store's own word. */
function requireSameRecord(evidence: Evidence, fresh: Release, actor: Actor): void {
  const { number, revision, record } = fresh.certificate
  const now = certificateRecord({
    evidence,
    decision: decidedBy(fresh.by, actor),
    number,
    revision,
    changeReason: record.changeReason,
    issuedAt: actor.at,
    verifyUrl: record.verifyUrl,
    workshop: record.workshop,
    acknowledgement: fresh.reason,
  })
  const asStored = (value: CertificateRecord): unknown => JSON.parse(JSON.stringify(value))
  if (!isDeepStrictEqual(asStored(now), asStored(record))) {
    throw new AppError('conflict', 'evidence-changed')
  }
}
