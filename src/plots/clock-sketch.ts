import { clockPlace } from './clock-place.ts'
import type { Drawing, Shape } from './drawing.ts'
import { circlePath, outlinePath } from './path-data.ts'

export interface ClockSketchOptions {
  /** Width and height, px, 60 to 600. */
  readonly sizePx: number
  /** From hour to hour clockwise, 0 to 12; null: no place, or all round. */
  readonly place: { readonly fromHour: number; readonly toHour: number } | null
  /** One hour alone, while the other is not said: a line across the ring; null or absent: none. */
  readonly loneHour?: number | null
  /** Where it lies across the ring; null: over the whole width. */
  readonly across: 'outer-edge' | 'middle' | 'inner-edge' | 'whole-width' | null
  /** Whether the hours are numbered: too small a sketch has no room. */
  readonly hasNumbers: boolean
}

/** Of half the drawing. */
const outer = 0.74
const inner = 0.46

const bands = {
  'outer-edge': [0.66, 0.74],
  middle: [0.56, 0.64],
  'inner-edge': [0.46, 0.54],
  'whole-width': [inner, outer],
} as const

/**
 * A ring seen from its face with 12 on top, and the place of a finding filled on it, from hour to
 * hour clockwise, over 12 where it has to.
 *
 * @param options see above
 * @returns the drawing
 * @throws RangeError for a size or an hour out of range
 */
export function clockSketch(options: ClockSketchOptions): Drawing {
  const { sizePx, place, hasNumbers } = options
  const loneHour = options.loneHour ?? null
  if (!(sizePx >= 60 && sizePx <= 600)) {
    throw new RangeError(`clockSketch requires sizePx from 60 to 600, got ${sizePx}`)
  }
  for (const hour of [place?.fromHour ?? 0, place?.toHour ?? 0, loneHour ?? 0]) {
    if (!(hour >= 0 && hour <= 12)) {
      throw new RangeError(`clockSketch requires an hour from 0 to 12, got ${hour}`)
    }
  }
  const half = sizePx / 2
  const centre = { x: half, y: half }
  const at = clockPlace(centre, true)
  const ring = (share: number): Shape => ({
    kind: 'path',
    d: circlePath(centre, half * share),
    stroke: 'ink',
    strokePx: 1.5,
  })
  const hours = Array.from({ length: 12 }, (_, i) => i + 1)
  return {
    widthPx: sizePx,
    heightPx: sizePx,
    shapes: [
      ...(loneHour === null ? placeShapes(options, half) : []),
      ring(outer),
      ring(inner),
      ...hours.map((hour): Shape => {
        const [from, to] = [at(hour * 30, half * 0.76), at(hour * 30, half * 0.81)]
        const ends = { x1: from.x, y1: from.y, x2: to.x, y2: to.y }
        return { kind: 'line', ...ends, stroke: 'soft', strokePx: hour % 3 === 0 ? 2 : 1 }
      }),
      ...(loneHour === null ? [] : [loneShape(at, loneHour, half)]),
      ...(hasNumbers ? hours.map((hour) => numberShape(hour, at(hour * 30, half * 0.91))) : []),
    ],
  }
}

function numberShape(hour: number, place: { readonly x: number; readonly y: number }): Shape {
  const sizePx = 13
  const y = place.y + sizePx * 0.35
  return { kind: 'text', x: place.x, y, text: String(hour), sizePx, anchor: 'middle', tone: 'ink' }
}

/** Across the ring and over both of its edges, so that it is no part of a filled place. */
function loneShape(at: ReturnType<typeof clockPlace>, hour: number, half: number): Shape {
  const [from, to] = [at(hour * 30, half * (inner - 0.06)), at(hour * 30, half * (outer + 0.06))]
  const ends = { x1: from.x, y1: from.y, x2: to.x, y2: to.y }
  return { kind: 'line', ...ends, stroke: 'accent', strokePx: 5 }
}

/** The filled part of the ring, as an outline of steps of three degrees. */
function placeShapes({ sizePx, place, across }: ClockSketchOptions, half: number): Shape[] {
  if (place === null && across === null) return []
  const [low, high] = bands[across ?? 'whole-width']
  const from = (place?.fromHour ?? 0) * 30
  const turn = ((((place?.toHour ?? 12) * 30 - from) % 360) + 360) % 360
  const sweep = turn === 0 ? 360 : turn
  const at = clockPlace({ x: sizePx / 2, y: sizePx / 2 }, true)
  const count = Math.max(2, Math.ceil(sweep / 3))
  const degs = Array.from({ length: count + 1 }, (_, i) => from + (sweep * i) / count)
  const points = [
    ...degs.map((deg) => at(deg, half * high)),
    ...degs.toReversed().map((deg) => at(deg, half * low)),
  ]
  return [{ kind: 'path', d: outlinePath(points, true), fill: 'accent', part: 'place' }]
}
