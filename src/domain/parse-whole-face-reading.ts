import { angleOfView } from './angle-of-view.ts'
import { checkStatedLamp } from './check-stated-lamp.ts'
import { confirmField, isConfirmed } from './confirmed.ts'
import type { FacePhoto } from './face-photo.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { flatnessBounds, type ReadingCondition, readingConditions } from './flatness.ts'
import { type FlatnessBudgetInput, noFlatnessBudgetInput } from './flatness-budget-input.ts'
import { correctionFields, parseCorrection } from './parse-correction.ts'
import { countedFlatnessBounds } from './parse-counted-flatness-request.ts'
import { type FlatnessContext, noteLength } from './parse-flatness-reading.ts'
import { parseInstrumentId } from './parse-instrument-id.ts'
import { markedFlatnessBounds, orderDirections } from './parse-marked-flatness-request.ts'
import { parseDiameters, parseWedge } from './parse-photo-flatness-request.ts'
import { parseEllipse } from './parse-ring-edge.ts'
import { parseThermal } from './parse-thermal.ts'
import type { Parsed } from './parsed.ts'
import { tradeWindow } from './trade-window.ts'
import type {
  BandMark,
  LineGridSource,
  MarkedSource,
  PhotoSource,
  SetEdges,
  wholeFaceKinds,
} from './whole-face.ts'

/** What is recorded of a reading of a whole face from a photograph. */
export type NewWholeFaceReading = {
  readonly componentId: number
  readonly condition: ReadingCondition
  readonly lampInstrumentId: number
  readonly flatInstrumentId: number
  readonly outerDiameterMm: number
  readonly innerDiameterMm: number
  readonly source: PhotoSource | MarkedSource | LineGridSource
  readonly budgetInput: FlatnessBudgetInput
  readonly soakMin: number | null
  readonly temperatureC: number | null
  readonly note: string
  readonly replacesId: number | null
  readonly reason: string
}

export const wholeFaceFields = [
  'kind',
  'condition',
  'lampInstrumentId',
  'opticalFlatInstrumentId',
  'lamp',
  'wavelengthNm',
  'outerDiameterMm',
  'innerDiameterMm',
  'outer',
  'inner',
  'points',
  'increasingTowards',
  'wedge',
  'viewingAngleDeg',
  'pressedPhotoId',
  'grid',
  'viewingAngleLimitDeg',
  'opticalFlatToleranceUm',
  'thermal',
  'flatThermal',
  'soakMin',
  'temperatureC',
  'note',
  ...correctionFields,
  confirmField,
] as const

export const lineGridBounds = {
  directionDeg: { min: -360, max: 360 },
  spacingPx: { min: 1, max: 100_000 },
  offsetPx: { min: -100_000, max: 100_000 },
  departureBands: { min: 0, max: 100 },
} as const

/** What is asked of a photograph; id null: there is none. */
export type ReadPhoto = Pick<FacePhoto, 'componentId' | 'widthPx' | 'heightPx' | 'foundEdges'> & {
  readonly id: number | null
}

export type WholeFaceContext = FlatnessContext & {
  readonly photo: ReadPhoto
  /** Of the order: the second one of a press test is among them. */
  readonly photos: readonly FacePhoto[]
}

const kinds = [
  'photo',
  'marked',
  'line-grid',
] as const satisfies readonly (typeof wholeFaceKinds)[number][]

/**
 * Reads how a face was read from a photograph of it, from the form or the machine interface alike.
 * Edges that are not sent are those that were found.
 */
export function parseWholeFaceReading(
  input: Input,
  context: WholeFaceContext,
): Parsed<NewWholeFaceReading> {
  const fields = openFields(input, isConfirmed(input))
  fields.only(...wholeFaceFields)
  const { instruments, exceptions, today: day, photo } = context
  const use = { instruments, exceptions, day, recordedOn: day }
  const kind = fields.choice('kind', kinds)
  const condition = fields.choice('condition', readingConditions)
  const lamp = parseInstrumentId(fields, 'lampInstrumentId', { kind: 'lamp', ...use })
  checkStatedLamp(fields, lamp)
  const flatAsked = { kind: 'optical-flat', ...use } as const
  const flat = parseInstrumentId(fields, 'opticalFlatInstrumentId', flatAsked)
  const { viewingAngleDeg, toleranceUm } = { ...flatnessBounds, ...countedFlatnessBounds }
  return fields.finish({
    componentId: photo.componentId,
    condition,
    lampInstrumentId: lamp?.id ?? 0,
    flatInstrumentId: flat?.id ?? 0,
    ...parseDiameters(fields),
    source: parseSource(fields, input, context, kind),
    budgetInput: {
      ...noFlatnessBudgetInput,
      viewingAngleLimitDeg: fields.optionalDecimal('viewingAngleLimitDeg', viewingAngleDeg),
      opticalFlatToleranceUm: fields.optionalDecimal('opticalFlatToleranceUm', toleranceUm),
      thermal: input.thermal == null ? null : parseThermal(fields.group('thermal')),
      flatThermal: input.flatThermal == null ? null : parseThermal(fields.group('flatThermal')),
    },
    soakMin: fields.optionalDecimal('soakMin', flatnessBounds.soakMin),
    temperatureC: fields.optionalWindowed(
      'temperatureC',
      tradeWindow.temperatureC,
      flatnessBounds.temperatureC,
    ),
    note: fields.optionalText('note', noteLength.max),
    ...parseCorrection(fields),
  })
}

