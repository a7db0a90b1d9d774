import type { SixteenPercentRule } from '../science/acceptance/sixteen-percent-rule.ts'
import type { CertifiedJudgement, Figure } from './certified-results.ts'
import type { MeasuredCharacteristic } from './characteristic.ts'
import type { FaceState } from './face-state.ts'
import type { ReadingCondition } from './flatness.ts'
import type { LengthUnit, TraceDirection } from './measured-value.ts'
import type { PrintedUnitId } from './printed-unit.ts'
import type { ComponentKind } from './seal.ts'

/** A figure read with an instrument; figures and limits in `unit`. */
export type CertifiedMeasuredValue = CertifiedJudgement & {
  readonly characteristic: MeasuredCharacteristic
  /** Null for what belongs to the machine. */
  readonly componentKind: ComponentKind | null
  readonly condition: ReadingCondition
  /** False where a later one of the same kind and condition has overtaken it. */
  readonly isNewest: boolean
  readonly unit: PrintedUnitId
  readonly value: Figure
  /** Value and expanded uncertainty rounded by one rule: `0.040 ± 0.016`. */
  readonly text: string
  /** Null where no uncertainty is known. */
  readonly coverageFactor: number | null
  /** The limit as it holds here, one per millimetre multiplied out. */
  readonly lower: Figure | null
  readonly upper: Figure | null
  /** As typed; empty in records that kept the result alone. */
  readonly readings: readonly string[]
  readonly readingUnit: LengthUnit
  readonly sizeMm: Figure | null
  readonly leverAngleDeg: Figure | null
  readonly cutOffMm: Figure | null
  /** Absent in records older than the question. */
  readonly traceDirection?: TraceDirection | null
  readonly tipRadiusUm?: Figure | null
  readonly evaluationLengthMm?: Figure | null
  /** How the face was when its finish was read: as stated, and by the lapping log. */
  readonly faceState?: FaceState | null
  readonly faceByLog?: FaceState | null
  /** Of a finish: its single traces; the rule is null without an upper limit. */
  readonly traces?: {
    readonly count: number
    readonly largest: Figure
    readonly rule: SixteenPercentRule | null
  }
  readonly temperatureHalfWidthK: Figure | null
  readonly settingStandardUncertaintyUm: Figure | null
  readonly note: string
  readonly method: string
  readonly instrumentNumbers: readonly string[]
  readonly recordedByName: string
  readonly recordedAt: string
}
