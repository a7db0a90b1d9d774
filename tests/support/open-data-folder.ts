import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { openStore, type Store } from '../../src/store/open.ts'
import { castAt } from './cast.ts'
import { migrationsFolder } from './open-test-store.ts'

/** Opens, or makes, the database of a data folder as the server would; close it before it does. */
export function openDataFolder(folder: string): Store {
  mkdirSync(folder, { recursive: true })
  return openStore(join(folder, 'ringproof.sqlite'), migrationsFolder, castAt)
}
