import { asc, eq, sql } from 'drizzle-orm'
import { AppError } from '../domain/app-error.ts'
import type { Seal } from '../domain/seal.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { component } from './schema/component.ts'
import { seal } from './schema/seal.ts'

const sealById = prepared((store) =>
  store.db
    .select()
    .from(seal)
    .where(eq(seal.id, sql.placeholder('id')))
    .prepare(),
)

const componentsOfSeal = prepared((store) =>
  store.db
    .select()
    .from(component)
    .where(eq(component.sealId, sql.placeholder('id')))
    .orderBy(asc(component.id))
    .prepare(),
)

/** @throws AppError not-found `no-seal` */
export function requireSeal(store: Store, id: number): Seal {
  const found = sealById(store).get({ id })
  if (found === undefined) throw new AppError('not-found', 'no-seal')
  return { ...found, components: componentsOfSeal(store).all({ id }) }
}
