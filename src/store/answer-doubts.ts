import { and, eq, gt } from 'drizzle-orm'
import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import { doubtWindow } from '../domain/doubt-window.ts'
import type { ParsedDoubtAnswer } from '../domain/parse-doubt-answer.ts'
import type { UsedSubject } from '../domain/result-subject.ts'
import type { TouchedRecord } from '../domain/touched-record.ts'
import type { User } from '../domain/user.ts'
import { addAudit } from './add-audit.ts'
import { listTouched } from './list-touched.ts'
import type { Store } from './open.ts'
import { requireInstrument } from './require-instrument.ts'
import { doubtAnswer } from './schema/doubt-answer.ts'

export type FreshDoubtAnswer = ParsedDoubtAnswer & {
  readonly instrumentId: number
  readonly calibrationId: number
  readonly by: User
}

/**
 * Says of records whether they stand although their instrument was found out of tolerance. A later
 * answer is a record of its own and counts from then on.
 * @throws AppError not-found `no-instrument`, `no-doubt` where that calibration found nothing
 *   beyond; forbidden `not-inspector`, `own-record`; conflict `not-in-doubt`, `answered-meanwhile`
 *   where someone answered about one of them after the newest answer that was seen
 */
export function answerDoubts(store: Store, fresh: FreshDoubtAnswer, actor: Actor): void {
  const { calibrationId, subjects, answer, reason, seenAnswerId, by } = fresh
  store.transact(() => {
    if (by.role !== 'inspector' || !by.isActive) throw new AppError('forbidden', 'not-inspector')
    const touched = touchedBy(store, fresh)
    const unseen = { calibrationId, subjects, after: seenAnswerId }
    if (hasAnswers(store, unseen)) throw new AppError('conflict', 'answered-meanwhile')
    for (const { subjectKind, subjectId } of subjects) {
      const record = find(touched, { subjectKind, subjectId })
      if (record.recordedById === by.id) throw new AppError('forbidden', 'own-record')
      const said = { answer, reason, byId: by.id, byName: by.displayName, at: actor.at }
      const row = { calibrationId, subjectKind, subjectId, ...said }
      const added = store.db.insert(doubtAnswer).values(row).returning().get()
      const subject = record.workOrderNumber
      addAudit(store, actor, { act: 'answer-doubt', subject, detail: added })
    }
  })
}

function hasAnswers(
  { db }: Store,
  of: {
    readonly calibrationId: number
    readonly subjects: readonly UsedSubject[]
    readonly after: number
  },
): boolean {
  const isSince = and(eq(doubtAnswer.calibrationId, of.calibrationId), gt(doubtAnswer.id, of.after))
  const rows = db.select().from(doubtAnswer).where(isSince).all()
  return of.subjects.some(({ subjectKind, subjectId }) =>
    rows.some((row) => row.subjectKind === subjectKind && row.subjectId === subjectId),
  )
}

function touchedBy(store: Store, fresh: FreshDoubtAnswer): readonly TouchedRecord[] {
  const instrument = requireInstrument(store, fresh.instrumentId)
  const found = instrument.calibrations.find((one) => one.id === fresh.calibrationId)
  const window = found === undefined ? null : doubtWindow(instrument.calibrations, found)
  if (found === undefined || window === null) throw new AppError('not-found', 'no-doubt')
  return listTouched(store, { instrument, found, window })
}

function find(touched: readonly TouchedRecord[], subject: UsedSubject): TouchedRecord {
  const found = touched.find(
    (one) => one.subjectKind === subject.subjectKind && one.subjectId === subject.subjectId,
  )
  if (found === undefined) throw new AppError('conflict', 'not-in-doubt')
  return found
}
