import type { SurveyRecord } from './dial-survey.ts'
import type { Evidence } from './evidence.ts'
import type { FlatnessReading } from './flatness.ts'
import { directionCount } from './parse-directions.ts'
import { type Arrangement, type FaceKind, faceKinds } from './seal.ts'
import { standingReadings, standingTests } from './standing.ts'
import type { TestSection } from './static-test.ts'

export type MissingKind =
  | 'decontamination'
  | 'flatness'
  | 'readable-flatness'
  | 'second-direction'
  | 'static-test'
  | 'open-survey'

/** `faceKind` is absent where it is no single face: the rest, or a seal without any face. */
export type Missing = {
  readonly kind: MissingKind
  readonly faceKind?: FaceKind
  /** Of `static-test`: the half of a dual seal that is left; absent where no test counts yet. */
  readonly section?: TestSection
  /** Of `second-direction`: how many are needed and how many were read. */
  readonly with?: { readonly neededCount: number; readonly readCount: number }
  /** Of `open-survey`: the one that is neither recorded nor given up. */
  readonly survey?: Pick<SurveyRecord, 'id' | 'characteristic'>
}

/**
 * What must still be recorded before an order can be handed over, in the order of the work. What
 * was recorded and fails is not missing: that is the inspector's to see. A survey that was left
 * half-way is ended or given up first: afterwards nothing is recorded, and it would stay open.
 */
export function missingForHandOver(evidence: Evidence): readonly Missing[] {
  const { workOrder, seal, limitSet, staticTests } = evidence
  const missing: Missing[] = []
  if (workOrder.decontamination === 'not-stated') missing.push({ kind: 'decontamination' })
  const faces = faceKinds.filter((kind) => seal.components.some((one) => one.kind === kind))
  if (faces.length === 0) missing.push({ kind: 'flatness' })
  const asLeft = standingReadings(evidence).filter((one) => one.condition === 'as-left')
  for (const faceKind of faces) {
    // One that was read whole and counted beside it needs no more than the whole reading.
    const ofFace = asLeft.filter((one) => one.faceKind === faceKind)
    const reading = ofFace.find((one) => one.sees === 'whole-surface') ?? ofFace.at(-1)
    const fault = missingOfFace(reading, faceKind, limitSet.directionsRequiredCount)
    if (fault !== undefined) missing.push(fault)
  }
  const sections = standingTests(staticTests).map((one) => one.section)
  return [
    ...missing,
    ...missingTests(seal.arrangement, sections),
    ...openSurveys(evidence.dialSurveys),
  ]
}

/** A dual seal is two seals: it is tested as a whole, or each of the two. */
function missingTests(arrangement: Arrangement, sections: readonly TestSection[]): Missing[] {
  const isDual = arrangement === 'dual' || arrangement === 'cartridge-dual'
  const kind = 'static-test' as const
  if (!isDual) return sections.length === 0 ? [{ kind }] : []
  if (sections.includes('whole')) return []
  const left = (['inboard', 'outboard'] as const).filter((one) => !sections.includes(one))
  return left.length === 2 ? [{ kind }] : left.map((section) => ({ kind, section }))
}

function openSurveys(surveys: readonly SurveyRecord[]): readonly Missing[] {
  return surveys
    .filter((one) => one.end === null)
    .map(({ id, characteristic }) => ({ kind: 'open-survey', survey: { id, characteristic } }))
}

function missingOfFace(
  reading: FlatnessReading | undefined,
  faceKind: FaceKind,
  neededCount: number,
): Missing | undefined {
  if (reading === undefined) return { kind: 'flatness', faceKind }
  if (reading.flatnessUm === null) return { kind: 'readable-flatness', faceKind }
  if (reading.sees === 'whole-surface') return undefined
  const readCount = directionCount(reading.directions)
  if (readCount >= neededCount) return undefined
  return { kind: 'second-direction', faceKind, with: { neededCount, readCount } }
}
