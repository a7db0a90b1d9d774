import { bandHeightUm } from '../science/optics/band-height-um.ts'
import { lamps } from '../science/optics/lamps.ts'
import type { Ellipse } from '../science/photo/ellipse.ts'
import type { PhotoCaution, PhotoReading } from '../science/photo/photo-reading.ts'
import { photoFlatnessBudget } from '../science/uncertainty/photo-flatness-budget.ts'
import { type FlatnessSees, flatnessSees } from './flatness-sees.ts'
import { methods } from './methods.ts'
import { wavelengthOf } from './parse-lamp.ts'
import type { PhotoFlatnessRequest } from './parse-photo-flatness-request.ts'
import { type WholeFlatness, wholeFlatness } from './whole-flatness.ts'

export type PhotoFlatnessAnswer = WholeFlatness & {
  readonly method: string
  readonly wavelengthNm: number
  readonly bandHeightUm: number
  readonly sees: FlatnessSees
  readonly bandsSeen: number
  readonly quality: number
  readonly outer: Ellipse
  readonly inner: Ellipse
  readonly cautions: readonly PhotoCaution[]
}

/** Flatness of a whole face from what was read in a photograph; no record is made. */
export function answerPhotoFlatness(
  request: PhotoFlatnessRequest,
  reading: PhotoReading,
): PhotoFlatnessAnswer {
  const wavelengthNm = wavelengthOf(request)
  const { lampId, outerDiameterMm, opticalFlatToleranceUm } = request
  const lampHalfWidthNm = lampId === null ? undefined : lamps[lampId].halfWidthNm
  // The reading is in bands of normal view already.
  const heightUm = bandHeightUm({ wavelengthNm })
  const { surface, isSignKnown, uncertainty: parts, quality, outer, inner, cautions } = reading
  const whole = wholeFlatness({
    surface,
    isSignKnown,
    bandHeightUm: heightUm,
    outerDiameterMm,
    budgetOf: (flatnessUm) =>
      photoFlatnessBudget({
        parts,
        bandHeightUm: heightUm,
        flatnessUm,
        opticalFlatToleranceUm,
        wavelengthNm,
        wavelengthHalfWidthNm: request.wavelengthHalfWidthNm ?? lampHalfWidthNm,
      }),
  })
  return {
    ...whole,
    wavelengthNm,
    bandHeightUm: heightUm,
    sees: flatnessSees(methods.flatnessPhoto),
    bandsSeen: new Set(reading.bandLines.map((one) => one.order)).size,
    quality,
    outer,
    inner,
    cautions,
    method: methods.flatnessPhoto,
  }
}
