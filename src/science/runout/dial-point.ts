/** One reading of an indicator and where on the turn it was taken. */
export interface DialPoint {
  /** From the mark, in the direction of turning; any turn of 360 is the same place. */
  readonly angleDeg: number
  /** Higher where the surface comes nearer to the indicator; zeroed anywhere. */
  readonly valueUm: number
}
