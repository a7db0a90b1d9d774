import type { Evidence } from './evidence.ts'
import type { FlatnessReading } from './flatness.ts'
import { judgeFlatness } from './judge-flatness.ts'
import { judgeStaticTest } from './judge-static-test.ts'
import type { Judged } from './judged.ts'
import type { StaticTest } from './static-test.ts'

export type JudgedReading = {
  readonly reading: FlatnessReading
  readonly judged: Judged
  /** What took its place; null for a reading that stands. */
  readonly replacedBy: FlatnessReading | null
}

export type JudgedTest = {
  readonly test: StaticTest
  /** Drop, then leak rate. */
  readonly judged: readonly Judged[]
  readonly replacedBy: StaticTest | null
}

/** Every reading of an order beside its verdict, replaced ones too, oldest first. */
export function judgedReadings(evidence: Evidence): readonly JudgedReading[] {
  const { flatnessReadings, limitSet, seal } = evidence
  return flatnessReadings.map((reading) => {
    const material = seal.components.find((one) => one.id === reading.componentId)?.material
    const judged = judgeFlatness(reading, limitSet, material ?? null)
    return { reading, judged, replacedBy: replacing(flatnessReadings, reading) }
  })
}

/** Every static test of an order beside its verdicts, replaced ones too, oldest first. */
export function judgedTests(evidence: Evidence): readonly JudgedTest[] {
  const { staticTests, limitSet } = evidence
  return staticTests.map((test) => {
    const judged = judgeStaticTest(test, limitSet)
    return { test, judged, replacedBy: replacing(staticTests, test) }
  })
}

function replacing<T extends { readonly id: number; readonly replacedById: number | null }>(
  records: readonly T[],
  replaced: T,
): T | null {
  return records.find((one) => one.id === replaced.replacedById) ?? null
}
