import type { ConformityDecision } from '../science/acceptance/decide-conformity.ts'
import type { Characteristic } from './characteristic.ts'
import type { Limit } from './limit-set.ts'

/** Why a verdict is what it is; the sentences stand in `views/words`. */
export const judgedReasons = [
  'within-limit',
  'beyond-limit',
  'within-guard',
  'beyond-within-guard',
  'not-proven',
  'uncertainty-too-large',
  'no-uncertainty',
  'incomplete-budget',
  'unreadable',
  'no-limit',
  'size-not-known',
  'volume-too-large',
  'hold-too-short',
  'pressure-too-low',
  'not-above-air',
  'gas-came-in',
] as const
export type JudgedReason = (typeof judgedReasons)[number]

/**
 * `open`: nothing here to judge it by, which is no pass. `undecidable`: there is a limit, and this
 * set-up can't tell which side of it the truth lies on.
 */
export const verdicts = [
  'pass',
  'conditional-pass',
  'conditional-fail',
  'fail',
  'undecidable',
  'open',
] as const
export type Verdict = (typeof verdicts)[number]

/** One result beside its limit. */
export type Judged = {
  readonly characteristic: Characteristic
  readonly verdict: Verdict
  /** In the unit of the limit, unrounded; null for an unreadable face. */
  readonly value: number | null
  readonly limit: Limit | null
  /** The limit as it holds here, a limit per millimetre multiplied out; null: none that side. */
  readonly lower: number | null
  readonly upper: number | null
  /** Null where nothing was compared, or the uncertainty is not known, or not all of it. */
  readonly decision: ConformityDecision | null
  /**
   * What would have to improve: the largest line of the budget, or what is missing from it; null
   * where there is none.
   */
  readonly largestSource: string | null
  readonly why: JudgedReason
}
