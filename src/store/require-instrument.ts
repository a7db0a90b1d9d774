import { eq, sql } from 'drizzle-orm'
import { AppError } from '../domain/app-error.ts'
import type { Instrument } from '../domain/instrument.ts'
import { asAmended } from './as-amended.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { instrument } from './schema/instrument.ts'

const instrumentById = prepared((store) =>
  store.db
    .select()
    .from(instrument)
    .where(eq(instrument.id, sql.placeholder('id')))
    .prepare(),
)

/** @throws AppError not-found `no-instrument` */
export function requireInstrument(store: Store, id: number): Instrument {
  const found = instrumentById(store).get({ id })
  if (found === undefined) throw new AppError('not-found', 'no-instrument')
  return asAmended(store, found)
}
