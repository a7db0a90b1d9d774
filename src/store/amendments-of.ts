import { asc, eq, sql } from 'drizzle-orm'
import { prepared } from './prepared.ts'
import { instrumentAmendment } from './schema/instrument-amendment.ts'

/** What was amended of an instrument, newest last. */
export const amendmentsOf = prepared((store) =>
  store.db
    .select()
    .from(instrumentAmendment)
    .where(eq(instrumentAmendment.instrumentId, sql.placeholder('id')))
    .orderBy(asc(instrumentAmendment.id))
    .prepare(),
)
