import { arrowShapes } from './arrow-shapes.ts'
import { clockPlace } from './clock-place.ts'
import type { Drawing, PathShape, Shape } from './drawing.ts'
import { circlePath, outlinePath, type PointPx } from './path-data.ts'
import { surveyPolarFrame } from './survey-polar-frame.ts'
import { surveyPolarLegend } from './survey-polar-legend.ts'
import type { PolarReading, SurveyPolarOptions } from './survey-polar-options.ts'
import { type SurveyPolarScale, surveyPolarScale } from './survey-polar-scale.ts'
import { closingMark, turnMark } from './turn-mark.ts'

/** Around the circle, for the angles. */
const marginPx = 36
const stepDeg = 3

interface Plot extends SurveyPolarScale {
  readonly options: SurveyPolarOptions
  readonly centre: PointPx
  readonly rimPx: number
  readonly at: (angleDeg: number, radiusPx: number) => PointPx
}

/**
 * The readings of a survey round their circle, 0 on top at the mark, outwards what the indicator
 * reads higher: each turn has marks of its own shape, the closing reading is a cross, a thin line
 * joins the means, a heavy one is the circle fitted to them, an arrow leads from the axis of
 * turning to its centre, and a triangle on the rim shows where it is highest. The limit is a
 * shaded ring between dashed circles about the axis: what is swept lies within it exactly when its
 * total movement keeps the limit. Heights are drawn much larger than the part: see the scale bar.
 *
 * @param options see SurveyPolarOptions
 * @returns the drawing; the same every time
 * @throws RangeError for a size out of range, and without readings
 * Validity: it shows readings and judges nothing.
 */
export function surveyPolar(options: SurveyPolarOptions): Drawing {
  const { sizePx, isClockwise, points, texts } = options
  if (!(sizePx >= 280 && sizePx <= 900)) {
    throw new RangeError(`surveyPolar requires sizePx from 280 to 900, got ${sizePx}`)
  }
  const rimPx = sizePx / 2 - marginPx
  const centre = { x: sizePx / 2, y: sizePx / 2 }
  const at = clockPlace(centre, isClockwise)
  const plot: Plot = { ...surveyPolarScale(options, rimPx), options, centre, rimPx, at }
  const legend = surveyPolarLegend(options, { ...plot, topPx: sizePx })
  return {
    widthPx: sizePx,
    heightPx: sizePx + legend.heightPx,
    shapes: [
      { kind: 'path', d: circlePath(centre, rimPx), fill: 'paper', part: 'ground' },
      ...limitRing(plot),
      ...surveyPolarFrame(points, {
        ...plot,
        highestDeg: options.fit?.directionDeg ?? null,
        texts,
      }),
      ...zoneCircles(plot),
      joinedLine(plot),
      ...fittedCircle(plot),
      ...readingMarks(plot),
      ...legend.shapes,
    ],
  }
}

function limitRing({ options, centre, middleUm, radiusOf }: Plot): readonly Shape[] {
  const { limitUm } = options
  if (limitUm === null) return []
  const [inner, outer] = [middleUm - limitUm / 2, middleUm + limitUm / 2].map(radiusOf)
  const d = `${circlePath(centre, outer as number)}${circlePath(centre, inner as number)}`
  return [
    { kind: 'path', d, fill: 'faint', part: 'allowed' },
    { kind: 'path', d, stroke: 'ink', strokePx: 1.4, dash: 'dashed', part: 'limit' },
  ]
}

function zoneCircles({ options, at, radiusOf }: Plot): readonly PathShape[] {
  const zone = options.minimumZone
  if (zone === null) return []
  const circle = (um: number): string =>
    turnPath((deg) => {
      const angle = (deg * Math.PI) / 180
      const shift = zone.cosineUm * Math.cos(angle) + zone.sineUm * Math.sin(angle)
      return at(deg, radiusOf(um + shift))
    })
  const d = `${circle(zone.innerUm)}${circle(zone.outerUm)}`
  return [{ kind: 'path', d, stroke: 'ink', strokePx: 1.3, dash: 'dotted', part: 'minimum zone' }]
}

