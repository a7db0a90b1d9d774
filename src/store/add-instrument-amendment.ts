import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import { amendedNames, type InstrumentAmendment } from '../domain/instrument-amendment.ts'
import { addAudit } from './add-audit.ts'
import { amendmentsOf } from './amendments-of.ts'
import type { Store } from './open.ts'
import { requireInstrument } from './require-instrument.ts'
import { requireUserId } from './require-user-id.ts'
import { instrumentAmendment } from './schema/instrument-amendment.ts'

/**
 * Says what is known of an instrument in numbers from now on. What was measured before keeps the
 * budget it was stored with.
 * @param fresh seenId: of the newest amendment that the person had before them, 0 for none
 * @throws AppError not-found `no-instrument`; conflict `instrument-withdrawn`, or
 *   `instrument-amended` where somebody amended it meanwhile, `instrument-not-changed`
 */
export function addInstrumentAmendment(
  store: Store,
  { seenId, ...fresh }: Omit<InstrumentAmendment, 'id' | 'byName' | 'at'> & { seenId: number },
  actor: Actor,
): InstrumentAmendment {
  const byId = requireUserId(actor, 'addInstrumentAmendment')
  return store.transact(() => {
    const of = requireInstrument(store, fresh.instrumentId)
    if (of.withdrawnOn !== null) {
      throw new AppError('conflict', 'instrument-withdrawn', { number: of.number })
    }
    if ((amendmentsOf(store).all({ id: of.id }).at(-1)?.id ?? 0) !== seenId) {
      throw new AppError('conflict', 'instrument-amended', { number: of.number })
    }
    if (amendedNames.every((name) => fresh[name] === of[name])) {
      throw new AppError('conflict', 'instrument-not-changed', { number: of.number })
    }
    const row = { ...fresh, byId, byName: actor.name, at: actor.at }
    const added = store.db.insert(instrumentAmendment).values(row).returning().get()
    const subject = `instrument ${of.number}`
    addAudit(store, actor, { act: 'amend-instrument', subject, detail: added })
    return added
  })
}
