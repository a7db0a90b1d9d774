import type { SurveyPolarOptions } from './survey-polar-options.ts'

export interface SurveyPolarScale {
  readonly pxPerUm: number
  /** The height that lies on the middle circle: half way between the highest and the lowest. */
  readonly middleUm: number
  readonly radiusOf: (valueUm: number) => number
  /** Of the middle circle, which stands for the circle that was swept. */
  readonly middlePx: number
}

/** Of the radius of the plot: the middle circle, and as far as anything drawn lies from it. */
const middleShare = 0.66
const reachShare = 0.3

/**
 * Gives how large a survey is drawn, so that readings, fitted circle and limit fit into a plot.
 *
 * radius = middle circle + (value - middle) pxPerUm; pxPerUm = reach / largest distance
 *
 * @param options what is drawn
 * @param rimPx radius of the plot, px, above 0
 * @returns px per um, the middle height, and the radius of any height
 * @throws RangeError without readings
 * @example surveyPolarScale(options, 100).radiusOf(middleUm) // 66
 */
export function surveyPolarScale(
  options: Pick<
    SurveyPolarOptions,
    'turns' | 'closing' | 'points' | 'fit' | 'minimumZone' | 'limitUm'
  >,
  rimPx: number,
): SurveyPolarScale {
  const { turns, closing, points, fit, limitUm } = options
  const means = points.map((one) => one.valueUm)
  if (means.length === 0) throw new RangeError('surveyPolarScale requires points from 1, got 0')
  const middleUm = (Math.max(...means) + Math.min(...means)) / 2
  const drawn = [
    ...means,
    ...turns.flat().map((one) => one.valueUm),
    ...closing.map((one) => one.valueUm),
    ...(fit === null ? [] : [fit.meanUm - fit.eccentricityUm, fit.meanUm + fit.eccentricityUm]),
    ...zoneReach(options.minimumZone),
    middleUm + (limitUm ?? 0) / 2,
  ]
  const farthest = Math.max(...drawn.map((value) => Math.abs(value - middleUm)))
  // Without any movement there is nothing to enlarge: any scale shows the circle.
  const pxPerUm = (rimPx * reachShare) / (farthest > 0 ? farthest : 1)
  const middlePx = rimPx * middleShare
  const radiusOf = (valueUm: number) => middlePx + (valueUm - middleUm) * pxPerUm
  return { pxPerUm, middleUm, middlePx, radiusOf }
}

function zoneReach(zone: SurveyPolarOptions['minimumZone']): readonly number[] {
  if (zone === null) return []
  const offset = Math.hypot(zone.cosineUm, zone.sineUm)
  return [zone.innerUm - offset, zone.outerUm + offset]
}
