import type { CertifiedAssembly } from '../../../src/domain/certified-strip.ts'
import { assemblyWords } from './assembly.ts'

/** Sign and word of an assembly against its design; page and document show the same. */
export function assemblySign(one: CertifiedAssembly): {
  readonly verdict: 'pass' | 'fail' | 'open'
  readonly word: string
} {
  const w = assemblyWords
  if (one.isAmiss) return { verdict: 'fail', word: w.amiss }
  const verdicts = [one.workingLength, one.load, ...one.setScrews.map(({ verdict }) => verdict)]
  return verdicts.includes('within')
    ? { verdict: 'pass', word: w.asAsked }
    : { verdict: 'open', word: w.notAsked }
}
