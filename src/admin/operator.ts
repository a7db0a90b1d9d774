import { existsSync, mkdirSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { adminWords } from '../../views/words/en/admin.ts'
import { type Config, readConfig } from '../config.ts'
import type { Actor } from '../domain/actor.ts'
import { projectRoot } from '../project-root.ts'
import { openStore, type Store } from '../store/open.ts'
import { Refused } from './refused.ts'

/** The operator at the machine: commands are entry points and have the clock of their own. */
export function operator(): Actor {
  return { userId: null, name: 'operator', at: new Date().toISOString() }
}

export function operatorConfig(): Config {
  return readConfig(process.env)
}

/** What stands in a data folder is never overwritten. @throws Refused */
export function refuseFilledFolder(dataFolder: string): void {
  if (existsSync(dataFolder) && readdirSync(dataFolder).length > 0) {
    throw new Refused(adminWords.folderNotEmpty(dataFolder))
  }
}

/** Opens the database of the data folder; `isNew` makes it where there is none. */
export function withStore<T>(options: { isNew: boolean }, work: (store: Store) => T): T {
  const { storeFile, dataFolder } = operatorConfig()
  if (!options.isNew && !existsSync(storeFile)) throw new Refused(adminWords.noStore(storeFile))
  mkdirSync(dataFolder, { recursive: true, mode: 0o700 })
  const store = openStore(storeFile, join(projectRoot(), 'migrations'), operator().at)
  try {
    return work(store)
  } finally {
    store.close()
  }
}
