import type { Doubt } from './doubt.ts'
import type { Evidence } from './evidence.ts'
import type { ResultKind } from './result-subject.ts'
import { standingReadings, standingTests, standingValues } from './standing.ts'

/**
 * Doubts about records that speak for the seal, which nobody has answered by saying that the record
 * stands. One that was to be repeated is gone once it was.
 */
export function standingDoubts(evidence: Evidence): readonly Doubt[] {
  const ids: Readonly<Record<ResultKind, readonly number[]>> = {
    'flatness-reading': standingReadings(evidence).map((one) => one.id),
    'static-test': standingTests(evidence.staticTests).map((one) => one.id),
    'measured-value': standingValues(evidence.measuredValues).map((one) => one.id),
  }
  return evidence.doubts.filter(
    (one) => one.answer !== 'stands' && ids[one.subjectKind].includes(one.subjectId),
  )
}
