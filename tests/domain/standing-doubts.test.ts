import { expect, test } from 'vitest'
import { combineWholeFaces } from '../../src/domain/combine-whole-faces.ts'
import type { Doubt } from '../../src/domain/doubt.ts'
import type { WholeReading } from '../../src/domain/pair-to-compare.ts'
import { standingDoubts } from '../../src/domain/standing-doubts.ts'
import { buildEvidence } from '../support/build-evidence.ts'
import { madeSurface, madeWholeReading } from './made-whole-reading.ts'

const doubt = (subjectId: number, answer: Doubt['answer'] = null): Doubt => ({
  subjectKind: 'flatness-reading',
  subjectId,
  calibrationId: 1,
  instrumentId: 2,
  instrumentNumber: 'F-01',
  foundOn: '2026-11-25',
  answer,
  reason: '',
  byName: '',
  at: '',
})
const [first, second] = [madeWholeReading(1, madeSurface(2)), madeWholeReading(2, madeSurface(2))]
const { computed, wholeFace } = combineWholeFaces([first, second])
const combined: WholeReading = { ...second, ...computed, id: 3, wholeFace }
const standing = (flatnessReadings: readonly WholeReading[], doubts: readonly Doubt[]) =>
  standingDoubts(buildEvidence({ flatnessReadings, doubts })).map((one) => one.subjectId)

test('a doubt about a part is one about the combination that stands on it', () => {
  expect(standing([first, second, combined], [doubt(1)])).toEqual([1])
  expect(standing([first, second, combined], [doubt(1, 'stands')])).toEqual([])
})

test('a doubt about what was read anew no longer counts', () => {
  expect(standing([first, second], [doubt(1)])).toEqual([])
  expect(standing([first, second], [doubt(2)])).toEqual([2])
})
