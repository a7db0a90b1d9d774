import { eq } from 'drizzle-orm'
import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { Instrument, NewInstrument } from '../domain/instrument.ts'
import { addAudit } from './add-audit.ts'
import type { Store } from './open.ts'
import { instrument } from './schema/instrument.ts'

/** @throws AppError conflict `instrument-number-taken` */
export function addInstrument(store: Store, fresh: NewInstrument, actor: Actor): Instrument {
  return store.transact(() => {
    const isSame = eq(instrument.number, fresh.number)
    if (store.db.select().from(instrument).where(isSame).get() !== undefined) {
      throw new AppError('conflict', 'instrument-number-taken', { number: fresh.number })
    }
    const row = { ...fresh, withdrawnOn: null }
    const added = store.db.insert(instrument).values(row).returning().get()
    const subject = `instrument ${added.number}`
    addAudit(store, actor, { act: 'add-instrument', subject, detail: added })
    return { ...added, calibrations: [] }
  })
}
