import { smallestDetectableLeak } from '../science/leak/smallest-detectable-leak.ts'
import { combinedStandardUncertainty } from '../science/uncertainty/combined-standard-uncertainty.ts'
import type { Uncertainty } from './uncertainty.ts'

/** These parts of a leak's budget vanish with the leak; the rest is there without one. */
const growsWithLeak: readonly string[] = ['volume', 'volume-error', 'elapsed-time']

/**
 * The smallest leak that a set-up can tell from none, in Pa·m³/s; null where the budget says
 * nothing of pressure or temperature.
 */
export function smallestSeenLeak(leak: Pick<Uncertainty, 'budget'> | null): number | null {
  const noise = leak?.budget.filter((line) => !growsWithLeak.includes(line.source)) ?? []
  return noise.length === 0 ? null : smallestDetectableLeak(combinedStandardUncertainty(noise))
}
