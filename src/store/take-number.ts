import { and, eq } from 'drizzle-orm'
import { type CounterName, lastNumber } from './last-number.ts'
import type { Store } from './open.ts'
import { counter } from './schema/counter.ts'

/**
 * Takes the next number of a year. Call it inside the transaction of what gets the number: when
 * that fails the number is free again, so the row of numbers has no gaps.
 */
export function takeNumber(store: Store, name: CounterName, year: number): number {
  const last = lastNumber(store, name, year) + 1
  if (last === 1) store.db.insert(counter).values({ name, year, last }).run()
  else {
    store.db
      .update(counter)
      .set({ last })
      .where(and(eq(counter.name, name), eq(counter.year, year)))
      .run()
  }
  return last
}
