import type { Certificate } from '../domain/certificate.ts'
import type { StoreFault } from '../domain/store-fault.ts'
import { fileHash } from './file-hash.ts'
import type { Store } from './open.ts'
import { verifyAudit } from './verify-audit.ts'
import { verifyRecords } from './verify-records.ts'

/**
 * Examines the whole database and gives what is wrong, one by one; empty when nothing is:
 * pages and keys, the audit trail, the trail against the records (which shows a trail whose end
 * was cut off while records stayed, and a record that is not what its line says), every stored
 * file, every certificate.
 */
export function verifyStore(store: Store): StoreFault[] {
  const check = store.raw.transaction(() => [
    ...integrityFaults(store),
    ...verifyAudit(store),
    ...unwrittenRecords(store),
    ...verifyRecords(store),
    ...fileFaults(store),
    ...certificateFaults(store),
  ])
  return check.deferred()
}

function integrityFaults(store: Store): StoreFault[] {
  const integrity = store.raw.pragma('integrity_check') as { integrity_check: string }[]
  const keys = store.raw.pragma('foreign_key_check') as { table: string; rowid: number }[]
  return [
    ...integrity
      .filter((row) => row.integrity_check !== 'ok')
      .map((row) => ({ kind: 'damaged', said: row.integrity_check }) as const),
    ...keys.map(({ table, rowid }) => ({ kind: 'points-nowhere', table, rowId: rowid }) as const),
  ]
}

/** Each record and the acts that write it: there are as many lines as records. */
const writtenBy = {
  customer: ['add-customer'],
  equipment: ['add-equipment'],
  seal: ['add-seal'],
  instrument: ['add-instrument'],
  user: ['add-user'],
  work_order: ['add-work-order'],
  flatness_reading: ['add-flatness-reading', 'correct-flatness-reading'],
  static_test: ['add-static-test', 'correct-static-test'],
  measured_value: ['add-measured-value', 'correct-measured-value'],
  lap_cycle: ['add-lap-cycle', 'correct-lap-cycle'],
  finding: ['add-finding', 'correct-finding'],
  part_line: ['add-part-line', 'correct-part-line'],
  dial_survey: ['start-survey'],
  dial_survey_reading: ['add-survey-reading'],
  dial_survey_end: ['end-survey'],
  wear_track: ['add-wear-track', 'correct-wear-track'],
  spring_check: ['add-spring-check', 'correct-spring-check'],
  assembly: ['add-assembly', 'correct-assembly'],
  dynamic_run: ['add-dynamic-run', 'correct-dynamic-run'],
  dynamic_run_batch: ['add-run-samples'],
  use_exception: ['ask-use-exception'],
  use_exception_answer: ['answer-use-exception'],
  doubt_answer: ['answer-doubt'],
  instrument_amendment: ['amend-instrument'],
  instrument_holder: ['set-instrument-holder'],
  instrument_file: ['add-instrument-file'],
  hand_over: ['hand-over'],
  agreed_rule: ['agree-rule'],
  concession: ['add-concession'],
  decision: ['release', 'refuse'],
  certificate: ['issue-certificate'],
  calibration: ['add-calibration'],
  limit_set: ['add-limit-set'],
  limit_set_step: ['approve-limit-set', 'retire-limit-set'],
} as const

function unwrittenRecords(store: Store): StoreFault[] {
  return Object.entries(writtenBy).flatMap(([table, acts]) => {
    const recordCount = countOf(store, recordsOf(table), [])
    const marks = acts.map(() => '?').join(', ')
    const lines = `SELECT count(*) FROM audit WHERE act IN (${marks})`
    const lineCount = countOf(store, lines, acts)
    if (recordCount === lineCount) return []
    return [{ kind: 'counts-differ', table, recordCount, lineCount } as const]
  })
}

/** What was in use before approvals were kept came into force by nobody's act. */
function recordsOf(table: string): string {
  const all = `SELECT count(*) FROM ${table}`
  return table === 'limit_set_step' ? `${all} WHERE by_id IS NOT NULL` : all
}

function countOf(store: Store, query: string, values: readonly string[]): number {
  return store.raw
    .prepare(query)
    .pluck()
    .get(...values) as number
}

function fileFaults(store: Store): StoreFault[] {
  const faults: StoreFault[] = []
  const files = store.raw.prepare('SELECT sha256, bytes FROM stored_file').iterate()
  for (const file of files as IterableIterator<{ sha256: string; bytes: Buffer }>) {
    if (fileHash(file.bytes) !== file.sha256) {
      faults.push({ kind: 'file-changed', sha256: file.sha256 })
    }
  }
  return faults
}

type CertificateRow = Pick<Certificate, 'number' | 'revision'> & {
  readonly issuedAt: string
  readonly record: string
  readonly orderNumber: string
  readonly outcome: string
  readonly isSameOrder: number
  readonly hasFile: number
}

function certificateFaults(store: Store): StoreFault[] {
  const rows = store.raw
    .prepare(
      `SELECT c.number, c.revision, c.issued_at AS issuedAt, c.record, d.outcome,
        w.number AS orderNumber, d.work_order_id = w.id AND c.customer_id = w.customer_id
          AS isSameOrder,
        EXISTS (SELECT 1 FROM stored_file f WHERE f.sha256 = c.sha256) AS hasFile
      FROM certificate c JOIN decision d ON d.id = c.decision_id
      JOIN work_order w ON w.id = c.work_order_id ORDER BY c.id`,
    )
    .iterate() as IterableIterator<CertificateRow>
  return [...rows].flatMap((row) => {
    const isReleased = row.outcome === 'released' && row.isSameOrder === 1
    return [
      ...(row.hasFile === 1 ? [] : (['certificate-without-file'] as const)),
      ...(isReleased ? [] : (['certificate-without-release'] as const)),
      ...(isOwnRecord(row) ? [] : (['certificate-unlike-record'] as const)),
    ].map((kind) => ({ kind, number: row.number, revision: row.revision }))
  })
}

function isOwnRecord(row: CertificateRow): boolean {
  const record = JSON.parse(row.record) as Certificate['record']
  return (
    record.number === row.number &&
    record.revision === row.revision &&
    record.issuedAt === row.issuedAt &&
    record.workOrder.number === row.orderNumber
  )
}
