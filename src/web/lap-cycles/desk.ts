import type { Evidence } from '../../domain/evidence.ts'
import { type Component, faceKinds } from '../../domain/seal.ts'
import { type LastLap, lastLapCycles } from '../../store/last-lap-cycles.ts'
import { readEvidence } from '../../store/read-evidence.ts'
import { requireWorkOrder } from '../../store/require-work-order.ts'
import type { AppContext } from '../context.ts'
import { viewer } from '../viewer.ts'

/** All that a lap cycle needs to know of its order and of the plates. */
export type LapDesk = {
  readonly evidence: Evidence
  /** The components that carry a lapped face, rotating face first. */
  readonly faces: readonly Component[]
  /** How was lapped last in the shop, newest first. */
  readonly lastLaps: readonly LastLap[]
}

/** @throws AppError not-found where the order is not there */
export function openLapDesk(c: AppContext): LapDesk {
  const { store } = c.var.shop
  const order = requireWorkOrder(store, c.req.param('number') ?? '', viewer(c))
  const evidence = readEvidence(store, order.id)
  const { components } = evidence.seal
  return {
    evidence,
    faces: faceKinds.flatMap((kind) => components.filter((one) => one.kind === kind)),
    lastLaps: lastLapCycles(store),
  }
}
