/** An axis that lies off another, seen from the seal; angles clockwise, 0 at the mark on top. */
export interface PictureOffset {
  readonly offsetUm: number
  readonly directionDeg: number
}

/** A face that is not square: its height over the circle that was swept, and where it stands out. */
export interface PictureTilt {
  readonly heightUm: number
  /** Where it is nearest to the seal. */
  readonly highDeg: number
}

/** What the combined view shows; null: not surveyed, or without a direction. */
export interface AlignmentPictureOptions {
  /** 320 to 600; the height follows. */
  readonly widthPx: number
  /** Of the shaft at the seal from the axis that it turns about. */
  readonly shaft: PictureOffset | null
  readonly sleeve: PictureOffset | null
  /** Of the register of the chamber from the axis of the shaft. */
  readonly register: PictureOffset | null
  readonly chamberFace: PictureTilt | null
  readonly seatFace: PictureTilt | null
  readonly texts: AlignmentPictureTexts
}

export interface AlignmentPictureTexts {
  readonly mark: string
  readonly angle: (angleDeg: number) => string
  readonly endView: string
  readonly sideView: string
  readonly scale: (um: number) => string
  readonly amount: (um: number) => string
  readonly move: string
  readonly afterMove: string
  readonly register: string
  readonly shaft: string
  readonly runOutCircle: string
  readonly sleeve: string
  readonly shim: string
  readonly square: string
  readonly chamberFace: string
  readonly seatFace: string
  readonly high: (angleDeg: number) => string
  readonly low: (angleDeg: number) => string
}
