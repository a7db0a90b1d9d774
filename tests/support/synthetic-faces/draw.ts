import { seededNormal, seededUniform } from '../../science/seeded-random.ts'

/** What a recipe is drawn with: the same seed gives the same draws in the same order. */
export interface Draw {
  readonly between: (low: number, high: number) => number
  /** Even in the logarithm: as many small values as large ones. */
  readonly even: (low: number, high: number) => number
  readonly whole: (low: number, high: number) => number
  readonly angle: () => number
  readonly normal: () => number
  readonly happens: (probability: number) => boolean
  readonly pick: <T>(of: readonly T[]) => T
  readonly times: <T>(count: number, make: () => T) => T[]
}

export function drawFrom(seed: number): Draw {
  const uniform = seededUniform(seed)
  const between = (low: number, high: number) => low + (high - low) * uniform()
  const whole = (low: number, high: number) => Math.floor(between(low, high + 1))
  return {
    between,
    even: (low, high) => Math.exp(between(Math.log(low), Math.log(high))),
    whole,
    angle: () => between(0, 2 * Math.PI),
    normal: seededNormal(seed ^ 0x5bd1e995),
    happens: (probability) => uniform() < probability,
    pick: (of) => of[whole(0, of.length - 1)] as (typeof of)[number],
    times: (count, make) => Array.from({ length: count }, make),
  }
}
