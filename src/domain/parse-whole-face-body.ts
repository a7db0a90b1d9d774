import { fitEllipse } from '../science/photo/fit-ellipse.ts'
import { type Input, openFields } from './fields.ts'
import { type FlatnessContext, parseFace } from './parse-flatness-reading.ts'
import { markedFlatnessBounds } from './parse-marked-flatness-request.ts'
import { parseRingEdge } from './parse-ring-edge.ts'
import {
  type NewWholeFaceReading,
  parseWholeFaceReading,
  type ReadPhoto,
} from './parse-whole-face-reading.ts'
import type { Parsed } from './parsed.ts'

/** Says whether a body is about a whole face: bands that were marked on a picture. */
export function hasMarks(input: Input): boolean {
  return input.points != null
}

/**
 * Reads a reading of a whole face as the machine interface sends it: the fields of the calculators
 * `flatness/photo` and `flatness/marked`, with face and instruments.
 * @param picture size and edges of the photograph that came with it; null where none did
 */
export function parseWholeFaceBody(
  input: Input,
  context: FlatnessContext,
  picture: Omit<ReadPhoto, 'id' | 'componentId'> | null,
): Parsed<NewWholeFaceReading> {
  const { faceId, imageWidth, imageHeight, outerPoints, innerPoints, ...rest } = input
  const fields = openFields({ faceId, imageWidth, imageHeight })
  const componentId = parseFace(fields, context.components)
  const { imagePx } = markedFlatnessBounds
  const size = picture ?? {
    widthPx: fields.whole('imageWidth', imagePx),
    heightPx: fields.whole('imageHeight', imagePx),
    foundEdges: null,
  }
  const edges = openFields(input)
  const edgeOf = (name: 'outer' | 'inner', points: unknown) => {
    if (points == null) return {}
    const edge = parseRingEdge(edges, input, name)
    if (edge === null || !('length' in edge)) return {}
    const ellipse = fitEllipse(edge)
    if (ellipse === null) edges.fault(`${name}Points`, 'not-a-place', { min: 0, max: 0 })
    return { [name]: ellipse }
  }
  const set = { ...edgeOf('outer', outerPoints), ...edgeOf('inner', innerPoints) }
  const faults = [...fields.faults, ...edges.faults]
  const photo = { ...size, id: picture === null ? null : 0, componentId }
  const kind = hasMarks(input) ? 'marked' : 'photo'
  const parsed = parseWholeFaceReading({ ...rest, ...set, kind }, { ...context, photo, photos: [] })
  if (parsed.ok && faults.length === 0) return parsed
  return { ok: false, faults: [...faults, ...(parsed.ok ? [] : parsed.faults)] }
}
