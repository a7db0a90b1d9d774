import { expect, test } from 'vitest'
import { parseDecision } from '../../src/domain/parse-decision.ts'

const password = 'anything'

test('takes a release without words', () => {
  const parsed = parseDecision({ outcome: 'release', reason: ' ', password })
  expect(parsed).toEqual({ ok: true, value: { outcome: 'release', reason: '' } })
})

test('takes a refusal with its reason, trimmed', () => {
  const parsed = parseDecision({ outcome: 'refuse', reason: ' seat scratched ', password })
  expect(parsed).toEqual({ ok: true, value: { outcome: 'refuse', reason: 'seat scratched' } })
})

test.each([
  ['no outcome', { outcome: '', reason: '', password }, 'outcome', 'empty'],
  ['an unknown outcome', { outcome: 'maybe', reason: '', password }, 'outcome', 'not-a-choice'],
  ['a refusal without a reason', { outcome: 'refuse', reason: '', password }, 'reason', 'empty'],
  [
    'words beyond 400',
    { outcome: 'release', reason: 'a'.repeat(401), password },
    'reason',
    'too-long',
  ],
  ['no password', { outcome: 'release', reason: '', password: '' }, 'password', 'empty'],
  ['two outcomes', { outcome: ['release', 'refuse'], reason: '', password }, 'outcome', undefined],
])('refuses %s', (_, input, field, kind) => {
  const parsed = parseDecision(input)
  expect(parsed.ok).toBe(false)
  const fault = parsed.ok ? undefined : parsed.faults.find((one) => one.field === field)
  expect(fault).toBeDefined()
  if (kind !== undefined) expect(fault?.kind).toBe(kind)
})

test('never hands the password on', () => {
  const parsed = parseDecision({ outcome: 'release', reason: '', password: 'secret of the quay' })
  expect(JSON.stringify(parsed)).not.toContain('secret')
})
