import { execFile } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { addCustomer } from '../../src/store/add-customer.ts'
import { listCustomers } from '../../src/store/list-customers.ts'
import { openStore } from '../../src/store/open.ts'
import { readFrozen } from '../migrations/read-hashes.ts'
import { castAt, operator } from '../support/cast.ts'
import { migrationsFolder, openTestStore } from '../support/open-test-store.ts'

let folder = ''
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'open-'))
})
afterEach(() => rmSync(folder, { recursive: true }))

const fresh = { name: 'C', address: '', contact: '', isInvented: false }
const open = () => openStore(join(folder, 'shop.sqlite'), migrationsFolder, castAt)

describe('an opened store', () => {
  test.each([
    ['journal_mode', 'wal'],
    ['synchronous', 2],
    ['foreign_keys', 1],
    ['busy_timeout', 5000],
    ['trusted_schema', 0],
  ])('has %s = %s, the first time and every later one', (pragma, value) => {
    for (let time = 0; time < 2; time += 1) {
      const store = open()
      expect(store.raw.pragma(pragma, { simple: true })).toBe(value)
      store.close()
    }
  })

  test('leaves one file behind when it is closed, with everything in it', () => {
    const store = open()
    addCustomer(store, fresh, operator)
    store.close()
    expect(existsSync(join(folder, 'shop.sqlite-wal'))).toBe(false)
    const again = open()
    expect(listCustomers(again)).toHaveLength(1)
    again.close()
  })

  test('is migrated by three processes at once, once', async () => {
    const script = fileURLToPath(new URL('../support/open-once.ts', import.meta.url))
    const file = join(folder, 'shop.sqlite')
    const run = () => promisify(execFile)(process.execPath, [script, file])
    const ran = await Promise.all([run(), run(), run()])
    const applied = ran.map((one) => Number(one.stdout))
    expect(applied.toSorted((a, b) => a - b)).toEqual([0, 0, Object.keys(readFrozen()).length])
  }, 20_000)
})

describe('a transaction', () => {
  test('inside another one undoes its own part alone', () => {
    const store = openTestStore()
    store.transact(() => {
      addCustomer(store, fresh, operator)
      expect(() =>
        store.transact(() => {
          addCustomer(store, { ...fresh, name: 'D' }, operator)
          throw new Error('inner')
        }),
      ).toThrow('inner')
    })
    expect(listCustomers(store).map((one) => one.name)).toContain('C')
    expect(listCustomers(store).map((one) => one.name)).not.toContain('D')
  })

  test('that waits for something is refused and undone', () => {
    const store = openTestStore()
    const before = listCustomers(store).length
    expect(() =>
      store.transact(async () => {
        addCustomer(store, fresh, operator)
      }),
    ).toThrow('Transaction function cannot return a promise')
    expect(listCustomers(store)).toHaveLength(before)
  })
})
