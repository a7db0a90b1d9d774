import { type DoubtAnswer, doubtAnswers } from './doubt.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { idBounds } from './parse-instrument-id.ts'
import { exceptionReasonLength } from './parse-use-exception.ts'
import type { Parsed } from './parsed.ts'
import { type UsedSubject, usedKinds } from './result-subject.ts'

export const doubtAnswerFields = [
  'calibration',
  'records',
  'answer',
  'reason',
  'seenAnswerId',
] as const

/** More than a workshop measures between two calibrations; a page holds as many boxes. */
export const recordsAtOnceMax = 2000

export type ParsedDoubtAnswer = {
  readonly subjects: readonly UsedSubject[]
  readonly answer: DoubtAnswer
  readonly reason: string
  /** The newest answer that stood in the page: what was said since is not gone over unseen. */
  readonly seenAnswerId: number
}

/**
 * Reads one answer about several records, each named as `flatness-reading 12`; which calibration
 * it is about stands in the page that was answered.
 */
export function parseDoubtAnswer(input: Input): Parsed<ParsedDoubtAnswer> {
  const fields = openFields(input)
  fields.only(...doubtAnswerFields)
  const subjects = readSubjects(fields, input.records)
  const answer = fields.choice('answer', doubtAnswers)
  const { min, max } = exceptionReasonLength
  const reason = fields.text('reason', max)
  if (reason !== '' && reason.length < min) fields.fault('reason', 'too-short', { min })
  const seenAnswerId = fields.optionalWhole('seenAnswerId', { ...idBounds, min: 0 }) ?? 0
  return fields.finish({ subjects, answer, reason, seenAnswerId })
}

/** One ticked box comes as a text, several as a list; a box twice is one record. */
function readSubjects(fields: Fields, records: unknown): readonly UsedSubject[] {
  const given: readonly unknown[] = Array.isArray(records) ? records : [records ?? '']
  const texts = new Set(given.filter((one) => one !== ''))
  if (texts.size === 0) fields.fault('records', 'empty')
  if (texts.size > recordsAtOnceMax) {
    fields.fault('records', 'above', { min: 1, max: recordsAtOnceMax })
    return []
  }
  const subjects = [...texts].map(readSubject)
  const known = subjects.filter((one) => one !== undefined)
  if (known.length < subjects.length) fields.fault('records', 'not-known')
  return known
}

function readSubject(text: unknown): UsedSubject | undefined {
  if (typeof text !== 'string') return undefined
  const [kind, id = '', ...rest] = text.split(' ')
  const subjectKind = usedKinds.find((one) => one === kind)
  if (subjectKind === undefined || rest.length > 0 || !/^[1-9]\d{0,14}$/.test(id)) return undefined
  return { subjectKind, subjectId: Number(id) }
}
