import type { Actor } from '../domain/actor.ts'
import type { DialSurvey } from '../domain/dial-survey.ts'
import { addAudit } from './add-audit.ts'
import { listMeasuredValues } from './list-measured-values.ts'
import type { Store } from './open.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireReplaceable } from './require-replaceable.ts'
import { requireUserId } from './require-user-id.ts'
import { dialSurvey } from './schema/dial-survey.ts'

export type FreshSurvey = Omit<DialSurvey, 'id' | 'startedById' | 'startedByName' | 'startedAt'>

/**
 * Begins a survey: what is set up stands, readings follow.
 * @throws AppError conflict `not-open`, `not-in-order` or `already-replaced` for what it replaces
 */
export function startDialSurvey(store: Store, fresh: FreshSurvey, actor: Actor): DialSurvey {
  const startedById = requireUserId(actor, 'startDialSurvey')
  return store.transact(() => {
    const order = requireOpenOrder(store, fresh.workOrderId)
    if (fresh.replacesId !== null) {
      requireReplaceable(listMeasuredValues(store, order.id), fresh.replacesId)
    }
    const started = { startedById, startedByName: actor.name, startedAt: actor.at }
    const added = store.db
      .insert(dialSurvey)
      .values({ ...fresh, instrumentId: fresh.setUp.instrumentId, ...started })
      .returning()
      .get()
    addAudit(store, actor, { act: 'start-survey', subject: order.number, detail: added })
    return added
  })
}
