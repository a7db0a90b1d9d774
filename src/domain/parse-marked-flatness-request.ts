import { fewestMarks } from '../science/marks/judge-marks.ts'
import type { PictureMark } from '../science/marks/read-marks.ts'
import type { Ellipse } from '../science/photo/ellipse.ts'
import type { ThermalBow } from '../science/uncertainty/thermal-bow-line.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { flatnessBounds } from './flatness.ts'
import { countedFlatnessBounds } from './parse-counted-flatness-request.ts'
import { type AskedLamp, parseLamp } from './parse-lamp.ts'
import { parseDiameters } from './parse-photo-flatness-request.ts'
import { parseEllipse } from './parse-ring-edge.ts'
import { parseThermal } from './parse-thermal.ts'
import type { Parsed } from './parsed.ts'

/** What rising orders mean for the gap. */
export const orderDirections = ['gap-opens', 'gap-closes'] as const
export type OrderDirection = (typeof orderDirections)[number]

/** Bands that were marked on a picture, and what is known beside it. */
export type MarkedFlatnessRequest = AskedLamp & {
  readonly imageWidth: number
  readonly imageHeight: number
  readonly outer: Ellipse
  readonly inner: Ellipse
  readonly outerDiameterMm: number
  readonly innerDiameterMm: number
  readonly points: readonly PictureMark[]
  readonly increasingTowards: OrderDirection
  readonly viewingAngleDeg: number | undefined
  readonly opticalFlatToleranceUm: number | undefined
  readonly wavelengthHalfWidthNm: number | undefined
  readonly viewingAngleLimitDeg: number | undefined
  readonly thermal: ThermalBow | undefined
  readonly flatThermal: ThermalBow | undefined
}

export const markedFlatnessFields = [
  'lamp',
  'wavelengthNm',
  'imageWidth',
  'imageHeight',
  'outer',
  'inner',
  'outerDiameterMm',
  'innerDiameterMm',
  'points',
  'increasingTowards',
  'viewingAngleDeg',
  'opticalFlatToleranceUm',
  'wavelengthHalfWidthNm',
  'viewingAngleLimitDeg',
  'thermal',
  'flatThermal',
] as const

export const markedFlatnessBounds = {
  imagePx: { min: 1, max: 100_000 },
  pointCount: { min: fewestMarks, max: 2000 },
  order: { min: -10_000, max: 10_000 },
} as const

/** Reads a request for flatness from bands that were marked on a picture. */
export function parseMarkedFlatnessRequest(input: Input): Parsed<MarkedFlatnessRequest> {
  const fields = openFields(input)
  fields.only(...markedFlatnessFields)
  const { wavelengthNm, wavelengthHalfWidthNm, toleranceUm } = countedFlatnessBounds
  const { imagePx } = markedFlatnessBounds
  const { viewingAngleDeg } = flatnessBounds
  const maybe = (name: string, bounds: { min: number; max: number }) =>
    fields.optionalDecimal(name, bounds) ?? undefined
  const imageWidth = fields.whole('imageWidth', imagePx)
  const imageHeight = fields.whole('imageHeight', imagePx)
  return fields.finish({
    ...parseLamp(fields, wavelengthNm),
    ...parseDiameters(fields),
    imageWidth,
    imageHeight,
    outer: parseEllipse(fields.group('outer')),
    inner: parseEllipse(fields.group('inner')),
    points: parsePoints(fields, { imageWidth, imageHeight }),
    increasingTowards: fields.choice('increasingTowards', orderDirections),
    viewingAngleDeg: maybe('viewingAngleDeg', viewingAngleDeg),
    opticalFlatToleranceUm: maybe('opticalFlatToleranceUm', toleranceUm),
    wavelengthHalfWidthNm: maybe('wavelengthHalfWidthNm', wavelengthHalfWidthNm),
    viewingAngleLimitDeg: maybe('viewingAngleLimitDeg', viewingAngleDeg),
    thermal: input.thermal == null ? undefined : parseThermal(fields.group('thermal')),
    flatThermal: input.flatThermal == null ? undefined : parseThermal(fields.group('flatThermal')),
  })
}

function parsePoints(
  fields: Fields,
  picture: { readonly imageWidth: number; readonly imageHeight: number },
): readonly PictureMark[] {
  const { pointCount, order } = markedFlatnessBounds
  return fields.list('points', pointCount).map((part) => {
    part.only('x', 'y', 'order')
    const mark = {
      x: part.decimal('x', { min: 0, max: Math.max(1, picture.imageWidth) }),
      y: part.decimal('y', { min: 0, max: Math.max(1, picture.imageHeight) }),
      order: part.decimal('order', order),
    }
    if (!Number.isInteger(2 * mark.order)) part.fault('order', 'not-whole-or-half')
    return mark
  })
}
