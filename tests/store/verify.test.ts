import { describe, expect, test } from 'vitest'
import { addAudit } from '../../src/store/add-audit.ts'
import { listAudit } from '../../src/store/list-audit.ts'
import type { Store } from '../../src/store/open.ts'
import { verifyAudit } from '../../src/store/verify-audit.ts'
import { verifyStore } from '../../src/store/verify-store.ts'
import { operator } from '../support/cast.ts'
import { fillShop } from '../support/fill-shop.ts'

/** What someone with the file and a tool can do: the triggers are dropped first. */
function tampered(...statements: readonly string[]): Store {
  const { store } = fillShop()
  const triggers = store.raw
    .prepare("SELECT name FROM sqlite_master WHERE type = 'trigger'")
    .pluck()
    .all() as string[]
  for (const name of triggers) store.raw.exec(`DROP TRIGGER ${name}`)
  store.raw.pragma('foreign_keys = OFF')
  for (const statement of statements) store.raw.exec(statement)
  return store
}

describe('the audit trail', () => {
  test('of an honest store verifies, and so does the store', () => {
    const { store } = fillShop()
    expect(verifyAudit(store)).toEqual([])
    expect(verifyStore(store)).toEqual([])
    expect(listAudit(store, { limit: 500 }).items.length).toBeGreaterThan(40)
  })

  test.each(['at', 'user_id', 'actor', 'act', 'subject', 'detail'])(
    'shows an edited %s',
    (column) => {
      const value = { user_id: '7', detail: "'{}'" }[column] ?? "'x'"
      const store = tampered(`UPDATE audit SET ${column} = ${value} WHERE id = 5`)
      const changed = { kind: 'audit-line-changed', lineId: 5 }
      expect(verifyAudit(store)).toEqual([changed])
      expect(verifyStore(store)).toContainEqual(changed)
    },
  )

  test('shows an emptied line of every act as a record that it no longer names', () => {
    const { store } = fillShop()
    const acts = store.raw.prepare('SELECT DISTINCT act FROM audit').pluck().all() as string[]
    const told = acts.filter((act) => {
      const faults = verifyStore(tampered(`UPDATE audit SET detail = '{}' WHERE act = '${act}'`))
      return faults.some((one) => one.kind === 'record-missing' && one.id === null)
    })
    expect(told.sort()).toEqual([
      'add-assembly',
      'add-calibration',
      'add-concession',
      'add-customer',
      'add-dynamic-run',
      'add-equipment',
      'add-face-photo',
      'add-finding',
      'add-flatness-reading',
      'add-instrument',
      'add-instrument-file',
      'add-lap-cycle',
      'add-limit-set',
      'add-measured-value',
      'add-part-line',
      'add-run-samples',
      'add-seal',
      'add-spring-check',
      'add-static-test',
      'add-survey-reading',
      'add-user',
      'add-wear-track',
      'add-work-order',
      'agree-rule',
      'amend-instrument',
      'answer-doubt',
      'answer-use-exception',
      'approve-limit-set',
      'ask-use-exception',
      'correct-assembly',
      'correct-dynamic-run',
      'correct-finding',
      'correct-flatness-reading',
      'correct-lap-cycle',
      'correct-measured-value',
      'correct-part-line',
      'correct-spring-check',
      'correct-static-test',
      'correct-wear-track',
      'end-survey',
      'hand-over',
      'issue-certificate',
      'refuse',
      'release',
      'retire-limit-set',
      'set-instrument-holder',
      'start-survey',
    ])
    // As many stores as there are acts: some 3 s, and more beside other work.
  }, 20_000)

  test('shows an edited line whose own hash was made to fit', () => {
    const store = tampered(
      "UPDATE audit SET detail = '{}', hash = replace(hash, substr(hash, 1, 1), 'f') WHERE id = 5",
    )
    expect(verifyAudit(store)).toContainEqual({ kind: 'audit-line-unlinked', lineId: 6 })
  })

  test('shows a line that was taken out of the middle or from the beginning', () => {
    expect(verifyAudit(tampered('DELETE FROM audit WHERE id = 5'))).toEqual([
      { kind: 'audit-line-missing', missingId: 5, beforeId: 6 },
      { kind: 'audit-line-unlinked', lineId: 6 },
    ])
    expect(verifyAudit(tampered('DELETE FROM audit WHERE id = 1'))[0]).toEqual({
      kind: 'audit-line-missing',
      missingId: 1,
      beforeId: 2,
    })
  })

  test('shows lines whose places were exchanged', () => {
    const store = tampered(
      'UPDATE audit SET id = -5 WHERE id = 5',
      'UPDATE audit SET id = 5 WHERE id = 6',
      'UPDATE audit SET id = 6 WHERE id = -5',
    )
    expect(verifyAudit(store)).toEqual([
      { kind: 'audit-line-unlinked', lineId: 5 },
      { kind: 'audit-line-unlinked', lineId: 6 },
      { kind: 'audit-line-unlinked', lineId: 7 },
    ])
  })

  test('whose end was cut off is a chain still, and the records give it away', () => {
    const lastOrder = "SELECT max(id) FROM audit WHERE act = 'add-work-order'"
    const store = tampered(`DELETE FROM audit WHERE id >= (${lastOrder})`)
    expect(verifyAudit(store)).toEqual([])
    expect(verifyStore(store)).toContainEqual({
      kind: 'counts-differ',
      table: 'work_order',
      recordCount: 3,
      lineCount: 2,
    })
  })

  test('is listed newest first, by subject, page by page', () => {
    const { store, workOrder } = fillShop()
    const { items } = listAudit(store, { subject: workOrder.number, limit: 500 })
    expect(items[0]?.act).toBe('issue-certificate')
    expect(items.at(-1)?.act).toBe('add-work-order')
    expect(items.every((one) => one.subject === workOrder.number)).toBe(true)
    const first = listAudit(store, { subject: workOrder.number, limit: 3 })
    const cursor = first.nextCursor ?? ''
    const rest = listAudit(store, { subject: workOrder.number, limit: 500, cursor })
    expect([...first.items, ...rest.items]).toEqual(items)
    expect(rest.nextCursor).toBeNull()
    expect(listAudit(store, { limit: 5, cursor: 'x' }).items).toEqual([])
    expect(() => listAudit(store, { limit: 0 })).toThrow('listAudit requires limit from 1 to 500')
  })

  test('goes on from the line before, also for an actor who is no user', () => {
    const { store } = fillShop()
    addAudit(store, operator, { act: 'sign-in', subject: 'user é', detail: { text: 'ünïcode "' } })
    expect(verifyAudit(store)).toEqual([])
    expect(listAudit(store, { limit: 1 }).items[0]).toMatchObject({
      userId: null,
      subject: 'user é',
    })
  })
})

