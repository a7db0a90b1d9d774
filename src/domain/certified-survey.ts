import type { Figure } from './certified-results.ts'
import type { SurveyCharacteristic } from './characteristic.ts'
import type {
  ContactPoint,
  FloatHold,
  SurveyPlace,
  SweptSurface,
  TurnedPart,
} from './dial-survey.ts'
import type { DrawnSurveyPlane } from './drawn-survey.ts'
import type { ReadingCondition } from './flatness.ts'
import type { LengthUnit } from './measured-value.ts'
import type { PrintedUnitId } from './printed-unit.ts'
import type { SurveyCaution } from './survey-result.ts'

/** Figures of one swept circle, in um and degrees as printed. */
export type CertifiedSurveyPlane = DrawnSurveyPlane & {
  readonly totalUm: Figure
  /** `22.1 ± 3.0` where its uncertainty is known. */
  readonly eccentricityText: string
  /** Null where it has no direction. */
  readonly directionText: string | null
  readonly fittedRunOutUm: Figure
  readonly roundnessLeastSquaresUm: Figure
  readonly roundnessMinimumZoneUm: Figure
  readonly couldBeMissedUm: Figure
  /** The largest of its turns; null where none was closed. */
  readonly closingDriftUm: Figure | null
  readonly floatRangeUm: Figure | null
}

/** A row of the readings as typed: a position of a plane, one text for each turn. */
export type CertifiedSurveyRow = {
  readonly planeIndex: number
  /** Null at the ends of a float or lift. */
  readonly angleDeg: number | null
  /** `first` and `second` end of a float or lift; `closing` of a turn. */
  readonly spot: 'position' | 'closing' | 'first-end' | 'second-end'
  readonly indicator: 'first' | 'second'
  readonly typed: readonly string[]
}

/** A survey as it is certified and shown: what was read, drawn and computed, complete in itself. */
export type CertifiedSurvey = {
  readonly characteristic: SurveyCharacteristic
  readonly condition: ReadingCondition
  /** False where a later value of the same kind and condition has overtaken it. */
  readonly isNewest: boolean
  /** Total with its expanded uncertainty in `unit`, as judged. */
  readonly text: string
  readonly unit: PrintedUnitId
  /** As it holds here; null: none. */
  readonly limitUm: number | null
  /** Null where a program did not say. */
  readonly place: SurveyPlace | null
  readonly turned: TurnedPart
  readonly surface: SweptSurface
  readonly contact: ContactPoint | null
  readonly floatHeld: FloatHold
  readonly isClockwise: boolean
  readonly leverAngleDeg: Figure | null
  readonly sweptDiameterMm: Figure | null
  readonly sealMeanDiameterMm: Figure | null
  readonly sagUm: Figure | null
  readonly topAngleDeg: Figure | null
  readonly lockOutReference: string
  readonly hasSecondIndicator: boolean
  /** Null where there is none; absent in certificates older than the question. */
  readonly secondInstrumentNumber?: string | null
  readonly readingUnit: LengthUnit
  readonly rows: readonly CertifiedSurveyRow[]
  readonly planes: readonly CertifiedSurveyPlane[]
  readonly tilt: {
    readonly mrad: Figure
    readonly mmPerM: Figure
    readonly movementAtSealUm: Figure | null
  } | null
  readonly straightness: {
    readonly minimumZoneUm: Figure
    readonly bowUm: Figure
    readonly bowAtMm: Figure
  } | null
  readonly cautions: readonly SurveyCaution[]
  readonly instrumentNumber: string
  readonly recordedByName: string
  readonly recordedAt: string
}
