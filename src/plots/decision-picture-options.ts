/** A place on either side, in the unit of the result; null on a side without a limit. */
export interface SidePair {
  readonly lower: number | null
  readonly upper: number | null
}

/** What a picture of a decision shows. */
export interface DecisionPictureOptions {
  /** The result, in the unit of the limits. */
  readonly value: number
  readonly expandedUncertainty: number
  readonly standardUncertainty: number
  readonly lowerLimit: number | null
  readonly upperLimit: number | null
  /** Within these the rule accepts. */
  readonly acceptanceLimits: SidePair
  /** Beyond these it rejects; where they lie outside the limits, that band is hatched too. */
  readonly rejectionLimits?: SidePair | undefined
  /** The quantity can't be below 0: what is known is cut there. */
  readonly isNonNegative?: boolean | undefined
  /** As printed: the picture rounds nothing itself. Those of a side without a limit are ''. */
  readonly labels: {
    readonly lowerLimit: string
    readonly upperLimit: string
    readonly lowerAcceptance: string
    readonly upperAcceptance: string
    readonly value: string
    /** The shaded share of what is known. */
    readonly beyond: string
  }
  readonly widthPx: number
}
