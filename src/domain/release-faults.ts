import { blocksRelease } from './blocks-release.ts'
import type { Characteristic } from './characteristic.ts'
import { type CountedResult, countedResults } from './counted-results.ts'
import { didTheWork } from './did-the-work.ts'
import type { Evidence } from './evidence.ts'
import type { InstrumentUse } from './instrument.ts'
import { instrumentsUsed } from './instruments-used.ts'
import type { JudgedReason, Verdict } from './judged.ts'
import { missingForHandOver } from './missing-for-hand-over.ts'
import type { HandOver } from './release.ts'
import { standingDoubts } from './standing-doubts.ts'
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
  /** Found out of tolerance after its last good calibration; the records were not answered for. */
  | { readonly id: 'instrument-in-doubt'; readonly numbers: readonly string[] }
  | { readonly id: 'instrument-not-acknowledged'; readonly numbers: readonly string[] }

/** A result that fails, fails conditionally or can't be decided, without a concession. */
type ResultFails = Pick<CountedResult, 'componentKind' | 'section'> & {
  readonly id: 'result-fails'
  readonly characteristic: Characteristic
  readonly verdict: Verdict
  readonly why: JudgedReason
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
  const { evidence, user, handOver, acknowledgement = '' } = question
  const faults: ReleaseFault[] = []
  if (user.role !== 'inspector' || !user.isActive) faults.push({ id: 'not-inspector' })
  if (didTheWork(evidence, user.id, handOver)) faults.push({ id: 'lapped-or-tested' })
  faults.push(...handOverFaults(question))
  if (missingForHandOver(evidence).length > 0) faults.push({ id: 'something-missing' })
  faults.push(...failingResults(evidence))
  const doubted = namesOnce(standingDoubts(evidence).map((one) => one.instrumentNumber))
  if (doubted.length > 0) faults.push({ id: 'instrument-in-doubt', numbers: doubted })
  const numbers = namesOnce(
    usesOutOfCalibration(evidence)
      .filter((use) => use.exception === undefined)
      .map((use) => use.number),
  )
  if (numbers.length > 0 && acknowledgement.trim().length < acknowledgementLength.min) {
    faults.push({ id: 'instrument-not-acknowledged', numbers })
  }
  return faults
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
  return countedResults(evidence)
    .filter((one) => blocksRelease(one.judged.verdict) && one.concession === null)
    .map(({ judged: { characteristic, verdict, why }, componentKind, section }) => {
      return { id: 'result-fails', characteristic, verdict, why, componentKind, section }
    })
}

/**
 * Of the records that speak for the seal, as found and as left. A use that an inspector allowed
 * beforehand is among them and needs no second word.
 */
export function usesOutOfCalibration(evidence: Evidence): readonly InstrumentUse[] {
  return instrumentsUsed(evidence).filter(
    (use) => use.status !== 'in-calibration' || use.exception !== undefined,
  )
}

function namesOnce(names: readonly string[]): readonly string[] {
  return [...new Set(names)]
}
