import type { CentreLineStraightness } from '../science/runout/centre-line-straightness.ts'
import type { DialPoint } from '../science/runout/dial-point.ts'
import type { FaceTilt } from '../science/runout/face-tilt.ts'
import type { TurnFigures } from '../science/runout/turn-figures.ts'

/** What to know about a survey beside its figures. */
export const surveyCautions = [
  'drift',
  'few-positions',
  'positions-bunched',
  'float-not-held',
  'vee-blocks',
  'direction-unsure',
  'lobes-unseen',
] as const
export type SurveyCaution = (typeof surveyCautions)[number]

/** One turn: its total, and how far the needle came from its first reading when it closed. */
export type SurveyTurn = {
  readonly totalUm: number
  readonly closingDriftUm: number | null
  /** Whether that is more than two readings of this indicator may differ by. */
  readonly isDriftLarge: boolean
}

export type SurveyPlane = {
  /** Null where the survey has no planes. */
  readonly positionMm: number | null
  readonly turns: readonly SurveyTurn[]
  /** Mean of the turns, corrected for sag, float and lever. */
  readonly points: readonly DialPoint[]
  readonly figures: TurnFigures
  /** What the shaft floated through, where two indicators told. */
  readonly floatRangeUm: number | null
}

/** What the readings of a survey say; recomputed from them bit for bit. */
export type SurveyResult = {
  /** Empty for a survey between two ends. */
  readonly planes: readonly SurveyPlane[]
  /** The total of each turn, or the way between the ends of each repeat: they are judged. */
  readonly totalsUm: readonly number[]
  /** Plane that they are of. */
  readonly judgedPlaneIndex: number
  readonly tilt: FaceTilt | null
  readonly straightness: CentreLineStraightness | null
  /** Of one reading, as far as it is known; null: nothing is. */
  readonly readingStandardUncertaintyUm: number | null
  readonly cautions: readonly SurveyCaution[]
}
