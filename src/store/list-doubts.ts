import { asc, eq, or } from 'drizzle-orm'
import type { Doubt } from '../domain/doubt.ts'
import { doubtWindow } from '../domain/doubt-window.ts'
import { hasUsed } from './has-used.ts'
import { newestDoubtAnswers } from './newest-doubt-answers.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { requireInstrument } from './require-instrument.ts'
import { calibration } from './schema/calibration.ts'
import { usedRecords } from './used-records.ts'

/** Few calibrations find or leave an instrument out of tolerance: most orders used none of them. */
const foundBeyond = prepared((store) =>
  store.db
    .select()
    .from(calibration)
    .where(or(eq(calibration.asFound, 'beyond'), eq(calibration.asLeft, 'beyond')))
    .orderBy(asc(calibration.id))
    .prepare(),
)

/** Of every record of an order that an instrument found out of tolerance was used for. */
export function listDoubts(store: Store, workOrderId: number): Doubt[] {
  return foundBeyond(store)
    .all()
    .filter(({ instrumentId }) => hasUsed(store, { workOrderId, instrumentId }))
    .flatMap((found) => {
      const { calibrations, number } = requireInstrument(store, found.instrumentId)
      const window = doubtWindow(calibrations, found)
      if (window === null) return []
      const { id: calibrationId, instrumentId, calibratedOn: foundOn } = found
      const used = usedRecords(store, { instrumentId, window, workOrderId })
      if (used.length === 0) return []
      const answerOf = newestDoubtAnswers(store, calibrationId)
      return used.map(({ subjectKind, subjectId }): Doubt => {
        const about = { calibrationId, instrumentId, instrumentNumber: number, foundOn }
        const subject = { subjectKind, subjectId }
        return { ...subject, ...about, ...answerOf(subject) }
      })
    })
}
