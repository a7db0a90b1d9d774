import { assemblyStanding } from '../../../src/domain/assembly-standing.ts'
import type { CertifiedAssembly } from '../../../src/domain/certified-strip.ts'
import { assemblyWords } from './assembly.ts'

const verdicts = {
  amiss: 'fail',
  'as-asked': 'pass',
  'not-all-compared': 'open',
  'nothing-asked': 'open',
} as const

/** Sign and word of an assembly against its design; page and document show the same. */
export function assemblySign(one: CertifiedAssembly): {
  readonly verdict: 'pass' | 'fail' | 'open'
  readonly word: string
} {
  const standing = assemblyStanding(one)
  return { verdict: verdicts[standing], word: assemblyWords.standing[standing] }
}
