import { asc } from 'drizzle-orm'
import type { Store } from './open.ts'
import { instrumentHolder } from './schema/instrument-holder.ts'

/** Who or which place holds each instrument now, by its id; none where nobody said so. */
export function currentHolders({ db }: Store): ReadonlyMap<number, string> {
  const rows = db
    .select({ id: instrumentHolder.instrumentId, holder: instrumentHolder.holder })
    .from(instrumentHolder)
    .orderBy(asc(instrumentHolder.id))
    .all()
  return new Map(rows.map(({ id, holder }) => [id, holder]))
}
