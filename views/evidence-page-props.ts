import type { CertificateRecord } from '../src/domain/certificate.ts'
import type { CountedResult } from '../src/domain/counted-results.ts'
import type { Evidence } from '../src/domain/evidence.ts'
import type { EvidenceResult } from '../src/domain/evidence-results.ts'
import type { OtherResult } from '../src/domain/other-results.ts'
import type { ReleaseFault } from '../src/domain/release-faults.ts'
import type { ConcessionTyped } from './concession-form.tsx'
import type { DecisionFormState } from './decision-form.tsx'
import type { Frame } from './page.tsx'

/** The forms of concessions: one key for all, and the one that was sent and refused. */
export type ConcessionState = {
  readonly formKey: string
  readonly refusedFor?: (result: CountedResult) => ConcessionTyped | null
}

/** What the inspector's page shows; its parts take it whole. */
export type EvidencePageProps = {
  readonly frame: Frame
  readonly evidence: Evidence
  /** What a certificate would say if it were issued now. */
  readonly record: CertificateRecord
  /** What counts for the release, and what else was measured. */
  readonly results: readonly EvidenceResult[]
  readonly others: readonly OtherResult[]
  readonly concession: ConcessionState
  /** What keeps the viewer from releasing. */
  readonly faults: readonly ReleaseFault[]
  /** Null for who looks and does not decide. */
  readonly form: DecisionFormState | null
  /** Numbers of the certificates issued for the order. */
  readonly certificates: readonly string[]
  /** Why the decision that was just sent was not recorded. */
  readonly conflict?: string
}
