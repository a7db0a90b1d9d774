import { and, desc, eq, isNull } from 'drizzle-orm'
import type { Store } from './open.ts'
import { flatnessReading } from './schema/flatness-reading.ts'
import { instrument } from './schema/instrument.ts'
import { staticTest } from './schema/static-test.ts'

/** Null where the user has used none yet, or the one used last was withdrawn since. */
export type LastInstruments = {
  readonly lampInstrumentId: number | null
  readonly flatInstrumentId: number | null
  readonly gaugeInstrumentId: number | null
  readonly thermometerInstrumentId: number | null
}

/** What a user took in hand last: the form offers it again. */
export function lastInstruments(store: Store, userId: number): LastInstruments {
  const reading = store.db
    .select()
    .from(flatnessReading)
    .where(eq(flatnessReading.recordedById, userId))
    .orderBy(desc(flatnessReading.id))
    .limit(1)
    .get()
  const test = store.db
    .select()
    .from(staticTest)
    .where(eq(staticTest.recordedById, userId))
    .orderBy(desc(staticTest.id))
    .limit(1)
    .get()
  return {
    lampInstrumentId: inService(store, reading?.lampInstrumentId),
    flatInstrumentId: inService(store, reading?.flatInstrumentId),
    gaugeInstrumentId: inService(store, test?.gaugeInstrumentId),
    thermometerInstrumentId: inService(store, test?.thermometerInstrumentId),
  }
}

function inService(store: Store, id: number | null | undefined): number | null {
  if (id === null || id === undefined) return null
  const isInService = and(eq(instrument.id, id), isNull(instrument.withdrawnOn))
  return (
    store.db.select({ id: instrument.id }).from(instrument).where(isInService).get()?.id ?? null
  )
}
