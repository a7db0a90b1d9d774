import { eq } from 'drizzle-orm'
import type { AmendedFrom, InstrumentNumbers } from '../domain/instrument-amendment.ts'
import { amendmentsOf } from './amendments-of.ts'
import type { Store } from './open.ts'
import { instrument } from './schema/instrument.ts'

/** How an instrument's numbers were amended, newest first, each beside what stood before it. */
export function listInstrumentAmendments(store: Store, instrumentId: number): AmendedFrom[] {
  const isThat = eq(instrument.id, instrumentId)
  const registered = store.db.select().from(instrument).where(isThat).get()
  if (registered === undefined) return []
  let was: InstrumentNumbers = registered
  const amended = amendmentsOf(store)
    .all({ id: instrumentId })
    .map((became) => {
      const pair = { was, became }
      was = became
      return pair
    })
  return amended.toReversed()
}
