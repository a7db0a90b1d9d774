import type { AgreedRule } from '../../domain/agreed-rule.ts'
import type { Instrument } from '../../domain/instrument.ts'
import type { LapCycle } from '../../domain/lap-cycle.ts'
import type { LimitSet } from '../../domain/limit-set.ts'
import { type Component, faceKinds, type Seal } from '../../domain/seal.ts'
import type { UseException } from '../../domain/use-exception.ts'
import type { WorkOrder } from '../../domain/work-order.ts'
import { agreedRuleOf } from '../../store/agreed-rule-of.ts'
import { listInstruments } from '../../store/list-instruments.ts'
import { listLapCycles } from '../../store/list-lap-cycles.ts'
import { listUseExceptions } from '../../store/list-use-exceptions.ts'
import { requireLimitSet } from '../../store/require-limit-set.ts'
import { requireSeal } from '../../store/require-seal.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { viewer } from '../viewer.ts'

/** All that a measured value needs to know of its order. */
export type MeasuredDesk = {
  readonly workOrder: WorkOrder
  /** How results of the order are compared with limits. */
  readonly agreedRule: AgreedRule
  readonly seal: Seal
  readonly components: readonly Component[]
  /** The components that carry a lapped face, rotating face first. */
  readonly faces: readonly Component[]
  readonly limitSet: LimitSet
  readonly instruments: readonly Instrument[]
  /** Asked for and answered: by which an instrument may be used in spite of a fault. */
  readonly exceptions: readonly UseException[]
  /** Of the order: they say how a face is. */
  readonly lapCycles: readonly LapCycle[]
  readonly today: string
}

/** @throws AppError not-found where the order is not there */
export function openMeasuredDesk(c: AppContext): MeasuredDesk {
  const { store, now } = c.var.shop
  const order = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  const seal = requireSeal(store, order.sealId)
  return {
    workOrder: order,
    agreedRule: agreedRuleOf(store, order.id),
    seal,
    components: seal.components,
    faces: faceKinds.flatMap((kind) => seal.components.filter((one) => one.kind === kind)),
    limitSet: requireLimitSet(store, order.limitSetId),
    instruments: listInstruments(store),
    exceptions: listUseExceptions(store, order.id),
    lapCycles: listLapCycles(store, order.id),
    today: now().toISOString().slice(0, 10),
  }
}
