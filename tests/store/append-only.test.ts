import { describe, expect, test } from 'vitest'
import type { Store } from '../../src/store/open.ts'
import { buildShop } from '../support/build-shop.ts'
import { fillShop } from '../support/fill-shop.ts'
import { openTestStore } from '../support/open-test-store.ts'

type Row = Record<string, string | number | Buffer | null>

/** Tables whose rows may change: nothing in them was measured, decided or certified. */
const withoutTriggers = [
  'api_token', // revoked
  'component', // dimensions are stated at receipt; certificates keep what they certify
  'customer', // address and contact move
  'equipment',
  'kept_answer', // pruned
  'migration', // its hashes are compared at every start
  'seal',
  'session', // ended
  'sign_in_failure', // pruned
  'user', // password, active or not
]

const schema = openTestStore()
const tables = names(schema, "SELECT name FROM sqlite_master WHERE type = 'table'")
const guarded = names(schema, "SELECT DISTINCT tbl_name FROM sqlite_master WHERE type = 'trigger'")
const appendOnly = guarded.filter((table) => triggersOf(table).includes(`${table}_no_update`))

describe('append-only tables', () => {
  test('are most of the tables of records, and the others are listed with their reason', () => {
    expect(tables.filter((table) => !guarded.includes(table)).sort()).toEqual(withoutTriggers)
    expect(guarded.filter((table) => !appendOnly.includes(table)).sort()).toEqual([
      'counter',
      'instrument',
      'work_order',
    ])
    expect(appendOnly.length).toBeGreaterThan(10)
  })

  test.each(appendOnly)('%s refuses every update, delete and replacement', (table) => {
    const { store } = fillShop()
    store.raw.pragma('foreign_keys = OFF') // so that nothing but the triggers refuses
    const row = newest(store, table)
    for (const column of Object.keys(row)) {
      const update = `UPDATE ${table} SET ${column} = ${column}`
      expect(() => store.raw.exec(update), update).toThrow(`${table} is append-only`)
    }
    expect(() => store.raw.exec(`DELETE FROM ${table}`)).toThrow(`${table} is append-only`)
    const keys = uniqueKeys(store, table)
    expect(keys.length).toBeGreaterThan(0)
    for (const key of keys) {
      for (const verb of ['INSERT OR REPLACE', 'REPLACE']) {
        expect(() => insert(store, verb, table, twin(row, key, keys)), `${verb} by ${key}`).toThrow(
          `${table} is append-only`,
        )
      }
    }
  })

  test.each(appendOnly)('%s takes the same row where no key is the same', (table) => {
    const { store } = fillShop()
    store.raw.pragma('foreign_keys = OFF')
    const keys = uniqueKeys(store, table)
    const stranger = twin(newest(store, table), [], keys)
    expect(insert(store, 'INSERT OR REPLACE', table, stranger).changes).toBe(1)
  })
})

describe('a work order', () => {
  test('moves through stages and restates decontamination, and keeps the rest', () => {
    const { store } = buildShop()
    const free = ['stage', 'decontamination', 'last_fluid']
    const row = newest(store, 'work_order')
    for (const column of Object.keys(row)) {
      const value = typeof row[column] === 'number' ? `${column} + 1` : `'testing'`
      const change = () => store.raw.exec(`UPDATE OR REPLACE work_order SET ${column} = ${value}`)
      if (column === 'decontamination') {
        store.raw.exec("UPDATE work_order SET decontamination = 'not-needed'")
      } else if (free.includes(column)) change()
      else expect(change, column).toThrow('a work order keeps what was received')
    }
    expect(() => store.raw.exec('UPDATE work_order SET rowid = 77')).toThrow('keeps what was')
  })

  test('is neither deleted nor replaced, by id or by number', () => {
    const { store } = buildShop()
    store.raw.pragma('foreign_keys = OFF')
    expect(() => store.raw.exec('DELETE FROM work_order')).toThrow('work orders are not deleted')
    const keys = uniqueKeys(store, 'work_order')
    expect(keys).toContainEqual(['number'])
    for (const key of keys) {
      const same = twin(newest(store, 'work_order'), key, keys)
      expect(() => insert(store, 'INSERT OR REPLACE', 'work_order', same)).toThrow('keeps what was')
    }
  })
})

