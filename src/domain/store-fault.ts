/**
 * One thing that verification finds wrong in a database, as data: the sentences stand in
 * `views/words`. `table` and `fields` are names of the database and of its records.
 */
export type StoreFault =
  /** SQLite's own check of pages and indexes, in its words. */
  | { readonly kind: 'damaged'; readonly said: string }
  | { readonly kind: 'points-nowhere'; readonly table: string; readonly rowId: number }
  | {
      readonly kind: 'counts-differ'
      readonly table: string
      readonly recordCount: number
      readonly lineCount: number
    }
  | { readonly kind: 'file-changed'; readonly sha256: string }
  | AuditFault
  | CertificateFault
  | RecordFault

/** What the chain of the audit trail gives away. */
export type AuditFault =
  | { readonly kind: 'audit-line-missing'; readonly missingId: number; readonly beforeId: number }
  /** It does not follow the line before it. */
  | { readonly kind: 'audit-line-unlinked'; readonly lineId: number }
  | { readonly kind: 'audit-line-changed'; readonly lineId: number }

type CertificateFault = {
  readonly kind:
    | 'certificate-without-file'
    | 'certificate-without-release'
    | 'certificate-unlike-record'
  readonly number: string
  readonly revision: number
}

/** A record that is not what its audit line says. */
export type RecordFault = {
  readonly table: string
  /** Null where the line itself was edited and names no record any more. */
  readonly id: number | null
  readonly lineId: number
} & (
  | { readonly kind: 'record-missing' }
  | { readonly kind: 'record-changed'; readonly fields: readonly string[] }
)
