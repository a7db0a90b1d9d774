import { describe, expect, test } from 'vitest'
import type { OperatorFault } from '../../../src/domain/operator-error.ts'
import type { StoreFault } from '../../../src/domain/store-fault.ts'
import { operatorSentence } from '../../../views/words/en/operator-faults.ts'
import { storeFaultSentence } from '../../../views/words/en/store-faults.ts'

/** One of each kind: the compiler asks for a kind that is left out. */
type EachOf<Fault extends { readonly kind: string }> = {
  readonly [Kind in Fault['kind']]: Details<Fault, Kind>
}
type Details<Fault extends { readonly kind: string }, Kind> = Fault extends unknown
  ? Kind extends Fault['kind']
    ? Omit<Fault, 'kind'>
    : never
  : never

const number = 'C-2026-0001-K7QX3M'
const changed: StoreFault = { kind: 'audit-line-changed', lineId: 5 }

const storeFaults: EachOf<StoreFault> = {
  damaged: { said: 'row 7 missing from index seal_by_customer' },
  'points-nowhere': { table: 'hand_over', rowId: 31 },
  'counts-differ': { table: 'work_order', recordCount: 22, lineCount: 21 },
  'file-changed': { sha256: 'ab12' },
  'audit-line-missing': { missingId: 51, beforeId: 62 },
  'audit-line-unlinked': { lineId: 61 },
  'audit-line-changed': { lineId: 51 },
  'certificate-without-file': { number, revision: 3 },
  'certificate-without-release': { number, revision: 3 },
  'certificate-unlike-record': { number, revision: 3 },
  'record-missing': { table: 'flatness_reading', id: 41, lineId: 77 },
  'record-changed': { table: 'decision', id: 41, lineId: 77, fields: ['byName', 'reason'] },
}

const operatorFaults: EachOf<OperatorFault> = {
  'not-a-port': { name: 'RINGPROOF_PORT', text: 'eighty', max: 65_535 },
  'not-a-setting': { name: 'RINGPROOF_DEMO', text: 'yes', choices: ['on', 'off'] },
  'not-an-address': { name: 'RINGPROOF_ORIGIN', text: 'seals' },
  'more-than-a-host': { name: 'RINGPROOF_ORIGIN', text: 'https://seals.example/app' },
  'newer-database': { doneCount: 9, knownCount: 8 },
  'migration-changed': { name: '0002_create_seals' },
  'broken-keys': { rowCount: 13 },
  'backup-file-exists': { file: '/b/copy.sqlite' },
  'backup-unsound': { file: '/b/copy.sqlite', faults: [changed] },
  'restore-folder-filled': { folder: '/b/data' },
  'restore-unsound': { file: '/b/copy.sqlite', faults: [changed, changed] },
}

/** Everything that a fault tells must stand in its sentence, or it needn't be told. */
function expectToTell(sentence: string, details: object): void {
  expect(sentence).toMatch(/^[^\n]{10,}$/)
  expect(sentence).not.toMatch(/undefined|\[object/)
  for (const value of Object.values(details).flat()) {
    const text = typeof value === 'object' ? storeFaultSentence(value as StoreFault) : value
    expect(sentence).toContain(String(text))
  }
}

describe('the words of what verification finds', () => {
  test.each(Object.entries(storeFaults))('tell of %s in one line with each detail', (...of) => {
    const [kind, details] = of
    expectToTell(storeFaultSentence({ kind, ...details } as StoreFault), details)
  })

  test('do without the number of a record that its line no longer names', () => {
    const of = { table: 'decision', id: null, lineId: 77 }
    expect(storeFaultSentence({ kind: 'record-missing', ...of })).toBe(
      'a decision is missing: audit line 77 tells of it',
    )
  })

  test('name a record, its line and what differs', () => {
    const of = { table: 'decision', id: 4, lineId: 77, fields: ['byName', 'reason'] }
    expect(storeFaultSentence({ kind: 'record-changed', ...of })).toBe(
      'decision 4 was changed after audit line 77 was written: byName, reason',
    )
  })
})

describe('the words of what an operator is refused for', () => {
  test.each(Object.entries(operatorFaults))('tell of %s in one line with each detail', (...of) => {
    const [kind, details] = of
    expectToTell(operatorSentence({ kind, ...details } as OperatorFault), details)
  })

  test('say what to do about a database of a newer version', () => {
    const fault = { kind: 'newer-database', doneCount: 9, knownCount: 8 } as const
    expect(operatorSentence(fault)).toBe(
      'the database has 9 migrations and this version knows 8: start the newer version that wrote it',
    )
  })
})
