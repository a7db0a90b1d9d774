import type { Actor } from '../domain/actor.ts'
import type { SurveyReading } from '../domain/dial-survey.ts'
import type { NewSurveyReading } from '../domain/parse-survey-readings.ts'
import { addAudit } from './add-audit.ts'
import type { Store } from './open.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireOpenSurvey } from './require-open-survey.ts'
import { requireUserId } from './require-user-id.ts'
import { dialSurveyReading } from './schema/dial-survey-reading.ts'

/**
 * Records one reading of an open survey. One of the same spot before it stays and counts no more.
 * @throws AppError conflict `not-open`, `survey-ended`; not-found `no-survey`
 */
export function addSurveyReading(
  store: Store,
  of: { readonly workOrderId: number; readonly surveyId: number },
  fresh: NewSurveyReading,
  actor: Actor,
): SurveyReading {
  const recordedById = requireUserId(actor, 'addSurveyReading')
  return store.transact(() => {
    const order = requireOpenOrder(store, of.workOrderId)
    requireOpenSurvey(store, order.id, of.surveyId)
    const recorded = { recordedById, recordedByName: actor.name, recordedAt: actor.at }
    const row = store.db
      .insert(dialSurveyReading)
      .values({ ...fresh, dialSurveyId: of.surveyId, ...recorded })
      .returning()
      .get()
    addAudit(store, actor, { act: 'add-survey-reading', subject: order.number, detail: row })
    const { dialSurveyId: _, ...added } = row
    return added
  })
}
