import { copyFileSync, existsSync, mkdirSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { adminWords } from '../../views/words/en/admin.ts'
import { projectRoot } from '../project-root.ts'
import { operatorConfig } from './operator.ts'
import { Refused } from './refused.ts'

/** Loads the invented workshop, drawn when the app was built, into an empty data folder. */
export function demo(): string {
  const { dataFolder, storeFile } = operatorConfig()
  if (existsSync(dataFolder) && readdirSync(dataFolder).length > 0) {
    throw new Refused(adminWords.folderNotEmpty(dataFolder))
  }
  mkdirSync(dataFolder, { recursive: true })
  copyFileSync(join(projectRoot(), '.build/demo.sqlite'), storeFile)
  return adminWords.demoLoaded(dataFolder)
}
