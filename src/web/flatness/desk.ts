import type { AgreedRule } from '../../domain/agreed-rule.ts'
import type { FlatnessReading } from '../../domain/flatness.ts'
import type { Instrument } from '../../domain/instrument.ts'
import type { LapCycle } from '../../domain/lap-cycle.ts'
import type { LimitSet } from '../../domain/limit-set.ts'
import { type Component, faceKinds, type Seal } from '../../domain/seal.ts'
import type { UseException } from '../../domain/use-exception.ts'
import type { WorkOrder } from '../../domain/work-order.ts'
import { agreedRuleOf } from '../../store/agreed-rule-of.ts'
import { listFlatnessReadings } from '../../store/list-flatness-readings.ts'
import { listInstruments } from '../../store/list-instruments.ts'
import { listLapCycles } from '../../store/list-lap-cycles.ts'
import { listUseExceptions } from '../../store/list-use-exceptions.ts'
import { requireLimitSet } from '../../store/require-limit-set.ts'
import { requireSeal } from '../../store/require-seal.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { viewer } from '../viewer.ts'

/** All that reading a face needs to know of its order. */
export type FlatnessDesk = {
  readonly workOrder: WorkOrder
  /** How results of the order are compared with limits. */
  readonly agreedRule: AgreedRule
  readonly seal: Seal
  /** The components that carry a lapped face, rotating face first. */
  readonly faces: readonly Component[]
  readonly components: readonly Component[]
  readonly limitSet: LimitSet
  readonly instruments: readonly Instrument[]
  /** Asked for and answered: by which an instrument may be used in spite of a fault. */
  readonly exceptions: readonly UseException[]
  /** Of the order, replaced ones too, oldest first; so are the cycles. */
  readonly flatnessReadings: readonly FlatnessReading[]
  readonly lapCycles: readonly LapCycle[]
  readonly today: string
}

/** @throws AppError not-found where the order is not there */
export function openFlatnessDesk(c: AppContext): FlatnessDesk {
  const { store, now } = c.var.shop
  const order = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  const seal = requireSeal(store, order.sealId)
  return {
    workOrder: order,
    agreedRule: agreedRuleOf(store, order.id),
    seal,
    faces: faceKinds.flatMap((kind) => seal.components.filter((one) => one.kind === kind)),
    components: seal.components,
    limitSet: requireLimitSet(store, order.limitSetId),
    instruments: listInstruments(store),
    exceptions: listUseExceptions(store, order.id),
    flatnessReadings: listFlatnessReadings(store, order.id),
    lapCycles: listLapCycles(store, order.id),
    today: now().toISOString().slice(0, 10),
  }
}
