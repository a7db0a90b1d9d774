import { cycleBefore } from './cycle-before.ts'
import { type FaceState, stateAfter } from './face-state.ts'

/**
 * How a face was by the lapping log when something was read on it; null where no cycle of the order
 * came before it.
 * @param reading among `readings`, which are all of its kind and order, replaced ones too
 */
export function faceStateByLog(...of: Parameters<typeof cycleBefore>): FaceState | null {
  const before = cycleBefore(...of)
  return before === null ? null : stateAfter[before.cycle.purpose]
}
