import { positionScatter } from '../science/runout/position-scatter.ts'

/**
 * At so many times the scatter of even positions nothing can be said of a turn: all of them lie
 * within some 20 degrees (common practice, no source).
 */
const mostScatter = 100

/** Whether readings at these positions say anything about a whole turn. */
export function tellsTurn(anglesDeg: readonly number[]): boolean {
  return positionScatter(anglesDeg) <= mostScatter
}