/** From mean to mean, as a reading between two positions would lie if the surface ran evenly. */
function joinedLine({ options, at, radiusOf }: Plot): PathShape {
  const points = [...options.points].sort((a, b) => a.angleDeg - b.angleDeg)
  const path = points.flatMap((from, index): PointPx[] => {
    const first = points[0] as PolarReading
    const to = points[index + 1] ?? { ...first, angleDeg: first.angleDeg + 360 }
    const span = to.angleDeg - from.angleDeg
    const count = Math.max(1, Math.ceil(span / stepDeg))
    return Array.from({ length: count }, (_, i) => {
      const share = i / count
      const valueUm = from.valueUm + share * (to.valueUm - from.valueUm)
      return at(from.angleDeg + share * span, radiusOf(valueUm))
    })
  })
  return {
    kind: 'path',
    d: outlinePath(path, true),
    stroke: 'soft',
    strokePx: 1.1,
    part: 'joined',
  }
}

function fittedCircle({ options, centre, rimPx, at, radiusOf, pxPerUm }: Plot): readonly Shape[] {
  const { fit } = options
  const axis: Shape = {
    kind: 'path',
    d: `${cross(centre, 7)}${circlePath(centre, 2.2)}`,
    stroke: 'ink',
    strokePx: 1.3,
    part: 'axis',
  }
  if (fit === null) return [axis]
  const { meanUm, eccentricityUm: e, directionDeg } = fit
  const towards = directionDeg ?? 0
  const heightAt = (deg: number) => meanUm + e * Math.cos(((deg - towards) * Math.PI) / 180)
  const line: Shape = {
    kind: 'path',
    d:
      directionDeg === null
        ? circlePath(centre, radiusOf(meanUm))
        : turnPath((deg) => at(deg, radiusOf(heightAt(deg)))),
    stroke: 'accent',
    strokePx: 2.4,
    part: 'fitted',
  }
  if (directionDeg === null) return [line, axis]
  const fitted = at(directionDeg, e * pxPerUm)
  const arrow = { tone: 'accent', strokePx: 2.4, headPx: 10, part: 'offset' } as const
  const tip = at(directionDeg, rimPx - 3)
  const halfDeg = (5 * 180) / (Math.PI * rimPx)
  const foot = [directionDeg - halfDeg, directionDeg + halfDeg].map((deg) => at(deg, rimPx + 11))
  return [
    line,
    axis,
    ...arrowShapes(centre, fitted, arrow),
    {
      kind: 'path',
      d: outlinePath([tip, ...foot], true),
      fill: 'accent',
      stroke: 'paper',
      strokePx: 1,
      part: 'highest',
    },
  ]
}

/** The closing reading last, so that it is seen on top of the first one. */
function readingMarks({ options, at, radiusOf }: Plot): readonly PathShape[] {
  const place = ({ angleDeg, valueUm }: PolarReading) => at(angleDeg, radiusOf(valueUm))
  // The first turn on top: its marks are the smallest.
  const turns = options.turns.map((turn, index) => turn.map((one) => turnMark(index, place(one))))
  return [...turns.reverse().flat(), ...options.closing.map((one) => closingMark(place(one)))]
}

function turnPath(place: (deg: number) => PointPx): string {
  return outlinePath(
    Array.from({ length: 360 / stepDeg }, (_, i) => place(i * stepDeg)),
    true,
  )
}

function cross({ x, y }: PointPx, r: number): string {
  const level = [
    { x: x - r, y },
    { x: x + r, y },
  ]
  const upright = [
    { x, y: y - r },
    { x, y: y + r },
  ]
  return `${outlinePath(level, false)}${outlinePath(upright, false)}`
}
