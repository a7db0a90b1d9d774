import { existsSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { adminWords } from '../../views/words/en/admin.ts'
import { storeFaultSentence } from '../../views/words/en/store-faults.ts'
import { projectRoot } from '../project-root.ts'
import { backup, faultsOfFile } from '../store/backup.ts'
import { openAsItStands } from '../store/open-as-it-stands.ts'
import { restore } from '../store/restore.ts'
import { operator, operatorConfig, refuseFilledFolder } from './operator.ts'
import { Refused } from './refused.ts'

/** Copies the whole database into a new file, also while the server runs. */
export function backupTo(file: string): string {
  const target = resolve(file)
  if (existsSync(target)) throw new Refused(adminWords.fileExists(target))
  const { storeFile } = operatorConfig()
  if (!existsSync(storeFile)) throw new Refused(adminWords.noStore(storeFile))
  // Opened as it stands: a backup taken before an upgrade must not be the upgrade.
  const store = openAsItStands(storeFile)
  try {
    backup(store, target)
  } finally {
    store.close()
  }
  return adminWords.backedUp(target)
}

/** Brings a backup into an empty data folder. */
export function restoreFrom(file: string): string {
  const source = resolve(file)
  if (!existsSync(source)) throw new Refused(adminWords.noStore(source))
  const { dataFolder, storeFile } = operatorConfig()
  refuseFilledFolder(dataFolder)
  const migrationsFolder = join(projectRoot(), 'migrations')
  restore(source, { storeFile, migrationsFolder, at: operator().at })
  return adminWords.restored(dataFolder)
}

/**
 * Checks everything; reads only. What is wrong goes to standard output, a line each.
 * @throws Refused that names the database, how many things are wrong, and the first of them
 */
export function verify(): string {
  const { storeFile } = operatorConfig()
  if (!existsSync(storeFile)) throw new Refused(adminWords.noStore(storeFile))
  const faults = faultsOf(storeFile)
  const [first] = faults
  if (first === undefined) return adminWords.sound
  process.stdout.write(faults.map((one) => `${one}\n`).join(''))
  throw new Refused(adminWords.unsound(storeFile, faults.length, first))
}

/** A file that is no database any more can't be asked: that is what is wrong with it. */
function faultsOf(storeFile: string): readonly string[] {
  try {
    return faultsOfFile(storeFile).map(storeFaultSentence)
  } catch (error) {
    return [adminWords.unreadable(error instanceof Error ? error.message : String(error))]
  }
}
