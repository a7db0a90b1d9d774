import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'
import { normalQuantile } from '../statistics/normal-quantile.ts'
import type { DecisionRule } from './decision-rule.ts'

/** A limit on each side; null where there is none. */
export interface LimitPair {
  readonly lower: number | null
  readonly upper: number | null
}

/**
 * Gives the limits within which a rule accepts a measured value, and those from which it rejects.
 *
 * accepts from TL + g to TU - g: g = 0 for simple, U for guard-u95 and four-outcomes,
 * z(probability) u for guard-probability. Rejects beyond TL - g and TU + g; the rules that know
 * only pass and fail, simple and guard-u95, reject where they no longer accept.
 *
 * @param input lowerLimit TL, upperLimit TU: finite, in one unit; rule; expandedUncertainty U,
 *   standardUncertainty u: from 0, in the same unit; probability: from 0.5 to 1 - 1e-16, one-sided
 * @returns acceptance and rejection, each with lower and upper, null on a side without a limit;
 *   acceptance is empty where its lower is above its upper
 * @throws RangeError when a number is out of range
 * Validity: the guard band of guard-probability is one-sided, also between two limits; it holds
 *   where u is well below their distance.
 * Source: ILAC-G8:09/2019 (simple, guard-u95, four-outcomes); ISO 14253-1:2017 (from memory).
 * @example acceptanceLimits({ upperLimit: 1, rule: 'guard-probability', expandedUncertainty: 0.1,
 *   standardUncertainty: 0.05, probability: 0.95 }).acceptance.upper // 0.917757
 */
export function acceptanceLimits(input: {
  readonly lowerLimit?: number | undefined
  readonly upperLimit?: number | undefined
  readonly rule: DecisionRule
  readonly expandedUncertainty: number
  readonly standardUncertainty: number
  readonly probability: number
}): { readonly acceptance: LimitPair; readonly rejection: LimitPair } {
  const name = 'acceptanceLimits'
  const { lowerLimit, upperLimit, rule } = input
  const positive = { from: 0, to: Number.MAX_VALUE }
  const U = requireRange(name, 'expandedUncertainty', input.expandedUncertainty, positive)
  const u = requireRange(name, 'standardUncertainty', input.standardUncertainty, positive)
  requireRange(name, 'probability', input.probability, { from: 0.5, to: 1 - 1e-16 })
  if (lowerLimit !== undefined) requireFinite(name, 'lowerLimit', lowerLimit)
  if (upperLimit !== undefined) requireFinite(name, 'upperLimit', upperLimit)
  const guard = {
    simple: 0,
    'guard-u95': U,
    'guard-probability': normalQuantile(input.probability) * u,
    'four-outcomes': U,
  }[rule]
  const inwards = (by: number): LimitPair => ({
    lower: lowerLimit === undefined ? null : lowerLimit + by,
    upper: upperLimit === undefined ? null : upperLimit - by,
  })
  return {
    acceptance: inwards(guard),
    rejection: inwards(rule === 'guard-u95' ? guard : -guard),
  }
}
