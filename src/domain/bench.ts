import { blocksRelease } from './blocks-release.ts'
import { countedResults } from './counted-results.ts'
import type { Evidence } from './evidence.ts'
import { type MissingKind, missingForHandOver } from './missing-for-hand-over.ts'
import type { WorkOrderLine } from './work-order-line.ts'

/** What the order waits for; the words stand in `views/words`. */
export type WhatNext = MissingKind | 'rework' | 'hand-over' | 'decision'

export type BenchLine = WorkOrderLine & {
  readonly whatNext: WhatNext
  /** A result that speaks for the seal as left fails its limit, or the inspector refused it. */
  readonly isFailing: boolean
  /** Promised for a day that has passed. */
  readonly isOverdue: boolean
}

/** The orders in the workshop, each in one list only: what failed, else what is due, else the rest. */
export type Bench = {
  readonly waiting: readonly BenchLine[]
  readonly dueSoon: readonly BenchLine[]
  readonly failed: readonly BenchLine[]
  /** Handed over: the inspector's. */
  readonly inspection: readonly BenchLine[]
}

/** Orders promised within so many days are shown as due (our own choice). */
export const dueSoonDays = 7

/** What the order waits for: failing results come before what is missing, both before hand-over. */
export function whatNext(evidence: Evidence): WhatNext {
  if (evidence.workOrder.stage === 'handed-over') return 'decision'
  const missing = missingForHandOver(evidence)[0]
  if (missing?.kind === 'decontamination') return missing.kind
  if (isFailing(evidence)) return 'rework'
  return missing?.kind ?? 'hand-over'
}

/**
 * Says whether a result as left keeps the order from its release. As found, a worn face fails and
 * is no news.
 */
export function isFailing(evidence: Evidence): boolean {
  return countedResults(evidence).some(
    (one) => blocksRelease(one.judged.verdict) && one.concession === null,
  )
}
