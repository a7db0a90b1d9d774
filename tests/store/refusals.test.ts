import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { errorSentence, errorSentences } from '../../views/words/en/errors.ts'

const folder = fileURLToPath(new URL('../../src/store', import.meta.url))
const sources = readdirSync(folder)
  .filter((name) => name.endsWith('.ts'))
  .map((name) => readFileSync(`${folder}/${name}`, 'utf8'))

/** The ids of release faults are thrown as reasons by `release`. */
const releaseReasons = [
  'not-inspector',
  'lapped-or-tested',
  'not-handed-over',
  'already-decided',
  'something-missing',
  'result-fails',
  'instrument-not-acknowledged',
]

test('every reason for which the store refuses has its sentence', () => {
  const pattern = /new AppError\(\s*'[a-z-]+',\s*'([a-z-]+)'/g
  const thrown = sources.flatMap((source) =>
    [...source.matchAll(pattern)].map((one) => one[1] ?? ''),
  )
  expect(thrown.length).toBeGreaterThan(30)
  const reasons = [...new Set([...thrown, ...releaseReasons])]
  expect(reasons.filter((reason) => !(reason in errorSentences))).toEqual([])
  const details = { by: 'Ian Ives', numbers: 'G-01' }
  expect(errorSentence('already-decided', details)).toContain('by Ian Ives')
  expect(errorSentence('instrument-not-acknowledged', details)).toContain('G-01')
})
