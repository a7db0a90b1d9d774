import type { Evidence } from './evidence.ts'
import type { FlatnessReading } from './flatness.ts'
import { directionCount } from './parse-directions.ts'
import { type FaceKind, faceKinds } from './seal.ts'
import { standingReadings, standingTests } from './standing.ts'

export type MissingKind =
  | 'decontamination'
  | 'flatness'
  | 'readable-flatness'
  | 'second-direction'
  | 'static-test'

/** `faceKind` is absent where it is no single face: the rest, or a seal without any face. */
export type Missing = {
  readonly kind: MissingKind
  readonly faceKind?: FaceKind
  /** Of `second-direction`: how many are needed and how many were read. */
  readonly with?: { readonly neededCount: number; readonly readCount: number }
}

/**
 * What must still be recorded before an order can be handed over, in the order of the work. What
 * was recorded and fails is not missing: that is the inspector's to see.
 */
export function missingForHandOver(evidence: Evidence): readonly Missing[] {
  const { workOrder, seal, limitSet, flatnessReadings, staticTests } = evidence
  const missing: Missing[] = []
  if (workOrder.decontamination === 'not-stated') missing.push({ kind: 'decontamination' })
  const faces = faceKinds.filter((kind) => seal.components.some((one) => one.kind === kind))
  if (faces.length === 0) missing.push({ kind: 'flatness' })
  const asLeft = standingReadings(flatnessReadings).filter((one) => one.condition === 'as-left')
  for (const faceKind of faces) {
    const reading = asLeft.find((one) => one.faceKind === faceKind)
    const fault = missingOfFace(reading, faceKind, limitSet.directionsRequiredCount)
    if (fault !== undefined) missing.push(fault)
  }
  if (standingTests(staticTests).length === 0) missing.push({ kind: 'static-test' })
  return missing
}

function missingOfFace(
  reading: FlatnessReading | undefined,
  faceKind: FaceKind,
  neededCount: number,
): Missing | undefined {
  if (reading === undefined) return { kind: 'flatness', faceKind }
  if (reading.flatnessUm === null) return { kind: 'readable-flatness', faceKind }
  const readCount = directionCount(reading.directions)
  if (readCount >= neededCount) return undefined
  return { kind: 'second-direction', faceKind, with: { neededCount, readCount } }
}
