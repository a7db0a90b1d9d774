import { copyFileSync, linkSync, renameSync, rmSync } from 'node:fs'
import { dirname } from 'node:path'
import { syncToDisk } from './backup.ts'

/**
 * Puts a ready database file in its place, whole or not at all: it is copied beside, written to
 * the disk, and only then named. A database that stands there already stays as it is, also one
 * that another process placed at the same moment.
 * @param part a name beside `storeFile` that nobody else uses
 * @returns whether it was placed
 */
export function placeStore(from: string, storeFile: string, part: string): boolean {
  try {
    copyFileSync(from, part)
    syncToDisk(part)
    const isPlaced = name(part, storeFile)
    syncToDisk(dirname(storeFile))
    return isPlaced
  } finally {
    rmSync(part, { force: true })
  }
}

/** A link never overwrites; only a disk without links has to be trusted with a rename. */
function name(part: string, storeFile: string): boolean {
  try {
    linkSync(part, storeFile)
    return true
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? ''
    if (code === 'EEXIST') return false
    if (!['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS'].includes(code)) throw error
    renameSync(part, storeFile)
    return true
  }
}
