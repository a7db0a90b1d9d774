import type { Characteristic, Limit } from './limit-set.ts'

/** Why a verdict is what it is; the sentences stand in `views/words`. */
export const judgedReasons = [
  'within-limit',
  'beyond-limit',
  'unreadable',
  'no-limit',
  'volume-too-large',
  'hold-too-short',
  'pressure-too-low',
  'not-above-air',
  'gas-came-in',
] as const
export type JudgedReason = (typeof judgedReasons)[number]

/** One result beside its limit. `open`: nothing here to judge it by, which is no pass. */
export type Judged = {
  readonly characteristic: Characteristic
  readonly verdict: 'pass' | 'fail' | 'open'
  /** In the unit of the limit, unrounded; null for an unreadable face. */
  readonly value: number | null
  readonly limit: Limit | null
  readonly why: JudgedReason
}
