import type { WedgeSeen } from '../science/photo/gap-sign.ts'
import type { EdgeAsSet } from '../science/photo/prepare-face.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { flatnessBounds } from './flatness.ts'
import { countedFlatnessBounds } from './parse-counted-flatness-request.ts'
import { type AskedLamp, parseLamp } from './parse-lamp.ts'
import { parseRingEdge } from './parse-ring-edge.ts'
import type { Parsed } from './parsed.ts'

/** What is known beside a photograph of light bands. */
export type PhotoFlatnessRequest = AskedLamp & {
  readonly outerDiameterMm: number
  readonly innerDiameterMm: number
  /** Null: found in the picture. */
  readonly outer: EdgeAsSet | null
  readonly inner: EdgeAsSet | null
  readonly wedge: WedgeSeen | undefined
  readonly viewingAngleDeg: number | undefined
  readonly opticalFlatToleranceUm: number | undefined
  readonly wavelengthHalfWidthNm: number | undefined
}

export const photoFlatnessFields = [
  'lamp',
  'wavelengthNm',
  'outerDiameterMm',
  'innerDiameterMm',
  'outer',
  'inner',
  'outerPoints',
  'innerPoints',
  'wedge',
  'viewingAngleDeg',
  'opticalFlatToleranceUm',
  'wavelengthHalfWidthNm',
] as const

export const photoFlatnessBounds = {
  diameterMm: { min: 1, max: 2000 },
  directionDeg: { min: -360, max: 360 },
} as const

const centres = ['closer', 'further'] as const

/** Reads what is sent beside a photograph of light bands. */
export function parsePhotoFlatnessRequest(input: Input): Parsed<PhotoFlatnessRequest> {
  const fields = openFields(input)
  fields.only(...photoFlatnessFields)
  const { wavelengthNm, toleranceUm, wavelengthHalfWidthNm } = countedFlatnessBounds
  const maybe = (name: string, bounds: { min: number; max: number }) =>
    fields.optionalDecimal(name, bounds) ?? undefined
  return fields.finish({
    ...parseLamp(fields, wavelengthNm),
    ...parseDiameters(fields),
    outer: parseRingEdge(fields, input, 'outer'),
    inner: parseRingEdge(fields, input, 'inner'),
    wedge: input.wedge == null ? undefined : parseWedge(fields.group('wedge')),
    viewingAngleDeg: maybe('viewingAngleDeg', flatnessBounds.viewingAngleDeg),
    opticalFlatToleranceUm: maybe('opticalFlatToleranceUm', toleranceUm),
    wavelengthHalfWidthNm: maybe('wavelengthHalfWidthNm', wavelengthHalfWidthNm),
  })
}

/** Reads both diameters of a face; the inner one must be the smaller. */
export function parseDiameters(fields: Fields): {
  readonly outerDiameterMm: number
  readonly innerDiameterMm: number
} {
  const { diameterMm } = photoFlatnessBounds
  const outerDiameterMm = fields.decimal('outerDiameterMm', diameterMm)
  const innerDiameterMm = fields.decimal('innerDiameterMm', diameterMm)
  const isFaulty = fields.faults.some((one) => one.field.endsWith('DiameterMm'))
  if (!isFaulty && innerDiameterMm >= outerDiameterMm) {
    fields.fault('innerDiameterMm', 'inner-not-smaller')
  }
  return { outerDiameterMm, innerDiameterMm }
}

/** Reads what was seen of the gap: where it opens, or how the middle of rings lies. */
export function parseWedge(part: Fields): WedgeSeen | undefined {
  part.only('opensTowardsDeg', 'centre')
  if (part.isGiven('opensTowardsDeg') === part.isGiven('centre')) {
    part.fault('opensTowardsDeg', 'one-of-two', { one: 'opensTowardsDeg', other: 'centre' })
    return undefined
  }
  if (part.isGiven('centre')) return { centre: part.choice('centre', centres) }
  return { opensTowardsDeg: part.decimal('opensTowardsDeg', photoFlatnessBounds.directionDeg) }
}
