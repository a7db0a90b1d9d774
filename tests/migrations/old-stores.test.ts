import { cpSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import Database from 'better-sqlite3'
import { afterEach, expect, test } from 'vitest'
import { openStore, type Store } from '../../src/store/open.ts'
import { verifyStore } from '../../src/store/verify-store.ts'
import { castAt } from '../support/cast.ts'
import { migrationsFolder } from '../support/open-test-store.ts'
import { readFrozen } from './read-hashes.ts'

const stores = fileURLToPath(new URL('../../fixtures/stores', import.meta.url))
const files = readdirSync(stores).filter((name) => name.endsWith('.sqlite'))
const folders: string[] = []

afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true })
})

function scratch(): string {
  const folder = mkdtempSync(join(tmpdir(), 'old-store-'))
  folders.push(folder)
  return folder
}

/** How many rows each table has, by name. */
function rowCounts(raw: Database.Database): Record<string, number> {
  const names = raw
    .prepare("SELECT name FROM sqlite_master WHERE type = 'table' AND name <> 'migration'")
    .pluck()
    .all() as string[]
  return Object.fromEntries(
    names
      .sort()
      .map((name) => [name, raw.prepare(`SELECT count(*) FROM "${name}"`).pluck().get() as number]),
  )
}

function upgrade(name: string, migrations: string): { before: object; store: Store } {
  const file = join(scratch(), name)
  cpSync(join(stores, name), file)
  const old = new Database(file)
  const before = rowCounts(old)
  old.close()
  return { before, store: openStore(file, migrations, castAt) }
}

test('there is an old store of the newest migration', () => {
  const newest = Object.keys(readFrozen()).at(-1) ?? ''
  expect(files).toContain(`store-${newest.slice(0, 4)}.sqlite`)
})

test.each(files)('%s opens in this version with every row, and verifies', (name) => {
  const { before, store } = upgrade(name, migrationsFolder)
  const after = rowCounts(store.raw)
  for (const [table, count] of Object.entries(before)) expect(after[table], table).toBe(count)
  expect(after.certificate).toBeGreaterThan(0)
  expect(after.flatness_reading).toBeGreaterThan(0)
  expect(verifyStore(store)).toEqual([])
  store.close()
})

test.each(files)('%s goes through a further migration with every row', (name) => {
  const folder = join(scratch(), 'migrations')
  cpSync(migrationsFolder, folder, { recursive: true })
  const names = [...Object.keys(readFrozen()), '9001_add_shelf']
  writeFileSync(
    join(folder, '9001_add_shelf.sql'),
    "ALTER TABLE seal ADD COLUMN shelf TEXT NOT NULL DEFAULT '';",
  )
  writeFileSync(
    join(folder, 'journal.json'),
    JSON.stringify(names.map((step, index) => ({ index, name: step }))),
  )
  const { before, store } = upgrade(name, folder)
  expect(rowCounts(store.raw)).toMatchObject(before)
  expect(verifyStore(store)).toEqual([])
  store.close()
})
