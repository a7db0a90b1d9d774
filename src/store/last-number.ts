import { and, eq } from 'drizzle-orm'
import type { Store } from './open.ts'
import { counter } from './schema/counter.ts'

export type CounterName = 'work-order' | 'certificate'

/** The last number taken in a year; 0 where none was. */
export function lastNumber(store: Store, name: CounterName, year: number): number {
  const row = store.db
    .select({ last: counter.last })
    .from(counter)
    .where(and(eq(counter.name, name), eq(counter.year, year)))
    .get()
  return row?.last ?? 0
}
