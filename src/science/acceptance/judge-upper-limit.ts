import { atMost } from './at-most.ts'

export type Verdict = 'pass' | 'fail'

/**
 * Judges a value against an upper limit by simple acceptance: no guard band, shared risk.
 *
 * pass when value <= upperLimit
 *
 * @param input value, upperLimit: finite numbers in the same unit, unrounded
 * @returns pass or fail
 * @throws RangeError when one of them is not finite
 * Validity: at the limit the risk of a wrong verdict is up to 50 %.
 * Source: ILAC-G8:09/2019, simple acceptance, AL = TL.
 * @example judgeUpperLimit({ value: 0.8814, upperLimit: 0.8813 }) // fail
 */
export function judgeUpperLimit(input: {
  readonly value: number
  readonly upperLimit: number
}): Verdict {
  return atMost({ value: input.value, limit: input.upperLimit }) ? 'pass' : 'fail'
}
