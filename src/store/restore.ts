import { copyFileSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs'
import { dirname } from 'node:path'
import { OperatorError } from '../domain/operator-error.ts'
import { syncToDisk } from './backup.ts'
import { openStore } from './open.ts'
import { verifyStore } from './verify-store.ts'

/**
 * Puts a backup into an empty data folder: copies it beside its place, brings it up to this
 * version, verifies it and only then gives it its name. A backup found wrong leaves the folder
 * empty.
 * @param into `storeFile`: the place of the database in the data folder
 * @throws OperatorError where the folder is not empty or the backup is found wrong, and Error where
 *   it can't be read
 */
export function restore(
  file: string,
  into: { readonly storeFile: string; readonly migrationsFolder: string; readonly at: string },
): void {
  const folder = dirname(into.storeFile)
  mkdirSync(folder, { recursive: true })
  if (readdirSync(folder).length > 0) {
    throw new OperatorError({ kind: 'restore-folder-filled', folder })
  }
  const part = `${into.storeFile}.part`
  try {
    copyFileSync(file, part)
    const store = openStore(part, into.migrationsFolder, into.at)
    const faults = verifyStore(store)
    store.close()
    if (faults.length > 0) throw new OperatorError({ kind: 'restore-unsound', file, faults })
    syncToDisk(part)
    renameSync(part, into.storeFile)
    syncToDisk(folder)
  } finally {
    for (const name of ['', '-wal', '-shm']) rmSync(`${part}${name}`, { force: true })
  }
}
