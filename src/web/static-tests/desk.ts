import type { AgreedRule } from '../../domain/agreed-rule.ts'
import type { Instrument } from '../../domain/instrument.ts'
import type { LimitSet } from '../../domain/limit-set.ts'
import type { Seal } from '../../domain/seal.ts'
import type { UseException } from '../../domain/use-exception.ts'
import type { WorkOrder } from '../../domain/work-order.ts'
import { agreedRuleOf } from '../../store/agreed-rule-of.ts'
import { listInstruments } from '../../store/list-instruments.ts'
import { listUseExceptions } from '../../store/list-use-exceptions.ts'
import { requireLimitSet } from '../../store/require-limit-set.ts'
import { requireSeal } from '../../store/require-seal.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { viewer } from '../viewer.ts'

/** All that a static test needs to know of its order. */
export type StaticTestDesk = {
  readonly workOrder: WorkOrder
  /** How results of the order are compared with limits. */
  readonly agreedRule: AgreedRule
  readonly seal: Seal
  readonly limitSet: LimitSet
  readonly instruments: readonly Instrument[]
  /** Asked for and answered: by which an instrument may be used in spite of a fault. */
  readonly exceptions: readonly UseException[]
  readonly receivedAt: string
  /** The instant of the request, RFC 3339 in UTC. */
  readonly now: string
}

/** @throws AppError not-found where the order is not there */
export function openStaticTestDesk(c: AppContext): StaticTestDesk {
  const { store, now } = c.var.shop
  const order = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  return {
    workOrder: order,
    agreedRule: agreedRuleOf(store, order.id),
    seal: requireSeal(store, order.sealId),
    limitSet: requireLimitSet(store, order.limitSetId),
    instruments: listInstruments(store),
    exceptions: listUseExceptions(store, order.id),
    receivedAt: order.receivedAt,
    now: now().toISOString(),
  }
}
