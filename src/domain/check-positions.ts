import { distinctAngles } from '../science/runout/distinct-angles.ts'
import { surveyBounds } from './dial-survey.ts'
import type { Fields } from './fields.ts'
import { tellsTurn } from './tells-turn.ts'

/** Three positions at least must differ, and reach far enough round the turn. */
export function checkPositions(fields: Fields, name: string, anglesDeg: readonly number[]): void {
  const { positionCount } = surveyBounds
  if (distinctAngles(anglesDeg).length < positionCount.min) {
    fields.fault(name, 'too-few-positions', positionCount)
  } else if (!tellsTurn(anglesDeg)) fields.fault(name, 'positions-bunched')
}
