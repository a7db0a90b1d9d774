import type { CertificateRecord } from '../src/domain/certificate.ts'
import type { Evidence } from '../src/domain/evidence.ts'
import type { ReleaseFault } from '../src/domain/release-faults.ts'
import type { DecisionFormState } from './decision-form.tsx'
import type { Frame } from './page.tsx'

/** What the inspector's page shows; its parts take it whole. */
export type EvidencePageProps = {
  readonly frame: Frame
  readonly evidence: Evidence
  /** What a certificate would say if it were issued now. */
  readonly record: CertificateRecord
  /** What keeps the viewer from releasing. */
  readonly faults: readonly ReleaseFault[]
  /** Null for who looks and does not decide. */
  readonly form: DecisionFormState | null
  /** Numbers of the certificates issued for the order. */
  readonly certificates: readonly string[]
  /** Why the decision that was just sent was not recorded. */
  readonly conflict?: string
}
