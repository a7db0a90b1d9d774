import { asc, eq, inArray } from 'drizzle-orm'
import type { Component, Seal } from '../domain/seal.ts'
import type { Store } from './open.ts'
import { component } from './schema/component.ts'
import { seal } from './schema/seal.ts'

/** By serial; of one customer where `customerId` is given. */
export function listSeals(store: Store, filter: { readonly customerId?: number } = {}): Seal[] {
  const { customerId } = filter
  const found = store.db
    .select()
    .from(seal)
    .where(customerId === undefined ? undefined : eq(seal.customerId, customerId))
    .orderBy(asc(seal.serial), asc(seal.id))
    .all()
  const ofSeal = new Map<number, Component[]>(found.map((one) => [one.id, []]))
  const ids = store.db
    .select({ id: seal.id })
    .from(seal)
    .where(customerId === undefined ? undefined : eq(seal.customerId, customerId))
  const components = store.db
    .select()
    .from(component)
    .where(customerId === undefined ? undefined : inArray(component.sealId, ids))
    .orderBy(asc(component.id))
    .all()
  for (const one of components) ofSeal.get(one.sealId)?.push(one)
  return found.map((one) => ({ ...one, components: ofSeal.get(one.id) ?? [] }))
}
