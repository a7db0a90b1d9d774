import { AppError } from '../../domain/app-error.ts'
import type { CertificateRecord } from '../../domain/certificate.ts'
import { certificateCode, certificateCodeLength } from '../../domain/certificate-number.ts'
import type { Evidence } from '../../domain/evidence.ts'
import type { HandOver } from '../../domain/release.ts'
import { releaseFaults } from '../../domain/release-faults.ts'
import { readEvidence } from '../../store/read-evidence.ts'
import { type Release, release } from '../../store/release.ts'
import { reserveCertificateNumber } from '../../store/reserve-certificate-number.ts'
import type { Shop as WholeShop } from '../context.ts'
import type { DecisionAsked } from './decision-asked.ts'
import { draftRecord } from './draft-record.ts'
import { evidenceFingerprint } from './evidence-fingerprint.ts'
import { ReleaseRefused } from './release-refused.ts'

/** What a release needs of the composition root; the invented workshop has no more than that. */
type Shop = Pick<WholeShop, 'store' | 'randomBytes' | 'origin' | 'workshop'>

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
  asked: DecisionAsked,
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
async function prepareRelease(shop: Shop, asked: DecisionAsked): Promise<() => string> {
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
  asked: DecisionAsked,
  evidence: Evidence,
  handOver: HandOver,
): Promise<Release> {
  const { by, actor, reason } = asked
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

function refusalOf(evidence: Evidence, asked: DecisionAsked): Error | undefined {
  const { by: user, reason: acknowledgement, fingerprint } = asked
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
