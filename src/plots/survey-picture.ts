import type { Drawing } from './drawing.ts'
import { surveyPolar } from './survey-polar.ts'
import type { PolarReading, SurveyPolarTexts } from './survey-polar-options.ts'

/** Of page and paper alike: legible on a phone of 360 px. */
const widthPx = 340

/** One swept circle, as records keep it. */
export interface SurveyPicturePlane {
  readonly turns: readonly (readonly PolarReading[])[]
  readonly closing: readonly PolarReading[]
  readonly points: readonly PolarReading[]
  readonly meanUm: number
  readonly eccentricityUm: number
  readonly directionDeg: number | null
  readonly zone: {
    readonly cosineUm: number
    readonly sineUm: number
    readonly innerUm: number
    readonly outerUm: number
  }
}

/** The texts of a survey's plot, in one language; figures come as numbers, in um and degrees. */
export interface SurveyPictureTexts
  extends Pick<
    SurveyPolarTexts,
    'angle' | 'mark' | 'scale' | 'timesLarger' | 'turn' | 'closing' | 'joined'
  > {
  readonly fitted: (um: number, isFace: boolean) => string
  readonly highest: (deg: number) => string
  readonly limit: (um: number) => string
  readonly minimumZone: (um: number) => string
}

/**
 * The polar plot of a survey in its one size. Page and document show the same.
 *
 * @param of what was swept, how angles rise, limit on the total movement and the circle swept, null
 *   where there is none; whether it is a face
 * @param texts see SurveyPictureTexts
 * @returns the drawing
 */
export function surveyPicture(
  of: {
    readonly plane: SurveyPicturePlane
    readonly isClockwise: boolean
    readonly isFace: boolean
    readonly limitUm: number | null
    readonly sweptDiameterMm: number | null
  },
  texts: SurveyPictureTexts,
): Drawing {
  const { plane, isClockwise, isFace, limitUm, sweptDiameterMm } = of
  const { turns, closing, points, meanUm, eccentricityUm, directionDeg, zone } = plane
  const { fitted, highest, limit, minimumZone, ...plain } = texts
  return surveyPolar({
    sizePx: widthPx,
    isClockwise,
    turns,
    closing,
    points,
    fit: { meanUm, eccentricityUm, directionDeg },
    minimumZone: zone,
    limitUm,
    sweptDiameterMm,
    texts: {
      ...plain,
      fitted: fitted(eccentricityUm, isFace),
      highest: directionDeg === null ? '' : highest(directionDeg),
      limit: limitUm === null ? '' : limit(limitUm),
      minimumZone: minimumZone(zone.outerUm - zone.innerUm),
    },
  })
}
