import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { serverWords } from '../views/words/en/server.ts'
import { storeName } from './config.ts'
import { projectRoot } from './project-root.ts'
import { placeStore } from './store/place-store.ts'

/** Whether a file of the data folder is an invented workshop on its way in. */
export function isPart(name: string): boolean {
  return name.startsWith(`${storeName}.part-`)
}

/**
 * Puts the invented workshop into an empty data folder. It is drawn once, when the app is built.
 * @throws Error where it was not built
 */
export function loadDemo(storeFile: string): void {
  const drawn = join(projectRoot(), '.build/demo.sqlite')
  if (!existsSync(drawn)) throw new Error(serverWords.demoNotBuilt)
  placeStore(drawn, storeFile, `${storeFile}.part-${process.pid}`)
}
