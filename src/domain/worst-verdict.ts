import type { Verdict } from './judged.ts'

/**
 * `conceded`: everything that the rule does not accept is taken by the customer all the same;
 * `conceded-open`: so it is, and something else has nothing to be judged by.
 */
export type OverallVerdict = Verdict | 'conceded' | 'conceded-open'

const fromBest: readonly OverallVerdict[] = [
  'pass',
  'conditional-pass',
  'open',
  'conceded',
  'conceded-open',
  'undecidable',
  'conditional-fail',
  'fail',
]

/** The worst of several verdicts; nothing to judge by is no pass, and no concession hides it. */
export function worstVerdict(verdicts: readonly OverallVerdict[]): OverallVerdict {
  let worst = -1
  for (const verdict of verdicts) worst = Math.max(worst, fromBest.indexOf(verdict))
  const found = fromBest[worst] ?? 'open'
  return found === 'conceded' && verdicts.includes('open') ? 'conceded-open' : found
}
