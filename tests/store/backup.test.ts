import { type ChildProcess, spawn } from 'node:child_process'
import { once as event } from 'node:events'
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import Database from 'better-sqlite3'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { backup } from '../../src/store/backup.ts'
import { listCustomers } from '../../src/store/list-customers.ts'
import { openStore, type Store } from '../../src/store/open.ts'
import { restore } from '../../src/store/restore.ts'
import { verifyStore } from '../../src/store/verify-store.ts'
import { castAt } from '../support/cast.ts'
import { dumpStore } from '../support/dump-store.ts'
import { fillShop } from '../support/fill-shop.ts'
import { migrationsFolder } from '../support/open-test-store.ts'
import { operatorFault } from '../support/operator-fault.ts'

let folder = ''
let store: Store
const at = (name: string) => join(folder, name)
const open = (file: string) => openStore(file, migrationsFolder, castAt)
const into = (name: string) => ({
  storeFile: join(at(name), 'ringproof.sqlite'),
  migrationsFolder,
  at: castAt,
})

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'backup-'))
  fillShop().store.raw.prepare('VACUUM INTO ?').run(at('shop.sqlite'))
  store = open(at('shop.sqlite'))
})
afterEach(() => {
  store.close()
  rmSync(folder, { recursive: true })
})

describe('a backup', () => {
  test('is one file with the whole store in it', () => {
    backup(store, at('copy.sqlite'))
    expect(readdirSync(folder).filter((name) => name.startsWith('copy'))).toEqual(['copy.sqlite'])
    const copy = open(at('copy.sqlite'))
    expect(dumpStore(copy)).toBe(dumpStore(store))
    expect(verifyStore(copy)).toEqual([])
    expect(() => copy.raw.exec('DELETE FROM audit')).toThrow('append-only')
    copy.close()
  })

  test('never writes over a file, and leaves none where it fails', () => {
    writeFileSync(at('there'), 'x')
    expect(operatorFault(() => backup(store, at('there')))).toEqual({
      kind: 'backup-file-exists',
      file: at('there'),
    })
    expect(() => backup(store, at('nowhere/copy.sqlite'))).toThrow()
    store.raw.exec('DROP TRIGGER stored_file_no_update')
    store.raw.exec("UPDATE stored_file SET bytes = x'00' WHERE media_type = 'application/pdf'")
    expect(operatorFault(() => backup(store, at('copy.sqlite')))).toEqual({
      kind: 'backup-unsound',
      file: at('copy.sqlite'),
      faults: [{ kind: 'file-changed', sha256: expect.any(String) }],
    })
    expect(readdirSync(folder).filter((name) => name.startsWith('copy'))).toEqual([])
  })

  test('is what stood at one instant while another process goes on writing', async () => {
    const writer = await startWriter(at('shop.sqlite'))
    try {
      for (const name of ['one', 'two', 'three']) {
        backup(store, at(name))
        const copy = new Database(at(name), { readonly: true })
        const counts = copy
          .prepare(
            `SELECT (SELECT count(*) FROM customer) AS customers,
              (SELECT count(*) FROM audit WHERE act = 'add-customer') AS lines`,
          )
          .get() as { customers: number; lines: number }
        copy.close()
        expect(counts.lines).toBe(counts.customers)
        await new Promise((done) => setTimeout(done, 30))
      }
    } finally {
      writer.kill()
      await event(writer, 'exit')
    }
    expect(listCustomers(store).length, 'the writer wrote').toBeGreaterThan(5)
    expect(verifyStore(store)).toEqual([])
  }, 20_000)
})

describe('a restore', () => {
  test('puts the backup into an empty or new data folder', () => {
    backup(store, at('copy.sqlite'))
    restore(at('copy.sqlite'), into('new/data'))
    expect(readdirSync(at('new/data'))).toEqual(['ringproof.sqlite'])
    const restored = open(into('new/data').storeFile)
    expect(dumpStore(restored)).toBe(dumpStore(store))
    restored.close()
  })

  test('refuses a folder that holds anything', () => {
    mkdirSync(at('data'))
    writeFileSync(at('data/note.txt'), 'mine')
    backup(store, at('copy.sqlite'))
    expect(operatorFault(() => restore(at('copy.sqlite'), into('data')))).toEqual({
      kind: 'restore-folder-filled',
      folder: at('data'),
    })
    expect(readdirSync(at('data'))).toEqual(['note.txt'])
  })

  test('refuses what is no backup or a damaged one, and leaves the folder empty', () => {
    writeFileSync(
      at('text'),
      'no database at all, but long enough to be looked at as one'.repeat(9),
    )
    expect(() => restore(at('text'), into('data'))).toThrow('file is not a database')
    expect(() => restore(at('missing'), into('data'))).toThrow('ENOENT')
    backup(store, at('copy.sqlite'))
    copyFileSync(at('copy.sqlite'), at('forged.sqlite'))
    const raw = new Database(at('forged.sqlite'))
    raw.exec("DROP TRIGGER audit_no_update; UPDATE audit SET actor = 'other' WHERE id = 3")
    raw.close()
    expect(operatorFault(() => restore(at('forged.sqlite'), into('data')))).toMatchObject({
      kind: 'restore-unsound',
      file: at('forged.sqlite'),
      faults: [{ kind: 'audit-line-changed', lineId: 3 }],
    })
    expect(readdirSync(at('data'))).toEqual([])
    expect(existsSync(into('data').storeFile)).toBe(false)
  })
})

async function startWriter(file: string): Promise<ChildProcess> {
  const script = fileURLToPath(new URL('../support/write-on.ts', import.meta.url))
  const child = spawn(process.execPath, [script, file], { stdio: ['ignore', 'pipe', 'inherit'] })
  await event(child.stdout!, 'data')
  return child
}
