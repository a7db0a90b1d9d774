import { requireRange } from '../check/require-range.ts'
import { acceptanceLimits, type LimitPair } from './acceptance-limits.ts'
import { atMost } from './at-most.ts'
import { conformanceProbability } from './conformance-probability.ts'
import type { ConformityOutcome, DecisionRule } from './decision-rule.ts'
import { nonconformanceProbability } from './nonconformance-probability.ts'
import { type ConformityInput, requireConformityInput } from './require-conformity-input.ts'
import { usualUncertaintyShare } from './usual-uncertainty-share.ts'

export interface ConformityDecision {
  readonly outcome: ConformityOutcome
  /** Within these the rule accepts; null on a side without a limit. */
  readonly acceptanceLimits: LimitPair
  /** Beyond these the rule rejects. */
  readonly rejectionLimits: LimitPair
  readonly conformanceProbability: number
  /** What accepting risks; 0 where the outcome rejects. */
  readonly falseAcceptRisk: number
  /** What rejecting risks; 0 where the outcome accepts. */
  readonly falseRejectRisk: number
  /** Expanded uncertainty over tolerance; null for one limit of 0, where there is no such share. */
  readonly uncertaintyShare: number | null
  readonly isUncertaintyTooLarge: boolean
}

export interface DecideConformityInput extends ConformityInput {
  readonly rule: DecisionRule
  readonly expandedUncertainty?: number | undefined
  readonly probability?: number | undefined
  readonly uncertaintyShareAtMost?: number | undefined
}

/**
 * Decides whether a measured value conforms, by an agreed rule, and says what the decision risks.
 *
 * simple: pass within TL to TU. guard-u95: pass within TL + U to TU - U, else fail.
 * guard-probability: pass within TL + g to TU - g, fail from TL - g or TU + g on, else
 * undecidable, g = z(probability) u. four-outcomes: pass within TL + U to TU - U, conditional-pass
 * within TL to TU, conditional-fail within TL - U to TU + U, fail beyond.
 * By every rule: undecidable where U is more than a share of TU - TL (of |limit| for one limit) or
 * no value could be accepted, unless the value is beyond a limit by more than U, which is fail.
 *
 * @param input value, limits TL and TU: in one unit, at least one limit, TL < TU;
 *   standardUncertainty u, expandedUncertainty U (2 u): from 0; probability: from 0.5 to
 *   1 - 1e-16 (0.95); isNonNegative: nothing is below 0 (false); uncertaintyShareAtMost: from 0
 *   to 1 (a third: common practice, no source)
 * @returns outcome, limits of acceptance and rejection, pc, both risks, the share U takes up;
 *   for undecidable the risks are what accepting and what rejecting would risk
 * @throws RangeError when a number is out of range
 * Validity: what is known is normal; borders are compared by atMost, and a value at one is within.
 * Source: ILAC-G8:09/2019; ISO 14253-1:2017 and JCGM 106:2012 (from memory).
 * @example decideConformity({ value: 0.55, standardUncertainty: 0.04, upperLimit: 0.6,
 *   rule: 'guard-probability' }).outcome // undecidable
 */
export function decideConformity(input: DecideConformityInput): ConformityDecision {
  const name = 'decideConformity'
  const { value, u } = requireConformityInput(name, input)
  const { lowerLimit, upperLimit, rule, probability = 0.95 } = input
  const { expandedUncertainty: U = 2 * u, uncertaintyShareAtMost = usualUncertaintyShare } = input
  requireRange(name, 'expandedUncertainty', U, { from: 0, to: Number.MAX_VALUE })
  requireRange(name, 'uncertaintyShareAtMost', uncertaintyShareAtMost, { from: 0, to: 1 })
  const { acceptance, rejection } = acceptanceLimits({
    lowerLimit,
    upperLimit,
    rule,
    expandedUncertainty: U,
    standardUncertainty: u,
    probability,
  })
  const uncertaintyShare = shareOf(U, lowerLimit, upperLimit)
  const isUncertaintyTooLarge =
    uncertaintyShare !== null && !atMost({ value: uncertaintyShare, limit: uncertaintyShareAtMost })
  const isWithin = (by: number) =>
    (upperLimit === undefined || atMost({ value, limit: upperLimit + by })) &&
    (lowerLimit === undefined || atMost({ value: lowerLimit - by, limit: value }))
  const outcome =
    isUncertaintyTooLarge || isEmpty(acceptance)
      ? isWithin(U)
        ? 'undecidable'
        : 'fail'
      : outcomeOf[rule]({ value, acceptance, rejection, isWithin, U })
  const accepts = outcome === 'pass' || outcome === 'conditional-pass'
  const isDecided = outcome !== 'undecidable'
  const pc = conformanceProbability(input)
  return {
    outcome,
    acceptanceLimits: acceptance,
    rejectionLimits: rejection,
    conformanceProbability: pc,
    falseAcceptRisk: accepts || !isDecided ? nonconformanceProbability(input) : 0,
    falseRejectRisk: accepts ? 0 : pc,
    uncertaintyShare,
    isUncertaintyTooLarge,
  }
}

interface Position {
  readonly value: number
  readonly acceptance: LimitPair
  readonly rejection: LimitPair
  /** Within the limits moved outwards by so much. */
  readonly isWithin: (by: number) => boolean
  readonly U: number
}

const outcomeOf: Readonly<Record<DecisionRule, (at: Position) => ConformityOutcome>> = {
  simple: ({ isWithin }) => (isWithin(0) ? 'pass' : 'fail'),
  'guard-u95': ({ isWithin, U }) => (isWithin(-U) ? 'pass' : 'fail'),
  'guard-probability': (at) =>
    keeps(at.value, at.acceptance)
      ? 'pass'
      : reaches(at.value, at.rejection)
        ? 'fail'
        : 'undecidable',
  'four-outcomes': ({ isWithin, U }) => {
    if (isWithin(-U)) return 'pass'
    if (isWithin(0)) return 'conditional-pass'
    return isWithin(U) ? 'conditional-fail' : 'fail'
  },
}

function keeps(value: number, { lower, upper }: LimitPair): boolean {
  const keepsUpper = upper === null || atMost({ value, limit: upper })
  return keepsUpper && (lower === null || atMost({ value: lower, limit: value }))
}

function reaches(value: number, { lower, upper }: LimitPair): boolean {
  const reachesUpper = upper !== null && atMost({ value: upper, limit: value })
  return reachesUpper || (lower !== null && atMost({ value, limit: lower }))
}

function isEmpty({ lower, upper }: LimitPair): boolean {
  return lower !== null && upper !== null && !atMost({ value: lower, limit: upper })
}

function shareOf(U: number, lower: number | undefined, upper: number | undefined): number | null {
  if (lower !== undefined && upper !== undefined) return U / (upper - lower)
  const limit = Math.abs(upper ?? lower ?? 0)
  return limit === 0 ? null : U / limit
}
