/** An edge in numbers as typed, pixels of the upright photograph. */
export type EdgeValues = {
  readonly cx: string
  readonly cy: string
  readonly rx: string
  readonly ry: string
  readonly rotationDeg: string
}

/** The form of a photograph as typed: every value a text, '' where nothing was entered. */
export type FacePhotoValues = {
  readonly kind: string
  readonly condition: string
  readonly lampInstrumentId: string
  readonly opticalFlatInstrumentId: string
  readonly outerDiameterMm: string
  readonly innerDiameterMm: string
  readonly outer: EdgeValues
  readonly inner: EdgeValues
  /** A mark a line: across, down, order. */
  readonly points: string
  readonly increasingTowards: string
  readonly opensTowardsDeg: string
  readonly pressedPhotoId: string
  readonly gridDirectionDeg: string
  readonly gridSpacingPx: string
  readonly gridOffsetPx: string
  readonly oneWayBands: string
  readonly otherWayBands: string
  readonly soakMin: string
  readonly temperatureC: string
  readonly note: string
  readonly reason: string
  readonly confirmBeyondWindow: string
}
