import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { migrationsFolder } from '../support/open-test-store.ts'
import { readFrozen, readHashes } from './read-hashes.ts'

test('a migration that has landed is never edited, and each one is in the list', () => {
  expect(readHashes()).toEqual(readFrozen())
  expect(Object.keys(readFrozen()).length).toBeGreaterThanOrEqual(8)
})

test('the journal names every file, in the order of the numbers', () => {
  const journal = JSON.parse(readFileSync(join(migrationsFolder, 'journal.json'), 'utf8')) as {
    name: string
  }[]
  expect(journal.map((one) => one.name)).toEqual(Object.keys(readHashes()))
  for (const [index, { name }] of journal.entries()) {
    expect(name.startsWith(String(index + 1).padStart(4, '0')), name).toBe(true)
  }
})
