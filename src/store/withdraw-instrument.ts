import { eq } from 'drizzle-orm'
import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { Instrument } from '../domain/instrument.ts'
import { addAudit } from './add-audit.ts'
import type { Store } from './open.ts'
import { requireInstrument } from './require-instrument.ts'
import { instrument } from './schema/instrument.ts'

/** @throws AppError not-found `no-instrument`; conflict `instrument-withdrawn` */
export function withdrawInstrument(
  store: Store,
  fresh: { readonly instrumentId: number; readonly on: string; readonly reason: string },
  actor: Actor,
): Instrument {
  return store.transact(() => {
    const of = requireInstrument(store, fresh.instrumentId)
    if (of.withdrawnOn !== null) {
      throw new AppError('conflict', 'instrument-withdrawn', { number: of.number })
    }
    store.db.update(instrument).set({ withdrawnOn: fresh.on }).where(eq(instrument.id, of.id)).run()
    const detail = { on: fresh.on, reason: fresh.reason }
    const subject = `instrument ${of.number}`
    addAudit(store, actor, { act: 'withdraw-instrument', subject, detail })
    return requireInstrument(store, of.id)
  })
}
