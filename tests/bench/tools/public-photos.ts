import { readFileSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { projectRoot } from '../../../src/project-root.ts'
import type { PhotoCase } from './photo-case.ts'

/** The 35 pictures of the public suite. */
export function publicPhotos(): PhotoCase[] {
  const folder = join(projectRoot(), 'fixtures/files/bands/suite')
  const truth = JSON.parse(readFileSync(join(folder, 'truth.json'), 'utf8')) as Omit<
    PhotoCase,
    'jpeg'
  >[]
  return truth.map((one) => ({ ...one, jpeg: () => readFile(join(folder, `${one.id}.jpg`)) }))
}
