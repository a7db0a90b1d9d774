import type { Characteristic } from './characteristic.ts'
import type { Evidence } from './evidence.ts'
import type { InstrumentUse } from './instrument.ts'
import { judgeFlatness } from './judge-flatness.ts'
import { judgeStaticTest } from './judge-static-test.ts'
import type { JudgedReason } from './judged.ts'
import { missingForHandOver } from './missing-for-hand-over.ts'
import type { HandOver } from './release.ts'
import type { FaceKind } from './seal.ts'
import { standingReadings, standingTests } from './standing.ts'
import type { TestSection } from './static-test.ts'
import type { User } from './user.ts'

/** The sentence by which an inspector takes an instrument out of calibration on themselves. */
export const acknowledgementLength = { min: 10, max: 400 } as const

/** Why an order can't be released; the sentences stand in `views/words`. */
export type ReleaseFault =
  | { readonly id: 'not-inspector' }
  /** EN 10204:2004, type 3.1: the releaser is independent of the manufacturing department. */
  | { readonly id: 'lapped-or-tested' }
  | { readonly id: 'not-handed-over' }
  | { readonly id: 'already-decided'; readonly byName: string }
  | { readonly id: 'something-missing' }
  | ResultFails
  | { readonly id: 'instrument-not-acknowledged'; readonly numbers: readonly string[] }

type ResultFails = {
  readonly id: 'result-fails'
  readonly characteristic: Characteristic
  readonly why: JudgedReason
  readonly faceKind: FaceKind | null
  readonly section: TestSection | null
}

export type ReleaseQuestion = {
  readonly evidence: Evidence
  readonly user: Pick<User, 'id' | 'role' | 'isActive'>
  readonly handOver: HandOver | null
  /** What the inspector wrote; '' or absent where nothing was written. */
  readonly acknowledgement?: string
}

/** Everything that stands between an order and its release; empty when it can be released. */
export function releaseFaults(question: ReleaseQuestion): readonly ReleaseFault[] {
  const { evidence, user, acknowledgement = '' } = question
  const faults: ReleaseFault[] = []
  if (user.role !== 'inspector' || !user.isActive) faults.push({ id: 'not-inspector' })
  if (didTheWork(question)) faults.push({ id: 'lapped-or-tested' })
  faults.push(...handOverFaults(question))
  if (missingForHandOver(evidence).length > 0) faults.push({ id: 'something-missing' })
  faults.push(...failingResults(evidence))
  const numbers = [...new Set(usesOutOfCalibration(evidence).map((use) => use.number))]
  if (numbers.length > 0 && acknowledgement.trim().length < acknowledgementLength.min) {
    faults.push({ id: 'instrument-not-acknowledged', numbers })
  }
  return faults
}

/** Recorded a reading or a test, one since replaced too, or handed the order over. */
function didTheWork({ evidence, user, handOver }: ReleaseQuestion): boolean {
  const records = [...evidence.flatnessReadings, ...evidence.staticTests]
  return records.some((one) => one.recordedById === user.id) || handOver?.byId === user.id
}

function handOverFaults({ evidence, handOver }: ReleaseQuestion): readonly ReleaseFault[] {
  const decision = evidence.decisions.find((one) => one.handOverId === handOver?.id)
  if (decision !== undefined) return [{ id: 'already-decided', byName: decision.byName }]
  const { workOrder } = evidence
  const isHandedOver =
    handOver !== null &&
    handOver.workOrderId === workOrder.id &&
    handOver.id === evidence.handOver?.id &&
    workOrder.stage === 'handed-over'
  return isHandedOver ? [] : [{ id: 'not-handed-over' }]
}

function failingResults(evidence: Evidence): readonly ResultFails[] {
  const { limitSet, seal } = evidence
  const ofFaces = standingReadings(evidence.flatnessReadings)
    .filter((one) => one.condition === 'as-left')
    .flatMap((reading) => {
      const component = seal.components.find((one) => one.id === reading.componentId)
      const judged = judgeFlatness(reading, limitSet, component?.material ?? null)
      return { judged, faceKind: reading.faceKind, section: null }
    })
  const ofTests = standingTests(evidence.staticTests).flatMap((test) =>
    judgeStaticTest(test, limitSet).map((judged) => ({
      judged,
      faceKind: null,
      section: test.section,
    })),
  )
  return [...ofFaces, ...ofTests]
    .filter(({ judged }) => judged.verdict === 'fail')
    .map(({ judged: { characteristic, why }, faceKind, section }) => {
      return { id: 'result-fails', characteristic, why, faceKind, section }
    })
}

/** Of the readings and tests that speak for the seal, as found and as left. */
export function usesOutOfCalibration(evidence: Evidence): readonly InstrumentUse[] {
  const readings = standingReadings(evidence.flatnessReadings).flatMap((one) => [
    one.lamp,
    one.flat,
  ])
  const tests = standingTests(evidence.staticTests).flatMap((one) => [one.gauge, one.thermometer])
  return [...readings, ...tests]
    .filter((use) => use !== null)
    .filter((use) => use.status !== 'in-calibration')
}
