import type { Concession } from './concession.ts'
import type { Evidence } from './evidence.ts'
import { judgeFlatness } from './judge-flatness.ts'
import { judgeMeasuredValue } from './judge-measured-value.ts'
import { judgeStaticTest } from './judge-static-test.ts'
import type { Judged } from './judged.ts'
import type { ResultSubject } from './result-subject.ts'
import type { ComponentKind } from './seal.ts'
import { standingReadings, standingTests, standingValues } from './standing.ts'
import type { TestSection } from './static-test.ts'

/** One result that counts for the release, and where on the seal it was measured. */
export type CountedResult = ResultSubject & {
  readonly judged: Judged
  /** Null for what belongs to the machine or to the seal as a whole. */
  readonly componentKind: ComponentKind | null
  readonly section: TestSection | null
  readonly concession: Concession | null
}

/**
 * What speaks for the seal as it leaves: each face as left, each section's newest test by drop and
 * by leak rate, each value as left. As found, a worn face fails and is no news.
 */
export function countedResults(evidence: Evidence): readonly CountedResult[] {
  const counted = (result: Omit<CountedResult, 'concession'>): CountedResult => ({
    ...result,
    concession: evidence.concessions.find((one) => isAbout(one, result)) ?? null,
  })
  const kindOf = (id: number | null): ComponentKind | null =>
    evidence.seal.components.find((one) => one.id === id)?.kind ?? null
  const readings = standingReadings(evidence).filter(isAsLeft)
  const values = standingValues(evidence.measuredValues).filter(isAsLeft)
  return [
    ...readings.map((one) =>
      counted({
        subjectKind: 'flatness-reading',
        subjectId: one.id,
        judged: judgeFlatness(one, evidence),
        componentKind: one.faceKind,
        section: null,
      }),
    ),
    ...values.map((one) =>
      counted({
        subjectKind: 'measured-value',
        subjectId: one.id,
        judged: judgeMeasuredValue(one, evidence),
        componentKind: kindOf(one.componentId),
        section: null,
      }),
    ),
    ...standingTests(evidence.staticTests).flatMap((one) =>
      judgeStaticTest(one, evidence).map((judged) =>
        counted({
          subjectKind: 'static-test',
          subjectId: one.id,
          judged,
          componentKind: null,
          section: one.section,
        }),
      ),
    ),
  ]
}

function isAsLeft(one: { readonly condition: 'as-found' | 'as-left' }): boolean {
  return one.condition === 'as-left'
}

function isAbout(concession: Concession, result: Omit<CountedResult, 'concession'>): boolean {
  return (
    concession.subjectKind === result.subjectKind &&
    concession.subjectId === result.subjectId &&
    concession.characteristic === result.judged.characteristic
  )
}
