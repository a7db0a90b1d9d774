import { distinctAngles } from '../science/runout/distinct-angles.ts'
import { positionScatter } from '../science/runout/position-scatter.ts'
import { surveyBounds } from './dial-survey.ts'
import type { Fields } from './fields.ts'

/**
 * At so many times the scatter of even positions nothing can be said of a turn: all of them lie
 * within some 20 degrees (common practice, no source).
 */
const mostScatter = 100

/** Three positions at least must differ, and reach far enough round the turn. */
export function checkPositions(fields: Fields, name: string, anglesDeg: readonly number[]): void {
  const { positionCount } = surveyBounds
  if (distinctAngles(anglesDeg).length < positionCount.min) {
    fields.fault(name, 'too-few-positions', positionCount)
  } else if (!tellsTurn(anglesDeg)) fields.fault(name, 'positions-bunched')
}

/** Whether readings at these positions say anything about a whole turn. */
export function tellsTurn(anglesDeg: readonly number[]): boolean {
  return positionScatter(anglesDeg) <= mostScatter
}
