import type { SpringCaution } from './answer-spring.ts'
import type { Assembly, ClipState } from './assembly.ts'
import type { Figure } from './certified-results.ts'
import type { TrackVerdict } from './compare-worn-track.ts'
import type { ReadingCondition } from './flatness.ts'
import type { AssemblyVerdict } from './judge-assembly.ts'
import type { FaceKind } from './seal.ts'

/** Who recorded it, and why it took another's place; newest reason first. */
export type CertifiedHand = {
  readonly note: string
  readonly recordedByName: string
  readonly recordedAt: string
  readonly corrections: readonly {
    readonly reason: string
    readonly byName: string
    readonly at: string
  }[]
}

/** The worn track of a face as found, and how far it says that a face moved. */
export type CertifiedTrack = CertifiedHand & {
  readonly face: FaceKind
  readonly noseWidthMm: Figure
  /** The widest place. */
  readonly trackWidthMm: Figure
  readonly movementUm: Figure
  readonly expandedUncertaintyUm: Figure | null
  readonly offsetMm: Figure | null
  readonly offsetHour: number | null
  readonly verdict: TrackVerdict
  /** What surveys found that widens it, least and most; null: none of that was swept. */
  readonly foundUm: { readonly least: Figure; readonly most: Figure } | null
  readonly instrumentNumber: string | null
}

/** The straight line of all springs together, for its drawing. */
export type CertifiedLine = {
  readonly freeLengthMm: number
  readonly loadPerMmN: number
  readonly points: readonly { readonly lengthMm: number; readonly loadN: number }[]
}

export type CertifiedSpring = CertifiedHand & {
  readonly condition: ReadingCondition
  readonly springsCount: number
  readonly freeLengthMm: Figure
  readonly newLengthMm: Figure | null
  readonly setMm: Figure | null
  readonly rateNPerMm: Figure | null
  readonly isRateStated: boolean
  readonly workingLengthMm: Figure
  readonly solidLengthMm: Figure | null
  readonly loadN: Figure | null
  readonly expandedUncertaintyN: Figure | null
  readonly coverageFactor: number | null
  readonly facePressureMPa: Figure | null
  readonly remainingTravelMm: Figure | null
  readonly loadPerMmN: Figure | null
  readonly line: CertifiedLine | null
  readonly cautions: readonly SpringCaution[]
  readonly instrumentNumber: string | null
}

/** How the seal leaves, against what its design asks for. */
export type CertifiedAssembly = CertifiedHand & {
  readonly workingLengthMm: Figure
  readonly designWorkingLengthMm: Figure | null
  readonly workingLengthToleranceMm: Figure | null
  readonly workingLength: AssemblyVerdict
  readonly loadN: Figure | null
  /** `corrected-check`: by a check of the springs that was corrected since, so it holds no longer. */
  readonly loadFrom: Assembly['loadFrom'] | 'corrected-check'
  readonly designLoadN: Figure | null
  readonly loadTolerancePercent: Figure | null
  readonly load: AssemblyVerdict
  readonly line: CertifiedLine | null
  readonly designSource: string
  readonly setScrews: readonly {
    readonly name: string
    readonly quantityCount: number
    readonly torqueNm: Figure | null
    readonly designTorqueNm: Figure | null
    readonly verdict: AssemblyVerdict
  }[]
  readonly torqueTolerancePercent: Figure | null
  readonly clips: ClipState
  readonly clipsCount: number | null
  readonly lubricant: string
  readonly isTurningFree: boolean
  readonly isAmiss: boolean
}
