import { cycleBefore } from './cycle-before.ts'
import type { Evidence } from './evidence.ts'
import { type FaceState, stateAfter } from './face-state.ts'
import type { FlatnessReading } from './flatness.ts'
import { judgeFlatness } from './judge-flatness.ts'
import { judgeMeasuredValue } from './judge-measured-value.ts'
import { judgeStaticTest } from './judge-static-test.ts'
import type { Judged } from './judged.ts'
import type { MeasuredValue } from './measured-value.ts'
import type { StaticTest } from './static-test.ts'

export type JudgedReading = {
  readonly reading: FlatnessReading
  readonly judged: Judged
  /** What took its place; null for a reading that stands. */
  readonly replacedBy: FlatnessReading | null
  /** Number of the lap cycle after which it was read; null where there was none. */
  readonly afterCycle: number | null
}

export type JudgedTest = {
  readonly test: StaticTest
  /** Drop, then leak rate. */
  readonly judged: readonly Judged[]
  readonly replacedBy: StaticTest | null
}

export type JudgedValue = {
  readonly measured: MeasuredValue
  readonly judged: Judged
  readonly replacedBy: MeasuredValue | null
  /** As of a reading; null for what belongs to the machine. */
  readonly afterCycle: number | null
  /** How that cycle left the face. */
  readonly faceByLog: FaceState | null
}

/** Every reading of an order beside its verdict, replaced ones too, oldest first. */
export function judgedReadings(evidence: Evidence): readonly JudgedReading[] {
  const { flatnessReadings, lapCycles: cycles } = evidence
  return flatnessReadings.map((reading) => ({
    reading,
    judged: judgeFlatness(reading, evidence),
    replacedBy: replacing(flatnessReadings, reading),
    afterCycle: cycleBefore(reading, { readings: flatnessReadings, cycles })?.number ?? null,
  }))
}

/** Every static test of an order beside its verdicts, replaced ones too, oldest first. */
export function judgedTests(evidence: Evidence): readonly JudgedTest[] {
  const { staticTests } = evidence
  return staticTests.map((test) => ({
    test,
    judged: judgeStaticTest(test, evidence),
    replacedBy: replacing(staticTests, test),
  }))
}

/** Every value read with an instrument beside its verdict, replaced ones too, oldest first. */
export function judgedValues(evidence: Evidence): readonly JudgedValue[] {
  const { measuredValues, lapCycles: cycles } = evidence
  return measuredValues.map((measured) => {
    const before = cycleBefore(measured, { readings: measuredValues, cycles })
    return {
      measured,
      judged: judgeMeasuredValue(measured, evidence),
      replacedBy: replacing(measuredValues, measured),
      afterCycle: before?.number ?? null,
      faceByLog: before === null ? null : stateAfter[before.cycle.purpose],
    }
  })
}

function replacing<T extends { readonly id: number; readonly replacedById: number | null }>(
  records: readonly T[],
  replaced: T,
): T | null {
  return records.find((one) => one.id === replaced.replacedById) ?? null
}
