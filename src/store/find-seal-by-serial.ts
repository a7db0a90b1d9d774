import { and, eq } from 'drizzle-orm'
import type { Seal } from '../domain/seal.ts'
import type { Store } from './open.ts'
import { requireSeal } from './require-seal.ts'
import { seal } from './schema/seal.ts'

/** Undefined where the customer has no seal of this serial. */
export function findSealBySerial(
  store: Store,
  customerId: number,
  serial: string,
): Seal | undefined {
  const isSame = and(eq(seal.customerId, customerId), eq(seal.serial, serial))
  const found = store.db.select({ id: seal.id }).from(seal).where(isSame).get()
  return found === undefined ? undefined : requireSeal(store, found.id)
}