describe('a counter', () => {
  test('goes up by one and does nothing else', () => {
    const { store } = buildShop()
    for (const change of [
      'UPDATE counter SET last = last + 2',
      'UPDATE counter SET last = last',
      'UPDATE counter SET last = 0',
      'UPDATE counter SET year = year + 1, last = last + 1',
      "INSERT OR REPLACE INTO counter VALUES ('work-order', 2026, 1)",
    ]) {
      expect(() => store.raw.exec(change), change).toThrow('a counter goes up by one')
    }
    expect(() => store.raw.exec('DELETE FROM counter')).toThrow('counters are not deleted')
    store.raw.exec('UPDATE counter SET last = last + 1')
  })
})

describe('a limit set', () => {
  test('gets no further limit once a work order is judged by it', () => {
    const { store, limitSet } = buildShop()
    const limit = { ...newest(store, 'limit_value'), id: null, face_material: 'alumina' }
    expect(() => insert(store, 'INSERT', 'limit_value', limit)).toThrow(
      'limit_value is append-only',
    )
    store.raw.exec(
      "INSERT INTO limit_set VALUES (99, 'Free', 1, '2026-01-01', '', 2, 0.3, NULL, '')",
    )
    insert(store, 'INSERT', 'limit_value', { ...limit, limit_set_id: 99 })
    expect(limitSet.limits).toHaveLength(2)
  })
})

function names(store: Store, query: string): string[] {
  return store.raw.prepare(`${query} ORDER BY 1`).pluck().all() as string[]
}

function triggersOf(table: string): string[] {
  const query = `SELECT name FROM sqlite_master WHERE type = 'trigger' AND tbl_name = '${table}'`
  return names(schema, query)
}

function newest(store: Store, table: string): Row {
  const row = store.raw.prepare(`SELECT * FROM ${table} ORDER BY rowid DESC LIMIT 1`).get()
  if (row === undefined) throw new Error(`the filled shop has no row in ${table}`)
  return row as Row
}

/** The primary key and every other unique key, as lists of columns. */
function uniqueKeys(store: Store, table: string): string[][] {
  const columns = store.raw.pragma(`table_info(${table})`) as { name: string; pk: number }[]
  const primary = columns.filter((one) => one.pk > 0).map((one) => one.name)
  const indexes = store.raw.pragma(`index_list(${table})`) as { name: string; unique: number }[]
  const others = indexes
    .filter((index) => index.unique === 1)
    .map((index) => {
      const parts = store.raw.pragma(`index_info(${index.name})`) as { name: string | null }[]
      // An expression has no name; the only one is coalesce(face_material, '').
      return parts.map((part) => part.name ?? 'face_material')
    })
  return [primary, ...others]
}

/** A row that agrees with another in one key and differs in every other one. */
function twin(row: Row, same: readonly string[], keys: readonly string[][]): Row {
  const other = { ...row }
  for (const column of keys.flat()) {
    if (!same.includes(column)) other[column] = differing(row[column] ?? null)
  }
  return other
}

function differing(value: Row[string]): Row[string] {
  if (typeof value === 'number') return value + 1 // stays within every CHECK
  if (typeof value !== 'string') return value
  if (value === 'approved') return 'retired'
  if (value === 'retired') return 'approved'
  if (value === 'static-drop') return 'static-leak-rate'
  if (value === 'flatness-reading') return 'static-test'
  return `${value.slice(0, -1)}${value.endsWith('0') ? '1' : '0'}`
}

function insert(store: Store, verb: string, table: string, row: Row) {
  const columns = Object.keys(row)
  const marks = columns.map(() => '?').join(', ')
  return store.raw
    .prepare(`${verb} INTO ${table} (${columns.join(', ')}) VALUES (${marks})`)
    .run(...Object.values(row))
}
