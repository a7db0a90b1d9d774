import { blocksRelease } from './blocks-release.ts'
import { type CountedResult, countedResults } from './counted-results.ts'
import type { Evidence } from './evidence.ts'
import { faceKinds } from './seal.ts'
import { standingTests } from './standing.ts'
import { type OverallVerdict, worstVerdict } from './worst-verdict.ts'

/**
 * One verdict over an order: the worst of what counts. A face that was not read and a test that was
 * not made leave it open; what the customer takes all the same is told apart from what passes.
 */
export function overallVerdict(evidence: Evidence): OverallVerdict {
  const results = countedResults(evidence)
  const faces = faceKinds.filter((kind) =>
    evidence.seal.components.some((one) => one.kind === kind),
  )
  const isRead = (kind: CountedResult['componentKind']) =>
    results.some((one) => one.subjectKind === 'flatness-reading' && one.componentKind === kind)
  const isMissing = !faces.every(isRead) || standingTests(evidence.staticTests).length === 0
  return worstVerdict([
    ...results.filter((one) => !hasOtherLimit(one, results)).map(verdictOf),
    ...(isMissing ? (['open'] as const) : []),
  ])
}

/** One limit is enough for a test, by drop or by leak rate, where the set has no other. */
function hasOtherLimit(result: CountedResult, results: readonly CountedResult[]): boolean {
  return (
    result.subjectKind === 'static-test' &&
    result.judged.why === 'no-limit' &&
    results.some(
      (one) =>
        one.subjectKind === 'static-test' &&
        one.subjectId === result.subjectId &&
        one.judged.why !== 'no-limit',
    )
  )
}

function verdictOf({ judged, concession }: CountedResult): OverallVerdict {
  return concession !== null && blocksRelease(judged.verdict) ? 'conceded' : judged.verdict
}
