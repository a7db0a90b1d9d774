import { expect, test } from 'vitest'
import { asSentence } from '../../../views/words/en/as-sentence.ts'
import { certificateDecisionWords } from '../../../views/words/en/certificate-decisions.ts'

test('what somebody typed ends in one stop, whether they typed it or not', () => {
  expect(asSentence('runs on water')).toBe('runs on water.')
  expect(asSentence('Runs on water. ')).toBe('Runs on water.')
  expect(asSentence('Is that all?')).toBe('Is that all?')
})

test('a concession on the certificate has no stop twice', () => {
  const text = certificateDecisionWords.concessions.item({
    what: 'Flatness',
    value: '1.18 µm',
    limit: '0.88 µm',
    reason: 'Runs on water.',
    reference: 'Letter 4711.',
    by: 'Ian Ives',
    at: '2026-11-25',
  })
  expect(text).toContain('Reason: Runs on water. Approval of the customer: Letter 4711. Recorded')
})
