import type { Evidence } from '../../domain/evidence.ts'
import { type Component, faceKinds } from '../../domain/seal.ts'
import type { StripContext } from '../../domain/strip-context.ts'
import type { UseException } from '../../domain/use-exception.ts'
import { listInstruments } from '../../store/list-instruments.ts'
import { listUseExceptions } from '../../store/list-use-exceptions.ts'
import { readEvidence } from '../../store/read-evidence.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { today } from '../today.ts'
import { viewer } from '../viewer.ts'

/** All that a record of the strip bench needs to know of its order. */
export type StripDesk = StripContext & {
  readonly evidence: Evidence
  /** The components that carry a lapped face, rotating face first. */
  readonly faces: readonly Component[]
  readonly exceptions: readonly UseException[]
}

/** @throws AppError not-found where the order is not there */
export function openStripDesk(c: AppContext): StripDesk {
  const { store } = c.var.shop
  const order = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  const evidence = readEvidence(store, order.id)
  const { components } = evidence.seal
  return {
    evidence,
    components,
    faces: faceKinds.flatMap((kind) => components.filter((one) => one.kind === kind)),
    instruments: listInstruments(store),
    exceptions: listUseExceptions(store, order.id),
    today: today(c),
  }
}
