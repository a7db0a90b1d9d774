import type { Actor } from '../domain/actor.ts'
import type { CompleteSurvey } from '../domain/complete-survey.ts'
import type { MeasuredValue } from '../domain/measured-value.ts'
import { addAudit } from './add-audit.ts'
import { addMeasuredValue } from './add-measured-value.ts'
import type { Store } from './open.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireOpenSurvey } from './require-open-survey.ts'
import { requireUserId } from './require-user-id.ts'
import { dialSurveyEnd } from './schema/dial-survey-end.ts'

type Ended = { readonly workOrderId: number; readonly surveyId: number }

/**
 * Records a survey that was read to its end: the measured value and what its readings say, in one
 * transaction.
 * @throws AppError not-found `no-survey`; conflict `survey-ended`, `not-open`, and as
 *   addMeasuredValue
 */
export function recordDialSurvey(
  store: Store,
  ended: Ended,
  complete: CompleteSurvey,
  actor: Actor,
): MeasuredValue {
  return store.transact(() => {
    requireOpenSurvey(store, ended.workOrderId, ended.surveyId)
    const measured = addMeasuredValue(store, complete.measured, actor)
    addEnd(store, ended, actor, {
      outcome: 'recorded',
      measuredValueId: measured.id,
      result: complete.result,
      reason: '',
    })
    return measured
  })
}

/**
 * Gives a survey up; its readings stay.
 * @throws AppError not-found `no-survey`; conflict `survey-ended`, `not-open`
 */
export function giveUpDialSurvey(
  store: Store,
  ended: Ended & { readonly reason: string },
  actor: Actor,
): void {
  store.transact(() => {
    requireOpenSurvey(store, ended.workOrderId, ended.surveyId)
    const { reason } = ended
    addEnd(store, ended, actor, {
      outcome: 'given-up',
      measuredValueId: null,
      result: null,
      reason,
    })
  })
}

type End = Pick<
  typeof dialSurveyEnd.$inferInsert,
  'outcome' | 'measuredValueId' | 'result' | 'reason'
>

function addEnd(store: Store, { workOrderId, surveyId }: Ended, actor: Actor, end: End): void {
  const byId = requireUserId(actor, 'endDialSurvey')
  const order = requireOpenOrder(store, workOrderId)
  const keys = { dialSurveyId: surveyId, workOrderId }
  const row = store.db
    .insert(dialSurveyEnd)
    .values({ ...keys, ...end, byId, byName: actor.name, at: actor.at })
    .returning()
    .get()
  const detail = { ...row, id: surveyId }
  addAudit(store, actor, { act: 'end-survey', subject: order.number, detail })
}
