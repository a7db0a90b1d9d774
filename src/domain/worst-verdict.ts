import type { Verdict } from './judged.ts'

/** `conceded`: everything that doesn't keep its limit is taken by the customer all the same. */
export type OverallVerdict = Verdict | 'conceded'

const fromBest: readonly OverallVerdict[] = [
  'pass',
  'conditional-pass',
  'open',
  'conceded',
  'undecidable',
  'conditional-fail',
  'fail',
]

/** The worst of several verdicts; nothing to judge by is no pass. */
export function worstVerdict(verdicts: readonly OverallVerdict[]): OverallVerdict {
  let worst = -1
  for (const verdict of verdicts) worst = Math.max(worst, fromBest.indexOf(verdict))
  return fromBest[worst] ?? 'open'
}
