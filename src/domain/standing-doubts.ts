import { combinedParts } from './combined-parts.ts'
import { currentOnly } from './current-only.ts'
import type { Doubt } from './doubt.ts'
import type { Evidence } from './evidence.ts'
import type { UsedKind } from './result-subject.ts'
import { standingReadings, standingTests, standingValues } from './standing.ts'

/**
 * Doubts about records that speak for the seal, which nobody has answered by saying that the record
 * stands. One that was to be repeated is gone once it was. A combined reading stands on its parts.
 */
export function standingDoubts(evidence: Evidence): readonly Doubt[] {
  const ids: Readonly<Record<UsedKind, readonly number[]>> = {
    'flatness-reading': standingReadings(evidence).flatMap((one) => [
      one.id,
      ...combinedParts([one], evidence.flatnessReadings).map((part) => part.id),
    ]),
    'static-test': standingTests(evidence.staticTests).map((one) => one.id),
    'measured-value': standingValues(evidence.measuredValues).map((one) => one.id),
    'wear-track': currentOnly(evidence.wearTracks).map((one) => one.id),
    'spring-check': currentOnly(evidence.springChecks).map((one) => one.id),
  }
  return evidence.doubts.filter(
    (one) => one.answer !== 'stands' && ids[one.subjectKind].includes(one.subjectId),
  )
}