const theCertificate = { number: 'C-2026-0001-K7QX3M', revision: 0 }
const of = (table: string) => ({ table, id: 1, lineId: expect.any(Number) })

describe('the whole store', () => {
  test.each([
    [
      'a stored file that was changed',
      "UPDATE stored_file SET bytes = x'00'",
      { kind: 'file-changed', sha256: expect.stringMatching(/^[0-9a-f]{64}$/) },
    ],
    [
      'a certificate without its file',
      'DELETE FROM stored_file',
      { kind: 'certificate-without-file', ...theCertificate },
    ],
    [
      'a certificate whose record names another number',
      "UPDATE certificate SET record = json_set(record, '$.number', 'C-2026-0009-AAAAAA')",
      { kind: 'certificate-unlike-record', ...theCertificate },
    ],
    [
      'a certificate whose record names another order',
      "UPDATE certificate SET record = json_set(record, '$.workOrder.number', 'W-2026-0002')",
      { kind: 'certificate-unlike-record', ...theCertificate },
    ],
    [
      'a certificate that was moved to another customer',
      'UPDATE certificate SET customer_id = 2',
      { kind: 'certificate-without-release', ...theCertificate },
    ],
    [
      'a certificate of a refusal',
      "UPDATE decision SET outcome = 'refused', reason = 'x'",
      { kind: 'certificate-without-release', ...theCertificate },
    ],
    [
      'a record taken out',
      'DELETE FROM static_test WHERE id = 1',
      { kind: 'counts-differ', table: 'static_test', recordCount: 4, lineCount: 5 },
    ],
    [
      'an edited figure of a reading',
      'UPDATE flatness_reading SET flatness_um = 0.1 WHERE id = 1',
      { kind: 'record-changed', ...of('flatness_reading'), fields: ['flatnessUm'] },
    ],
    [
      'an edited count of one direction',
      "UPDATE flatness_direction SET bands = 0.5, bands_typed = '0.5' WHERE id = 1",
      { kind: 'record-changed', ...of('flatness_reading'), fields: ['directions'] },
    ],
    [
      'an edited static test',
      'UPDATE static_test SET end_pressure_kpa_abs = 271 WHERE id = 1',
      { kind: 'record-changed', ...of('static_test'), fields: ['endPressureKPaAbs'] },
    ],
    [
      'an edited hand-over',
      "UPDATE hand_over SET by_name = 'Nobody' WHERE id = 1",
      { kind: 'record-changed', ...of('hand_over'), fields: ['byName'] },
    ],
    [
      'an edited decision',
      "UPDATE decision SET by_name = 'Nobody' WHERE id = 1",
      { kind: 'record-changed', ...of('decision'), fields: ['byName'] },
    ],
    [
      'an edited order',
      "UPDATE work_order SET customer_order = 'PO 1' WHERE id = 1",
      { kind: 'record-changed', ...of('work_order'), fields: ['customerOrder'] },
    ],
    [
      'an edited limit',
      'UPDATE limit_value SET upper = 9 WHERE id = 1',
      { kind: 'record-changed', ...of('limit_set'), fields: ['limits'] },
    ],
    [
      'an edited calibration',
      "UPDATE calibration SET due_on = '2099-01-01' WHERE id = 1",
      { kind: 'record-changed', ...of('calibration'), fields: ['dueOn'] },
    ],
    [
      'a customer renamed',
      "UPDATE customer SET name = 'Another' WHERE id = 1",
      { kind: 'record-changed', ...of('customer'), fields: ['name'] },
    ],
    [
      'a position with another tag',
      "UPDATE equipment SET tag = 'X-1' WHERE id = 1",
      { kind: 'record-changed', ...of('equipment'), fields: ['tag'] },
    ],
    [
      'a seal with another serial',
      "UPDATE seal SET serial = 'S-99' WHERE id = 1",
      { kind: 'record-changed', ...of('seal'), fields: ['serial'] },
    ],
    [
      'a face of another material',
      "UPDATE component SET material = 'alumina' WHERE id = 1",
      { kind: 'record-changed', ...of('seal'), fields: ['components'] },
    ],
    [
      'an instrument with another number',
      "UPDATE instrument SET number = 'L-99' WHERE id = 1",
      { kind: 'record-changed', ...of('instrument'), fields: ['number'] },
    ],
    [
      'a person with another role',
      "UPDATE user SET role = 'inspector' WHERE id = 1",
      { kind: 'record-changed', ...of('user'), fields: ['role'] },
    ],
    [
      'a seal that no line tells of',
      `INSERT INTO seal (customer_id, serial, drawing, drawing_revision, arrangement,
        shaft_diameter_mm, size) VALUES (1, 'S-98', '', '', 'single', 60, '')`,
      { kind: 'counts-differ', table: 'seal', recordCount: 2, lineCount: 1 },
    ],
    [
      'an answer about an instrument that no line tells of',
      `INSERT INTO doubt_answer (calibration_id, subject_kind, subject_id, answer, reason, by_id,
        by_name, at) SELECT calibration_id, subject_kind, subject_id, 'stands', 'x', by_id, by_name,
        at FROM doubt_answer WHERE id = 1`,
      { kind: 'counts-differ', table: 'doubt_answer', recordCount: 3, lineCount: 2 },
    ],
    [
      'an exception that no line tells of',
      `INSERT INTO use_exception (work_order_id, instrument_id, fault, reason, asked_by_id,
        asked_by_name, asked_at) SELECT work_order_id, instrument_id, fault, 'x', asked_by_id,
        asked_by_name, asked_at FROM use_exception WHERE id = 1`,
      { kind: 'counts-differ', table: 'use_exception', recordCount: 2, lineCount: 1 },
    ],
    [
      'a figure edited in the record of a certificate',
      "UPDATE certificate SET record = json_set(record, '$.workshop.name', 'Another')",
      { kind: 'record-changed', ...of('certificate'), fields: ['recordSha256'] },
    ],
    [
      'a record that its line alone tells of',
      'DELETE FROM flatness_reading WHERE id = 1',
      { kind: 'record-missing', ...of('flatness_reading') },
    ],
    [
      'a row that points nowhere',
      'UPDATE hand_over SET by_id = 99 WHERE id = 1',
      { kind: 'points-nowhere', table: 'hand_over', rowId: 1 },
    ],
  ])('shows %s', (_, statement, fault) => {
    expect(verifyStore(tampered(statement))).toContainEqual(fault)
  })
})
