import { asc, eq } from 'drizzle-orm'
import type { Doubt } from '../domain/doubt.ts'
import type { UsedSubject } from '../domain/result-subject.ts'
import type { Store } from './open.ts'
import { doubtAnswer } from './schema/doubt-answer.ts'

type Answered = Pick<Doubt, 'answer' | 'reason' | 'byName' | 'at'>

const unanswered: Answered = { answer: null, reason: '', byName: '', at: '' }

/** What was said last about each record that a calibration put in doubt. */
export function newestDoubtAnswers(
  { db }: Store,
  calibrationId: number,
): (subject: UsedSubject) => Answered {
  const rows = db
    .select()
    .from(doubtAnswer)
    .where(eq(doubtAnswer.calibrationId, calibrationId))
    .orderBy(asc(doubtAnswer.id))
    .all()
  const newest = new Map<string, Answered>()
  for (const { answer, reason, byName, at, ...subject } of rows) {
    newest.set(keyOf(subject), { answer, reason, byName, at })
  }
  return (subject) => newest.get(keyOf(subject)) ?? unanswered
}

function keyOf({ subjectKind, subjectId }: UsedSubject): string {
  return `${subjectKind} ${subjectId}`
}
