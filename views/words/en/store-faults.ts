import type { StoreFault } from '../../../src/domain/store-fault.ts'

/** What verification found, one line without an end: it also stands within other sentences. */
export function storeFaultSentence(fault: StoreFault): string {
  switch (fault.kind) {
    case 'damaged':
      return fault.said
    case 'points-nowhere':
      return `${fault.table} ${fault.rowId} points to a row that is not there`
    case 'counts-differ':
      return `${fault.table} has ${fault.recordCount} records and ${fault.lineCount} audit lines`
    case 'file-changed':
      return `stored file ${fault.sha256} was changed after it was stored`
    case 'audit-line-missing':
      return `audit line ${fault.missingId} is missing before line ${fault.beforeId}`
    case 'audit-line-unlinked':
      return `audit line ${fault.lineId} does not follow the line before it`
    case 'audit-line-changed':
      return `audit line ${fault.lineId} was changed after it was written`
    case 'certificate-without-file':
      return `${certificateName(fault)} has no stored file`
    case 'certificate-without-release':
      return `${certificateName(fault)} does not belong to a release of its order`
    case 'certificate-unlike-record':
      return `${certificateName(fault)} does not agree with its record`
    case 'record-missing':
      return `${recordName(fault)} is missing: audit line ${fault.lineId} tells of it`
    case 'record-changed': {
      const fields = fault.fields.join(', ')
      const line = `audit line ${fault.lineId}`
      return `${recordName(fault)} was changed after ${line} was written: ${fields}`
    }
  }
}

function certificateName(of: { readonly number: string; readonly revision: number }): string {
  return `certificate ${of.number} revision ${of.revision}`
}

function recordName({ table, id }: { readonly table: string; readonly id: number | null }): string {
  return id === null ? `a ${table}` : `${table} ${id}`
}
