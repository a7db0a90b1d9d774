import { closeSync, existsSync, fsyncSync, openSync, renameSync, rmSync } from 'node:fs'
import { dirname } from 'node:path'
import Database from 'better-sqlite3'
import { OperatorError } from '../domain/operator-error.ts'
import type { StoreFault } from '../domain/store-fault.ts'
import { type Store, storeOf } from './open.ts'
import { verifyStore } from './verify-store.ts'

/**
 * Writes a whole copy of the store into one new file, while others go on writing: the copy is what
 * stood at one instant. It is verified before it gets its name.
 * @throws OperatorError where the file exists, or the copy is found wrong
 */
export function backup(store: Store, file: string): void {
  if (existsSync(file)) throw new OperatorError({ kind: 'backup-file-exists', file })
  const part = `${file}.part`
  rmSync(part, { force: true })
  try {
    store.raw.prepare('VACUUM INTO ?').run(part)
    syncToDisk(part)
    const faults = faultsOfFile(part)
    if (faults.length > 0) throw new OperatorError({ kind: 'backup-unsound', file, faults })
    renameSync(part, file)
    syncToDisk(dirname(file))
  } finally {
    rmSync(part, { force: true })
  }
}

/** What is wrong with a database file, opened for reading only. */
export function faultsOfFile(file: string): StoreFault[] {
  const raw = new Database(file, { readonly: true, fileMustExist: true })
  try {
    return verifyStore(storeOf(raw))
  } finally {
    raw.close()
  }
}

/** SQLite does not sync what VACUUM INTO writes; a renamed file needs its folder synced too. */
export function syncToDisk(path: string): void {
  const handle = openSync(path, 'r')
  try {
    fsyncSync(handle)
  } finally {
    closeSync(handle)
  }
}
