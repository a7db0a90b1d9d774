import { asc, eq } from 'drizzle-orm'
import type { Instrument, InstrumentKind } from '../domain/instrument.ts'
import { asAmended } from './as-amended.ts'
import type { Store } from './open.ts'
import { instrument } from './schema/instrument.ts'

/** By number, withdrawn ones included; of one kind where it is given. */
export function listInstruments(
  store: Store,
  filter: { readonly kind?: InstrumentKind } = {},
): Instrument[] {
  const found = store.db
    .select()
    .from(instrument)
    .where(filter.kind === undefined ? undefined : eq(instrument.kind, filter.kind))
    .orderBy(asc(instrument.number))
    .all()
  return found.map((one) => asAmended(store, one))
}
