import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'

/** The gas in the test volume at one moment. */
export interface PressureState {
  readonly timeS: number
  readonly pressureKPaAbs: number
  readonly temperatureC: number
}

/**
 * Gives the state back when it is possible, and throws otherwise.
 *
 * @param functionName the function that asks, as the error names it
 * @param state timeS: any finite number; pressureKPaAbs: from 0 to 1e6; temperatureC: from -270
 *   to 2000
 * @returns state, unchanged
 * @throws RangeError outside these ranges
 * @example requirePressureState('f', { timeS: 0, pressureKPaAbs: 271.3, temperatureC: 21 }).timeS
 *   // 0
 */
export function requirePressureState(functionName: string, state: PressureState): PressureState {
  requireFinite(functionName, 'timeS', state.timeS)
  requireRange(functionName, 'pressureKPaAbs', state.pressureKPaAbs, { from: 0, to: 1e6 })
  requireRange(functionName, 'temperatureC', state.temperatureC, { from: -270, to: 2000 })
  return state
}
