import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { InstrumentHolder } from '../domain/instrument.ts'
import { addAudit } from './add-audit.ts'
import type { Store } from './open.ts'
import { requireInstrument } from './require-instrument.ts'
import { requireUserId } from './require-user-id.ts'
import { instrumentHolder } from './schema/instrument-holder.ts'

/**
 * Says who or which place holds an instrument from now on; earlier holders stay in the record.
 * @throws AppError not-found `no-instrument`; conflict `instrument-withdrawn`
 */
export function setInstrumentHolder(
  store: Store,
  fresh: { readonly instrumentId: number; readonly holder: string },
  actor: Actor,
): InstrumentHolder {
  const byId = requireUserId(actor, 'setInstrumentHolder')
  return store.transact(() => {
    const of = requireInstrument(store, fresh.instrumentId)
    if (of.withdrawnOn !== null) {
      throw new AppError('conflict', 'instrument-withdrawn', { number: of.number })
    }
    const row = { ...fresh, byId, byName: actor.name, at: actor.at }
    const added = store.db.insert(instrumentHolder).values(row).returning().get()
    const subject = `instrument ${of.number}`
    addAudit(store, actor, { act: 'set-instrument-holder', subject, detail: added })
    return { holder: added.holder, byName: added.byName, at: added.at }
  })
}
