import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { migrate } from '../../src/store/migrate.ts'
import { castAt } from '../support/cast.ts'
import { migrationsFolder } from '../support/open-test-store.ts'
import { operatorFault } from '../support/operator-fault.ts'

type Entry = { index: number; name: string }

let folder = ''
let raw: Database.Database

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'migrations-'))
  cpSync(migrationsFolder, folder, { recursive: true })
  raw = new Database(':memory:')
  raw.pragma('foreign_keys = ON')
})

afterEach(() => {
  raw.close()
  rmSync(folder, { recursive: true })
})

const journal = () => JSON.parse(readFileSync(join(folder, 'journal.json'), 'utf8')) as Entry[]
const writeJournal = (entries: Entry[]) =>
  writeFileSync(join(folder, 'journal.json'), JSON.stringify(entries))
const addStep = (name: string, sql: string) => {
  writeFileSync(join(folder, `${name}.sql`), sql)
  writeJournal([...journal(), { index: journal().length, name }])
}
const run = () => migrate(raw, folder, castAt)
const doneCount = () => raw.prepare('SELECT count(*) FROM migration').pluck().get()

test('applies each migration once', () => {
  const count = journal().length
  expect(run()).toBe(count)
  expect(run()).toBe(0)
  addStep('9001_add_shelf', 'CREATE TABLE shelf (id INTEGER PRIMARY KEY) STRICT;')
  expect(run()).toBe(1)
  expect(doneCount()).toBe(count + 1)
})

test('refuses a migration that was edited after it was applied', () => {
  run()
  writeFileSync(join(folder, '0002_create_seals.sql'), '-- other')
  expect(operatorFault(run)).toEqual({ kind: 'migration-changed', name: '0002_create_seals' })
})

test('refuses a migration that was taken out of the middle', () => {
  run()
  const rest = journal().filter((one) => one.name !== '0003_create_limits_and_instruments')
  addStep('9001_add_shelf', 'CREATE TABLE shelf (id INTEGER PRIMARY KEY) STRICT;')
  writeJournal([...rest, ...journal().slice(-1)].map((one, index) => ({ ...one, index })))
  expect(operatorFault(run)).toEqual({
    kind: 'migration-changed',
    name: '0003_create_limits_and_instruments',
  })
})

test('refuses a database that a newer version wrote', () => {
  const count = journal().length
  run()
  writeJournal(journal().slice(0, -1))
  expect(operatorFault(run)).toEqual({
    kind: 'newer-database',
    doneCount: count,
    knownCount: count - 1,
  })
})

test('refuses a journal whose numbers have a gap, and a step whose file is missing', () => {
  const entries = journal()
  writeJournal([...entries, { index: entries.length + 1, name: '9001_late' }])
  const { length } = entries
  expect(run).toThrow(`requires index ${length} of 9001_late in the journal, got ${length + 1}`)
  writeJournal([...entries, { index: entries.length, name: '9001_late' }])
  expect(run).toThrow('ENOENT')
  expect(raw.prepare("SELECT count(*) FROM sqlite_master WHERE name = 'user'").pluck().get()).toBe(
    0,
  )
})

test('leaves nothing of any step where one of them fails', () => {
  addStep('9001_add_shelf', 'CREATE TABLE shelf (id INTEGER PRIMARY KEY) STRICT;')
  addStep('9002_break', 'INSERT INTO nowhere VALUES (1);')
  expect(run).toThrow('no such table: nowhere')
  expect(raw.inTransaction).toBe(false)
  expect(doneCount()).toBe(0)
  expect(raw.prepare("SELECT count(*) FROM sqlite_master WHERE name = 'shelf'").pluck().get()).toBe(
    0,
  )
  expect(raw.pragma('foreign_keys', { simple: true })).toBe(1)
})

test('refuses a step that ends the transaction it stands in', () => {
  addStep('9001_commit', 'COMMIT;')
  expect(run).toThrow('requires steps that leave its transaction open, got 9001_commit')
})

test('keeps the child rows of a table that is rebuilt', () => {
  addStep(
    '9001_add_shelves',
    `CREATE TABLE shelf (id INTEGER PRIMARY KEY, name TEXT) STRICT;
     CREATE TABLE box (id INTEGER PRIMARY KEY,
       shelf_id INTEGER NOT NULL REFERENCES shelf (id) ON DELETE CASCADE) STRICT;
     INSERT INTO shelf VALUES (1, 'left');
     INSERT INTO box VALUES (1, 1), (2, 1);`,
  )
  run()
  addStep(
    '9002_rebuild_shelf',
    `CREATE TABLE shelf_new (id INTEGER PRIMARY KEY, name TEXT NOT NULL) STRICT;
     INSERT INTO shelf_new SELECT id, name FROM shelf;
     DROP TABLE shelf;
     ALTER TABLE shelf_new RENAME TO shelf;`,
  )
  run()
  expect(raw.prepare('SELECT id FROM box ORDER BY id').pluck().all()).toEqual([1, 2])
  expect(raw.pragma('foreign_keys', { simple: true })).toBe(1)
})

test('the same rebuild with keys on would empty the child table: the trap is real', () => {
  raw.exec(
    `CREATE TABLE shelf (id INTEGER PRIMARY KEY);
     CREATE TABLE box (id INTEGER PRIMARY KEY, shelf_id REFERENCES shelf (id) ON DELETE CASCADE);
     INSERT INTO shelf VALUES (1); INSERT INTO box VALUES (1, 1);
     BEGIN; PRAGMA foreign_keys = OFF; DROP TABLE shelf; COMMIT;`,
  )
  expect(raw.prepare('SELECT count(*) FROM box').pluck().get()).toBe(0)
})

test('refuses a step that leaves a child without its parent', () => {
  run()
  addStep('9001_orphan', "INSERT INTO equipment VALUES (1, 77, 'P-1', '', '');")
  expect(operatorFault(run)).toEqual({ kind: 'broken-keys', rowCount: 1 })
  expect(raw.prepare('SELECT count(*) FROM equipment').pluck().get()).toBe(0)
})
