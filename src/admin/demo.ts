import { mkdirSync } from 'node:fs'
import { adminWords } from '../../views/words/en/admin.ts'
import { loadDemo } from '../load-demo.ts'
import { operatorConfig, refuseFilledFolder } from './operator.ts'

/** Loads the invented workshop, drawn when the app was built, into an empty data folder. */
export function demo(): string {
  const { dataFolder, storeFile } = operatorConfig()
  refuseFilledFolder(dataFolder)
  mkdirSync(dataFolder, { recursive: true, mode: 0o700 })
  loadDemo(storeFile)
  return adminWords.demoLoaded(dataFolder)
}
