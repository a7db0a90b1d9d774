import type { PointPx } from './path-data.ts'

/** How far a turn has come, position by position. */
export interface SurveyDialOptions {
  /** Width and height of the drawing, px, 280 to 900. */
  readonly sizePx: number
  /** Outside of a shaft or sleeve, inside of a bore, or the face round it. */
  readonly surface: 'outside' | 'inside' | 'face'
  readonly anglesDeg: readonly number[]
  readonly isClockwise: boolean
  /** Whether the part turns under a standing indicator: the next position then lies on top. */
  readonly isIndicatorStanding: boolean
  /** Places in anglesDeg that have a reading in this turn. */
  readonly doneIndexes: readonly number[]
  /** Place in anglesDeg; its length means the closing reading; null: the turn is done. */
  readonly nextIndex: number | null
  /** Whether the turn ends with a closing reading at its first position. */
  readonly isClosed: boolean
  readonly texts: {
    /** Number of a position as a person counts, from 1. */
    readonly position: (index: number) => string
    readonly mark: string
  }
}

/** Where each position lies in the drawing, for who wants to make it a target. */
export interface SurveyDialPlace {
  readonly index: number
  readonly at: PointPx
  readonly radiusPx: number
}
