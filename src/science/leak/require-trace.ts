import { requireRange } from '../check/require-range.ts'
import { requirePressureState } from './require-pressure-state.ts'

/** One reading of a trace; the temperature is there for all readings or for none. */
export interface TraceSample {
  readonly timeS: number
  readonly pressureKPaAbs: number
  readonly temperatureC?: number | undefined
}

/** Fewer readings cannot show whether a pressure had settled. */
export const fewestTraceSamples = 6

/**
 * Gives the trace back when it can be used, and throws otherwise.
 *
 * @param functionName the function that asks, as the error names it
 * @param trace from 6 to 100 000 readings; timeS increasing; pressureKPaAbs: from 0 to 1e6;
 *   temperatureC: from -270 to 2000, with all readings or with none
 * @returns trace, unchanged
 * @throws RangeError outside these ranges
 * @example requireTrace('f', [0, 1, 2, 3, 4, 5].map((timeS) => ({ timeS,
 *   pressureKPaAbs: 300 }))).length // 6
 */
export function requireTrace(
  functionName: string,
  trace: readonly TraceSample[],
): readonly TraceSample[] {
  requireRange(functionName, 'count of readings', trace.length, {
    from: fewestTraceSamples,
    to: 100_000,
  })
  const temperatureCount = trace.filter((sample) => sample.temperatureC !== undefined).length
  if (temperatureCount !== 0 && temperatureCount !== trace.length) {
    throw new RangeError(
      `${functionName} requires temperatureC 0 or ${trace.length} times, got ${temperatureCount}`,
    )
  }
  let before = Number.NEGATIVE_INFINITY
  for (const sample of trace) {
    requirePressureState(functionName, { ...sample, temperatureC: sample.temperatureC ?? 20 })
    if (!(sample.timeS > before)) {
      throw new RangeError(
        `${functionName} requires timeS from above ${before} on, got ${sample.timeS}`,
      )
    }
    before = sample.timeS
  }
  return trace
}
