import type { DecisionFormState } from '../../../views/decision-form.tsx'
import { EvidencePage } from '../../../views/evidence-page.tsx'
import { errorSentence } from '../../../views/words/en/errors.ts'
import { releaseFaultSentence } from '../../../views/words/en/inspection.ts'
import type { AppError } from '../../domain/app-error.ts'
import { evidenceResults } from '../../domain/evidence-results.ts'
import type { Fault } from '../../domain/fault.ts'
import type { Input } from '../../domain/fields.ts'
import { otherResults } from '../../domain/other-results.ts'
import { type ReleaseFault, releaseFaults } from '../../domain/release-faults.ts'
import type { WorkOrder } from '../../domain/work-order.ts'
import { listCertificates } from '../../store/list-certificates.ts'
import { readEvidence } from '../../store/read-evidence.ts'
import type { AppContext } from '../context.ts'
import { newFormKey } from '../record-once.ts'
import { frameOf, sendPage } from '../send-page.ts'
import { actor, viewer } from '../viewer.ts'
import { concessionState } from './concession-state.ts'
import { draftRecord } from './draft-record.ts'
import { evidenceFingerprint } from './evidence-fingerprint.ts'

/** A concession that was sent and not recorded. */
type RefusedConcession = {
  readonly input: Input
  readonly faults: readonly Fault[]
  /** Why it can't be recorded at all. */
  readonly conflict?: AppError
}

type Returned = Pick<DecisionFormState, 'outcome' | 'reason' | 'faults' | 'more'> & {
  readonly formKey?: string
}

const blank: Returned = { outcome: '', reason: '', faults: [], more: [] }

/** The page with a fresh form. */
export function evidencePage(c: AppContext, order: WorkOrder): Promise<Response> {
  return draw(c, order, blank, 200)
}

/** The page with what was typed and what is wrong with it; 429 where it came too soon. */
export function faultyPage(
  c: AppContext,
  order: WorkOrder,
  input: Input,
  wrong: { readonly faults: readonly Fault[] } | { readonly waitS: number },
): Promise<Response> {
  const typed = typedIn(input)
  if ('faults' in wrong) return draw(c, order, { ...typed, faults: wrong.faults }, 422)
  const sentence = errorSentence('slow-down', { waitS: wrong.waitS })
  c.header('retry-after', String(wrong.waitS))
  return draw(c, order, { ...typed, more: [{ field: 'password', sentence }] }, 429)
}

/** The page with the rules that forbid this release. */
export function refusedPage(
  c: AppContext,
  order: WorkOrder,
  input: Input,
  faults: readonly ReleaseFault[],
): Promise<Response> {
  const more = faults.map((fault) =>
    fault.id === 'instrument-not-acknowledged'
      ? { field: 'reason', sentence: releaseFaultSentence(fault) }
      : { field: 'in-the-way', sentence: releaseFaultSentence(fault) },
  )
  const isForbidden = faults.some((one) => one.id === 'lapped-or-tested')
  return draw(c, order, { ...typedIn(input), more }, isForbidden ? 403 : 422)
}

/** The page as it is now, and why the decision was not recorded on it. */
export function conflictPage(
  c: AppContext,
  order: WorkOrder,
  input: Input,
  error: AppError,
): Promise<Response> {
  const sentence = errorSentence(error.reason, error.details)
  const { formKey: _, ...typed } = typedIn(input)
  return draw(c, order, typed, 409, { conflict: sentence })
}

/** The page with the concession that was typed, and what is wrong with it. */
export function concessionPage(
  c: AppContext,
  order: WorkOrder,
  concession: RefusedConcession,
): Promise<Response> {
  const { conflict } = concession
  if (conflict === undefined) return draw(c, order, blank, 422, { concession })
  const sentence = errorSentence(conflict.reason, conflict.details)
  const status = conflict.kind === 'forbidden' ? 403 : 409
  return draw(c, order, blank, status, { conflict: sentence, concession })
}

function typedIn(input: Input): Returned {
  const text = (name: string): string => {
    const value = input[name]
    return typeof value === 'string' ? value : ''
  }
  const formKey = text('formKey')
  const typed = { ...blank, outcome: text('outcome'), reason: text('reason') }
  return formKey === '' ? typed : { ...typed, formKey }
}

function draw(
  c: AppContext,
  order: WorkOrder,
  returned: Returned,
  status: 200 | 403 | 409 | 422 | 429,
  sent: { readonly conflict?: string; readonly concession?: RefusedConcession } = {},
): Promise<Response> {
  const { shop } = c.var
  const by = viewer(c)
  const evidence = readEvidence(shop.store, order.id)
  const { handOver } = evidence
  const form: DecisionFormState = {
    formKey: newFormKey(shop.randomBytes),
    ...returned,
    fingerprint: evidenceFingerprint(evidence),
  }
  const certificates = listCertificates(shop.store, { workOrderId: order.id })
  const page = (
    <EvidencePage
      frame={frameOf(c)}
      evidence={evidence}
      results={evidenceResults(evidence, by)}
      others={otherResults(evidence)}
      concession={concessionState(newFormKey(shop.randomBytes), sent.concession)}
      record={draftRecord(shop, { evidence, by, actor: actor(c), reason: '', number: '' })}
      faults={releaseFaults({ evidence, user: by, handOver })}
      form={by.role === 'inspector' ? form : null}
      certificates={certificates.map((one) => one.number)}
      {...(sent.conflict === undefined ? {} : { conflict: sent.conflict })}
    />
  )
  return sendPage(c, page, status)
}
