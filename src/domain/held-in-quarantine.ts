import type { Stage } from './stage.ts'
import type { WorkOrder } from './work-order.ts'

/** Stages in which a seal is open, or was. */
const openedStages: readonly Stage[] = ['stripped', 'lapping', 'testing']

/** Nobody strips, laps or tests a seal by hand of which nobody has said that it is clean. */
export function heldInQuarantine(order: Pick<WorkOrder, 'decontamination'>, to: Stage): boolean {
  return order.decontamination === 'not-stated' && openedStages.includes(to)
}
