import type { Actor } from '../../domain/actor.ts'
import { AppError } from '../../domain/app-error.ts'
import type { CertificateRecord } from '../../domain/certificate.ts'
import { certificateCode, certificateCodeLength } from '../../domain/certificate-number.ts'
import { certificateRecord } from '../../domain/certificate-record.ts'
import type { Evidence } from '../../domain/evidence.ts'
import type { HandOver } from '../../domain/release.ts'
import { releaseFaults } from '../../domain/release-faults.ts'
import type { User } from '../../domain/user.ts'
import { decidedBy } from '../../store/decided-by.ts'
import { readEvidence } from '../../store/read-evidence.ts'
import { type Release, release } from '../../store/release.ts'
import { reserveCertificateNumber } from '../../store/reserve-certificate-number.ts'
import type { Shop } from '../context.ts'
import { evidenceFingerprint } from './evidence-fingerprint.ts'
import { ReleaseRefused } from './release-refused.ts'

export type ReleaseAsked = {
  readonly workOrderId: number
  readonly by: User
  readonly actor: Actor
  /** What the inspector wrote; '' where nothing was written. */
  readonly acknowledgement: string
  /** Of the evidence that was on the page. */
  readonly fingerprint: string
}

/** How often a release starts again after another one took its certificate number. */
const attemptCount = 3

/**
 * Releases an order: draws its certificate, then records decision, certificate and document in
 * one transaction.
 * @param record runs the recording once for the form, and answers
 * @throws ReleaseRefused where a rule forbids it; AppError conflict `already-decided`,
 *   `not-handed-over`, `evidence-changed`
 */
export async function releaseOrder<T>(
  shop: Shop,
  asked: ReleaseAsked,
  record: (work: () => string) => T,
): Promise<T> {
  for (let attempt = 1; ; attempt++) {
    const work = await prepareRelease(shop, asked)
    try {
      return record(work)
    } catch (error) {
      const isTaken = error instanceof AppError && error.reason === 'number-taken'
      if (!isTaken || attempt === attemptCount) throw error
    }
  }
}

/**
 * Everything slow, before the transaction. A refusal is thrown by the work and not here, so that
 * a form that comes twice is still answered with what its first coming recorded.
 */
async function prepareRelease(shop: Shop, asked: ReleaseAsked): Promise<() => string> {
  const { store } = shop
  const evidence = readEvidence(store, asked.workOrderId)
  const { handOver } = evidence
  const refusal = refusalOf(evidence, asked)
  if (refusal !== undefined || handOver === null) {
    return () => {
      throw refusal ?? new AppError('conflict', 'not-handed-over')
    }
  }
  const fresh = await drawRelease(shop, asked, evidence, handOver)
  return () => {
    const { certificate } = release(store, fresh, asked.actor)
    return `/certificates/${certificate.number}`
  }
}

async function drawRelease(
  shop: Shop,
  asked: ReleaseAsked,
  evidence: Evidence,
  handOver: HandOver,
): Promise<Release> {
  const { by, actor, acknowledgement: reason } = asked
  const reserved = reserveCertificateNumber(shop.store, {
    year: Number(actor.at.slice(0, 4)),
    code: certificateCode(shop.randomBytes(certificateCodeLength)),
  })
  const record = draftRecord(shop, { evidence, by, actor, reason, number: reserved.number })
  const certificate = {
    number: reserved.number,
    revision: record.revision,
    record,
    pdf: await draw(record),
    expectedSequence: reserved.sequence,
  }
  return { handOverId: handOver.id, by, reason, certificate }
}

/** What the certificate would certify if this person released the order at this moment. */
export function draftRecord(
  shop: Shop,
  draft: {
    readonly evidence: Evidence
    readonly by: User
    readonly actor: Actor
    readonly reason: string
    readonly number: string
  },
): CertificateRecord {
  const { evidence, by, actor, reason, number } = draft
  return certificateRecord({
    evidence,
    decision: decidedBy(by, actor),
    number,
    revision: 0,
    issuedAt: actor.at,
    verifyUrl: `${shop.origin}/verify/${number}`,
    workshop: shop.workshop,
    acknowledgement: reason,
  })
}

function refusalOf(evidence: Evidence, asked: ReleaseAsked): Error | undefined {
  const { by: user, acknowledgement, fingerprint } = asked
  const { handOver } = evidence
  const faults = releaseFaults({ evidence, user, handOver, acknowledgement })
  const decided = faults.find((one) => one.id === 'already-decided')
  if (decided !== undefined) {
    return new AppError('conflict', decided.id, { by: decided.byName })
  }
  if (faults.some((one) => one.id === 'not-handed-over')) {
    return new AppError('conflict', 'not-handed-over')
  }
  if (fingerprint !== evidenceFingerprint(evidence)) {
    return new AppError('conflict', 'evidence-changed')
  }
  return faults.length === 0 ? undefined : new ReleaseRefused(faults)
}

/** Drawing is loaded when it is first needed: it would cost every start half a second. */
async function draw(record: CertificateRecord): Promise<Buffer> {
  const { drawCertificate } = await import('../../../reports/certificate/draw.ts')
  return drawCertificate(record)
}
