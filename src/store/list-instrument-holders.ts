import { desc, eq } from 'drizzle-orm'
import type { InstrumentHolder } from '../domain/instrument.ts'
import type { Store } from './open.ts'
import { instrumentHolder } from './schema/instrument-holder.ts'

/** Who held an instrument, newest first: the first one holds it now. */
export function listInstrumentHolders({ db }: Store, instrumentId: number): InstrumentHolder[] {
  const { holder, byName, at, id } = instrumentHolder
  return db
    .select({ holder, byName, at })
    .from(instrumentHolder)
    .where(eq(instrumentHolder.instrumentId, instrumentId))
    .orderBy(desc(id))
    .all()
}
