import { existsSync, readdirSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { adminWords } from '../../views/words/en/admin.ts'
import { projectRoot } from '../project-root.ts'
import { backup, faultsOfFile } from '../store/backup.ts'
import { restore } from '../store/restore.ts'
import { operator, operatorConfig, withStore } from './operator.ts'
import { Refused } from './refused.ts'
import { UsageError } from './usage-error.ts'

/** Copies the whole database into a new file, also while the server runs. */
export function backupTo(file: string | undefined): string {
  if (!file) throw new UsageError(adminWords.missing('FILE'))
  const target = resolve(file)
  if (existsSync(target)) throw new Refused(adminWords.fileExists(target))
  withStore({ isNew: false }, (store) => backup(store, target))
  return adminWords.backedUp(target)
}

/** Brings a backup into an empty data folder. */
export function restoreFrom(file: string | undefined): string {
  if (!file) throw new UsageError(adminWords.missing('FILE'))
  const source = resolve(file)
  if (!existsSync(source)) throw new Refused(adminWords.noStore(source))
  const { dataFolder, storeFile } = operatorConfig()
  if (existsSync(dataFolder) && readdirSync(dataFolder).length > 0) {
    throw new Refused(adminWords.folderNotEmpty(dataFolder))
  }
  const migrationsFolder = join(projectRoot(), 'migrations')
  restore(source, { storeFile, migrationsFolder, at: operator().at })
  return adminWords.restored(dataFolder)
}

/** Checks everything; reads only. @throws Refused with a line for each thing found wrong */
export function verify(): string {
  const { storeFile } = operatorConfig()
  if (!existsSync(storeFile)) throw new Refused(adminWords.noStore(storeFile))
  const faults = faultsOfFile(storeFile)
  if (faults.length > 0) throw new Refused(faults.join('\n'))
  return adminWords.sound
}
