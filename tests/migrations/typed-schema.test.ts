import { getTableConfig } from 'drizzle-orm/sqlite-core'
import { expect, test } from 'vitest'
import { tables } from '../../src/store/schema/tables.ts'
import { openTestStore } from '../support/open-test-store.ts'

type Column = { readonly name: string; readonly type: string; readonly isRequired: boolean }

const store = openTestStore()
const migrated = store.raw
  .prepare("SELECT name FROM sqlite_master WHERE type = 'table' AND name <> 'migration' ORDER BY 1")
  .pluck()
  .all() as string[]

test('every migrated table has a typed one, and the other way round', () => {
  const typed = Object.values(tables).map((table) => getTableConfig(table).name)
  expect(typed.toSorted()).toEqual(migrated)
  expect(typed.length).toBeGreaterThan(20)
})

test.each(Object.values(tables))('a typed table has the columns of the migrated one', (table) => {
  const { name, columns } = getTableConfig(table)
  const typed = columns.map(
    (one): Column => ({
      name: one.name,
      type: one.getSQLType().toUpperCase(),
      isRequired: one.notNull || one.primary,
    }),
  )
  const info = store.raw.pragma(`table_info(${name})`) as {
    name: string
    type: string
    notnull: number
    pk: number
  }[]
  expect(info.length).toBeGreaterThan(0)
  const stored = info.map(
    (one): Column => ({
      name: one.name,
      type: one.type,
      isRequired: one.notnull === 1 || one.pk > 0,
    }),
  )
  expect(typed).toEqual(stored)
})

test('every table is STRICT, so that no text gets into a column of numbers', () => {
  const strict = store.raw.pragma('table_list') as {
    name: string
    schema: string
    strict: number
  }[]
  const ours = strict.filter((one) => !one.name.startsWith('sqlite_'))
  expect(ours.length).toBe(migrated.length + 1)
  expect(ours.filter((one) => one.strict !== 1)).toEqual([])
})
