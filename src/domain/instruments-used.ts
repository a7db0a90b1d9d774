import { currentOnly } from './current-only.ts'
import type { Evidence } from './evidence.ts'
import type { InstrumentUse } from './instrument.ts'
import { instrumentsOfValue } from './instruments-of-value.ts'
import { standingReadings, standingTests, standingValues } from './standing.ts'

/** Behind the records that speak for the seal, as found and as left. */
export function instrumentsUsed(evidence: Evidence): readonly InstrumentUse[] {
  const uses = [
    ...standingReadings(evidence).flatMap((one) => [one.lamp, one.flat]),
    ...standingTests(evidence.staticTests).flatMap((one) => [
      one.gauge,
      one.thermometer,
      one.volume,
    ]),
    ...standingValues(evidence.measuredValues).flatMap(instrumentsOfValue),
    ...currentOnly(evidence.wearTracks).map((one) => one.instrument),
    ...currentOnly(evidence.springChecks).map((one) => one.instrument),
  ]
  return uses.filter((use) => use !== null)
}
