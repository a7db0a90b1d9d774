import type { LimitSet } from '../../domain/limit-set.ts'
import { requireLimitSet } from '../../store/require-limit-set.ts'
import type { AppContext } from '../context.ts'
import { idOf } from '../id-of.ts'

/** The set that the path names. */
export function setOf(c: AppContext): LimitSet {
  return requireLimitSet(c.var.shop.store, idOf(c.req.param('id'), 'no-limit-set'))
}
