import { asc, eq, sql } from 'drizzle-orm'
import { AppError } from '../domain/app-error.ts'
import type { LimitSet } from '../domain/limit-set.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { limitSet } from './schema/limit-set.ts'
import { limitSetStep } from './schema/limit-set-step.ts'
import { limitValue } from './schema/limit-value.ts'

const setById = prepared((store) =>
  store.db
    .select()
    .from(limitSet)
    .where(eq(limitSet.id, sql.placeholder('id')))
    .prepare(),
)

const limitsOfSet = prepared((store) =>
  store.db
    .select()
    .from(limitValue)
    .where(eq(limitValue.limitSetId, sql.placeholder('id')))
    .orderBy(asc(limitValue.id))
    .prepare(),
)

const stepsOfSet = prepared((store) =>
  store.db
    .select()
    .from(limitSetStep)
    .where(eq(limitSetStep.limitSetId, sql.placeholder('id')))
    .orderBy(asc(limitSetStep.id))
    .prepare(),
)

/** @throws AppError not-found `no-limit-set` */
export function requireLimitSet(store: Store, id: number): LimitSet {
  const found = setById(store).get({ id })
  if (found === undefined) throw new AppError('not-found', 'no-limit-set')
  return { ...found, limits: limitsOfSet(store).all({ id }), steps: stepsOfSet(store).all({ id }) }
}
