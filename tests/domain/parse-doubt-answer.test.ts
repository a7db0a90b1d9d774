import { expect, test } from 'vitest'
import { parseDoubtAnswer, recordsAtOnceMax } from '../../src/domain/parse-doubt-answer.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const good = {
  calibration: '4',
  records: ['flatness-reading 12', 'static-test 3', 'flatness-reading 12'],
  answer: 'stands',
  reason: 'read at 10 kPa, where it was right',
}

test('reads several records, each once, with one answer', () => {
  expect(accepted(parseDoubtAnswer(good))).toEqual({
    subjects: [
      { subjectKind: 'flatness-reading', subjectId: 12 },
      { subjectKind: 'static-test', subjectId: 3 },
    ],
    answer: 'stands',
    reason: good.reason,
    seenAnswerId: 0,
  })
})

test('reads which answer was the newest when the page was drawn', () => {
  expect(accepted(parseDoubtAnswer({ ...good, seenAnswerId: '12' })).seenAnswerId).toBe(12)
  for (const odd of ['-1', 'x', '1.5']) {
    expect(faultsOf(parseDoubtAnswer({ ...good, seenAnswerId: odd })), odd).toHaveLength(1)
  }
})

test('reads a single ticked box, which comes as a text', () => {
  const one = { ...good, records: 'measured-value 7' }
  expect(accepted(parseDoubtAnswer(one)).subjects).toEqual([
    { subjectKind: 'measured-value', subjectId: 7 },
  ])
})

test('refuses an answer about nothing, or about what is no record', () => {
  const records = (value: unknown) => faultsOf(parseDoubtAnswer({ ...good, records: value }))
  for (const none of ['', undefined, []]) expect(records(none)).toEqual(['records empty'])
  for (const odd of ['hand-over 1', 'static-test', 'static-test 0', 'static-test 1 2', '1']) {
    expect(records(odd), odd).toEqual(['records not-known'])
  }
  expect(records([{ kind: 'static-test' }])).toEqual(['records not-known'])
  const many = Array.from({ length: recordsAtOnceMax + 1 }, (_, at) => `static-test ${at + 1}`)
  expect(records(many)).toEqual(['records above'])
})

test('asks for one of the answers and a reason that says something', () => {
  const bare = { calibration: '4', records: 'static-test 1' }
  expect(faultsOf(parseDoubtAnswer(bare))).toEqual(['answer empty', 'reason empty'])
  const short = { ...good, answer: 'fine', reason: 'it is ok' }
  expect(faultsOf(parseDoubtAnswer(short))).toEqual(['answer not-a-choice', 'reason too-short'])
  expect(faultsOf(parseDoubtAnswer({ ...good, by: 'me' }))).toEqual(['by unknown-field'])
})
