import { type Fields, type Input, openFields } from './fields.ts'
import { correctionFields, parseCorrection } from './parse-correction.ts'
import { noteLength } from './parse-flatness-reading.ts'
import { idBounds } from './parse-instrument-id.ts'
import { parseLengthInstrument } from './parse-length-instrument.ts'
import type { Parsed } from './parsed.ts'
import { type Component, faceKinds } from './seal.ts'
import type { StripContext } from './strip-context.ts'
import { optionalTypedMm, typedMm } from './typed-mm.ts'
import { type NewWearTrack, wearTrackBounds } from './wear-track.ts'

export const wearTrackFields = [
  'componentId',
  'noseWidthMm',
  'trackWidths',
  'offsetMm',
  'offsetHour',
  'instrumentId',
  'note',
  ...correctionFields,
] as const

/** Reads a worn track as found, from the form or the machine interface alike. */
export function parseWearTrack(
  input: Input,
  context: StripContext,
): Parsed<Omit<NewWearTrack, 'workOrderId'>> {
  const { widthMm, widthCount } = wearTrackBounds
  const fields = openFields(input)
  fields.only(...wearTrackFields)
  const componentId = parseFace(fields, context.components)
  const noseWidth = typedMm(fields, 'noseWidthMm', widthMm)
  const trackWidths = fields.list('trackWidths', widthCount).map((part) => {
    part.only('widthMm')
    return typedMm(part, 'widthMm', widthMm)
  })
  return fields.finish({
    componentId,
    noseWidth,
    trackWidths,
    ...parseOffset(fields),
    instrumentId: parseLengthInstrument(fields, [noseWidth, ...trackWidths], context),
    note: fields.optionalText('note', noteLength.max),
    ...parseCorrection(fields),
  })
}

/** How far the track lies off, and which way: one says nothing without the other. */
function parseOffset(fields: Fields): Pick<NewWearTrack, 'offset' | 'offsetHour'> {
  const { offsetMm, hour } = wearTrackBounds
  const offset = optionalTypedMm(fields, 'offsetMm', offsetMm)
  const offsetHour = fields.optionalWhole('offsetHour', hour)
  if (offset !== null && offset.mm > 0 && !fields.isGiven('offsetHour')) {
    fields.fault('offsetHour', 'empty')
  }
  if (offsetHour !== null && !fields.isGiven('offsetMm')) fields.fault('offsetMm', 'empty')
  return { offset, offsetHour }
}

function parseFace(fields: Fields, components: readonly Component[]): number {
  const before = fields.faults.length
  const id = fields.whole('componentId', idBounds)
  if (fields.faults.length > before) return id
  const kind = components.find((one) => one.id === id)?.kind
  if (!faceKinds.some((one) => one === kind)) fields.fault('componentId', 'not-known')
  return id
}
