/** One reading of a turn, as an indicator shows it. */
export interface PolarReading {
  readonly angleDeg: number
  readonly valueUm: number
}

/** What a polar plot of a survey shows. All texts come in: the drawing rounds nothing itself. */
export interface SurveyPolarOptions {
  /** Width of the drawing, px, 280 to 900; the words below the circle make it higher. */
  readonly sizePx: number
  /** Whether angles rise clockwise as it is seen. */
  readonly isClockwise: boolean
  /** The readings that stand, turn by turn in the order taken; those overtaken are left out. */
  readonly turns: readonly (readonly PolarReading[])[]
  /** Closing readings of the turns, at the first position again. */
  readonly closing: readonly PolarReading[]
  /** Mean of the turns at each position: what is joined, and what the limit is drawn about. */
  readonly points: readonly PolarReading[]
  /** First wave of the readings: mean + eccentricity cos(angle - direction); null: not fitted. */
  readonly fit: {
    readonly meanUm: number
    readonly eccentricityUm: number
    /** Null where it is too small against its uncertainty to have a direction. */
    readonly directionDeg: number | null
  } | null
  /** Two circles about one centre, nearest to each other, that hold every reading. */
  readonly minimumZone: {
    readonly cosineUm: number
    readonly sineUm: number
    readonly innerUm: number
    readonly outerUm: number
  } | null
  /** Total movement allowed; null: not limited, or its size is not known. */
  readonly limitUm: number | null
  /** Of the circle that was swept: for the times by which heights are drawn larger. */
  readonly sweptDiameterMm: number | null
  readonly texts: SurveyPolarTexts
}

export interface SurveyPolarTexts {
  readonly angle: (angleDeg: number) => string
  /** At 0, where the part is marked. */
  readonly mark: string
  readonly scale: (um: number) => string
  readonly timesLarger: (times: number) => string
  readonly turn: (turnIndex: number) => string
  readonly closing: string
  readonly joined: string
  readonly fitted: string
  /** Where the first wave is highest. */
  readonly highest: string
  readonly limit: string
  readonly minimumZone: string
}
