import type { Actor } from '../../domain/actor.ts'
import type { CertificateRecord } from '../../domain/certificate.ts'
import { certificateRecord } from '../../domain/certificate-record.ts'
import type { Evidence } from '../../domain/evidence.ts'
import type { User } from '../../domain/user.ts'
import { decidedBy } from '../../store/decided-by.ts'
import type { Shop } from '../context.ts'

/** What the certificate would certify if this person released the order at this moment. */
export function draftRecord(
  shop: Pick<Shop, 'origin' | 'workshop'>,
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