function parseSource(
  fields: Fields,
  input: Input,
  context: WholeFaceContext,
  kind: (typeof kinds)[number],
): NewWholeFaceReading['source'] {
  const { photo } = context
  // Whoever sends no photograph is asked for marks alone.
  const photoId = photo.id ?? 0
  if (kind === 'line-grid') {
    const stated = fields.optionalDecimal('viewingAngleDeg', flatnessBounds.viewingAngleDeg)
    const found = photo.foundEdges === null ? null : angleOfView(photo.foundEdges.outer)
    const grid = parseGrid(fields.group('grid'))
    return { kind, photoId, viewingAngleDeg: stated ?? found, ...grid }
  }
  const edges = parseEdges(fields, input, photo)
  const viewingAngleDeg = fields.optionalDecimal('viewingAngleDeg', flatnessBounds.viewingAngleDeg)
  const common = { ...edges, viewingAngleDeg }
  if (kind === 'marked') {
    const points = parseMarks(fields, photo)
    const increasingTowards = fields.optionalChoice('increasingTowards', orderDirections)
    return { kind, photoId: photo.id, ...common, points, increasingTowards }
  }
  const wedge = input.wedge == null ? undefined : parseWedge(fields.group('wedge'))
  return {
    kind,
    photoId,
    ...common,
    wedge: wedge ?? null,
    pressed: parsePressed(fields, context, edges),
  }
}

/** Each edge as it was set, else as it was found. */
function parseEdges(fields: Fields, input: Input, { foundEdges }: ReadPhoto): SetEdges {
  const edge = (name: 'outer' | 'inner') => {
    if (input[name] != null) return parseEllipse(fields.group(name))
    if (foundEdges === null) fields.fault(name, 'edges-not-set')
    return foundEdges?.[name] ?? { cx: 0, cy: 0, rx: 1, ry: 1, rotationDeg: 0 }
  }
  return { outer: edge('outer'), inner: edge('inner') }
}

function parseMarks(fields: Fields, { widthPx, heightPx }: ReadPhoto): readonly BandMark[] {
  const { pointCount, order } = markedFlatnessBounds
  return fields.list('points', pointCount).map((part) => {
    part.only('x', 'y', 'order')
    const mark = {
      x: part.decimal('x', { min: 0, max: widthPx }),
      y: part.decimal('y', { min: 0, max: heightPx }),
      order: part.decimal('order', order),
    }
    if (!Number.isInteger(2 * mark.order)) part.fault('order', 'not-whole-or-half')
    return mark
  })
}

/** The second photograph of a press test: of the same face, with edges of its own. */
function parsePressed(
  fields: Fields,
  context: WholeFaceContext,
  edges: SetEdges,
): PhotoSource['pressed'] {
  if (!fields.isGiven('pressedPhotoId')) return null
  const id = fields.whole('pressedPhotoId', { min: 1, max: Number.MAX_SAFE_INTEGER })
  const { photo, photos } = context
  const second = photos.find((one) => one.id === id && one.componentId === photo.componentId)
  if (second === undefined || second.id === photo.id) {
    fields.fault('pressedPhotoId', 'not-known')
    return null
  }
  // Where none were found, the camera stood still perhaps: the edges of the first are tried.
  return { photoId: second.id, ...(second.foundEdges ?? edges) }
}

function parseGrid(part: Fields): Omit<LineGridSource, 'kind' | 'photoId' | 'viewingAngleDeg'> {
  const { directionDeg, spacingPx, offsetPx, departureBands } = lineGridBounds
  part.only('directionDeg', 'spacingPx', 'offsetPx', 'oneWayBands', 'otherWayBands')
  return {
    directionDeg: part.decimal('directionDeg', directionDeg),
    spacingPx: part.decimal('spacingPx', spacingPx),
    offsetPx: part.decimal('offsetPx', offsetPx),
    oneWayBands: part.decimal('oneWayBands', departureBands),
    otherWayBands: part.decimal('otherWayBands', departureBands),
  }
}
