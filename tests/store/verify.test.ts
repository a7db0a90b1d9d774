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
      expect(verifyAudit(store)).toEqual(['audit line 5 was changed after it was written'])
      expect(verifyStore(store)).toContain('audit line 5 was changed after it was written')
    },
  )

  test('shows an edited line whose own hash was made to fit', () => {
    const store = tampered(
      "UPDATE audit SET detail = '{}', hash = replace(hash, substr(hash, 1, 1), 'f') WHERE id = 5",
    )
    expect(verifyAudit(store)).toContain('audit line 6 does not follow the line before it')
  })

  test('shows a line that was taken out of the middle or from the beginning', () => {
    expect(verifyAudit(tampered('DELETE FROM audit WHERE id = 5'))).toEqual([
      'audit line 5 is missing before line 6',
      'audit line 6 does not follow the line before it',
    ])
    expect(verifyAudit(tampered('DELETE FROM audit WHERE id = 1'))[0]).toBe(
      'audit line 1 is missing before line 2',
    )
  })

  test('shows lines whose places were exchanged', () => {
    const store = tampered(
      'UPDATE audit SET id = -5 WHERE id = 5',
      'UPDATE audit SET id = 5 WHERE id = 6',
      'UPDATE audit SET id = 6 WHERE id = -5',
    )
    expect(verifyAudit(store)).toEqual([
      'audit line 5 does not follow the line before it',
      'audit line 6 does not follow the line before it',
      'audit line 7 does not follow the line before it',
    ])
  })

  test('whose end was cut off is a chain still, and the records give it away', () => {
    const lastOrder = "SELECT max(id) FROM audit WHERE act = 'add-work-order'"
    const store = tampered(`DELETE FROM audit WHERE id >= (${lastOrder})`)
    expect(verifyAudit(store)).toEqual([])
    expect(verifyStore(store)).toContain('work_order has 2 records and 1 audit lines')
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

describe('the whole store', () => {
  test.each([
    [
      'a stored file that was changed',
      "UPDATE stored_file SET bytes = x'00'",
      /^stored file [0-9a-f]{64} was changed after it was stored$/,
    ],
    [
      'a certificate without its file',
      'DELETE FROM stored_file',
      'certificate C-2026-0001-K7QX3M revision 0 has no stored file',
    ],
    [
      'a certificate whose record names another number',
      "UPDATE certificate SET record = json_set(record, '$.number', 'C-2026-0009-AAAAAA')",
      'certificate C-2026-0001-K7QX3M revision 0 does not agree with its record',
    ],
    [
      'a certificate whose record names another order',
      "UPDATE certificate SET record = json_set(record, '$.workOrder.number', 'W-2026-0002')",
      'certificate C-2026-0001-K7QX3M revision 0 does not agree with its record',
    ],
    [
      'a certificate that was moved to another customer',
      'UPDATE certificate SET customer_id = 2',
      'certificate C-2026-0001-K7QX3M revision 0 does not belong to a release of its order',
    ],
    [
      'a certificate of a refusal',
      "UPDATE decision SET outcome = 'refused', reason = 'x'",
      'certificate C-2026-0001-K7QX3M revision 0 does not belong to a release of its order',
    ],
    [
      'a record taken out',
      'DELETE FROM static_test WHERE id = 1',
      'static_test has 4 records and 5 audit lines',
    ],
    [
      'an edited figure of a reading',
      'UPDATE flatness_reading SET flatness_um = 0.1 WHERE id = 1',
      /^flatness_reading 1 was changed after audit line \d+ was written: flatnessUm$/,
    ],
    [
      'an edited count of one direction',
      "UPDATE flatness_direction SET bands = 0.5, bands_typed = '0.5' WHERE id = 1",
      /^flatness_reading 1 was changed after audit line \d+ was written: directions$/,
    ],
    [
      'an edited static test',
      'UPDATE static_test SET end_pressure_kpa_abs = 271 WHERE id = 1',
      /^static_test 1 was changed after audit line \d+ was written: endPressureKPaAbs$/,
    ],
    [
      'an edited hand-over',
      "UPDATE hand_over SET by_name = 'Nobody' WHERE id = 1",
      /^hand_over 1 was changed after audit line \d+ was written: byName$/,
    ],
    [
      'an edited decision',
      "UPDATE decision SET by_name = 'Nobody' WHERE id = 1",
      /^decision 1 was changed after audit line \d+ was written: byName$/,
    ],
    [
      'an edited order',
      "UPDATE work_order SET customer_order = 'PO 1' WHERE id = 1",
      /^work_order 1 was changed after audit line \d+ was written: customerOrder$/,
    ],
    [
      'an edited limit',
      'UPDATE limit_value SET upper = 9 WHERE id = 1',
      /^limit_set 1 was changed after audit line \d+ was written: limits$/,
    ],
    [
      'an edited calibration',
      "UPDATE calibration SET due_on = '2099-01-01' WHERE id = 1",
      /^calibration 1 was changed after audit line \d+ was written: dueOn$/,
    ],
    [
      'a figure edited in the record of a certificate',
      "UPDATE certificate SET record = json_set(record, '$.workshop.name', 'Another')",
      /^certificate 1 was changed after audit line \d+ was written: recordSha256$/,
    ],
    [
      'a record that its line alone tells of',
      'DELETE FROM flatness_reading WHERE id = 1',
      /^flatness_reading 1 is missing: audit line \d+ tells of it$/,
    ],
    [
      'a row that points nowhere',
      'UPDATE hand_over SET by_id = 99 WHERE id = 1',
      'hand_over 1 points to a row that is not there',
    ],
  ])('shows %s', (_, statement, fault) => {
    const faults = verifyStore(tampered(statement))
    expect(faults.length).toBeGreaterThan(0)
    expect(
      faults.some((one) => (typeof fault === 'string' ? one === fault : fault.test(one))),
    ).toBe(true)
  })
})
