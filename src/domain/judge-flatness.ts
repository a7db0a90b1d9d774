import { judgeUpperLimit } from '../science/acceptance/judge-upper-limit.ts'
import type { FlatnessReading } from './flatness.ts'
import type { Judged } from './judged.ts'
import { limitFor } from './limit-for.ts'
import type { Limit, LimitSet } from './limit-set.ts'

/**
 * Holds a reading against the limit for its face's material. An unreadable face is never a pass,
 * whether or not there is a limit.
 */
export function judgeFlatness(
  reading: Pick<FlatnessReading, 'flatnessUm'>,
  limitSet: LimitSet,
  faceMaterial: string | null,
): Judged {
  const characteristic = 'flatness'
  const limit = limitFor(limitSet, characteristic, faceMaterial) ?? null
  const value = reading.flatnessUm
  if (value === null)
    return {
      characteristic,
      verdict: 'fail',
      value,
      limit,
      ...notWeighed(limit),
      why: 'unreadable',
    }
  if (limit === null)
    return { characteristic, verdict: 'open', value, limit, ...notWeighed(limit), why: 'no-limit' }
  const verdict = judgeUpperLimit({ value, upperLimit: limit.upper ?? Number.POSITIVE_INFINITY })
  return {
    characteristic,
    verdict,
    value,
    limit,
    ...notWeighed(limit),
    why: verdict === 'pass' ? 'within-limit' : 'beyond-limit',
  }
}

function notWeighed(limit: Limit | null) {
  return { lower: null, upper: limit?.upper ?? null, decision: null, largestSource: null }
}
