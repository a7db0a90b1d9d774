import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { concessionRefusals } from '../../../src/domain/concession-refusal.ts'
import { errorSentence, errorSentences } from '../../../views/words/en/errors.ts'

const src = fileURLToPath(new URL('../../../src', import.meta.url))

const sources = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.tsx?$/.test(file))
  .map((file) => ({ file, text: readFileSync(`${src}/${file}`, 'utf8') }))

/** Every construction of an AppError in the sources: where, and the text of its reason. */
function refusals(): readonly { readonly file: string; readonly reason: string }[] {
  return sources.flatMap(({ file, text }) => {
    const found = text.matchAll(/new AppError\(\s*[^,]+,\s*([^,)]+)/g)
    return [...found].map((match) => ({ file, reason: (match[1] ?? '').trim() }))
  })
}

/** Reasons that are ids of faults found elsewhere: the ids that a release can be refused with. */
function releaseFaultIds(): readonly string[] {
  const text = readFileSync(`${src}/domain/release-faults.ts`, 'utf8')
  return [...text.matchAll(/readonly id: '([a-z-]+)'/g)].map((match) => match[1] ?? '')
}

/** Reasons handed to `idOf`, which throws them for an id that can't be one. */
function idReasons(): readonly string[] {
  const found = sources.flatMap(({ text }) => [...text.matchAll(/idOf\(.*, '([a-z-]+)'\)/g)])
  return found.map((match) => match[1] ?? '')
}

const literal = /^'([a-z-]+)'$/
const all = refusals()
const literals = new Set(all.flatMap(({ reason }) => literal.exec(reason)?.[1] ?? []))

describe('the words of refusals', () => {
  it('finds the refusals that it checks', () => {
    expect(literals.size).toBeGreaterThan(30)
    expect(releaseFaultIds().length).toBeGreaterThanOrEqual(7)
    // What is counted by the word alone must be what the pattern understood.
    const whole = sources.map(({ text }) => text).join('\n')
    expect(all).toHaveLength(whole.split('new AppError(').length - 1)
    const calls = [...whole.matchAll(/(?<!function )\bidOf\(/g)]
    expect(idReasons()).toHaveLength(calls.length)
    expect(idReasons().length).toBeGreaterThan(3)
  })

  it('knows every reason, in place, by an id, or as the id of a release fault', () => {
    const known = (file: string, reason: string) =>
      literal.test(reason) ||
      /^(fault|decided)\.id$/.test(reason) ||
      (file === 'web/id-of.ts' && reason === 'reason') ||
      (file === 'store/add-concession.ts' && reason === 'refusal')
    expect(all.filter(({ file, reason }) => !known(file, reason))).toEqual([])
  })

  it('has a sentence for every reason', () => {
    const reasons = [...literals, ...releaseFaultIds(), ...idReasons(), ...concessionRefusals]
    expect(reasons.filter((reason) => errorSentences[reason] === undefined)).toEqual([])
    for (const reason of reasons) {
      expect(errorSentence(reason, {}), reason).toMatch(/^[A-Z].*\.$/s)
    }
  })

  it('refuses to make up words for a reason that has none', () => {
    expect(() => errorSentence('no-such-reason', {})).toThrow('no-such-reason')
  })
})
