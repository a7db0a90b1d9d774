import { contourLines } from '../science/photo/contour-lines.ts'
import { type MapPlace, peakAndValley } from '../science/surface/peak-and-valley.ts'
import type { PolarMap } from '../science/surface/polar-map.ts'
import type { Drawing, PathShape, Shape } from './drawing.ts'
import { drawnRatio } from './drawn-ratio.ts'
import type { FlatnessMapOptions } from './flatness-map-options.ts'
import { heightSteps } from './height-steps.ts'
import { labelHeightPx, labelPlaces, type PlacedLabel } from './label-places.ts'
import { boxPath, circlePath, outlinePath, type PointPx } from './path-data.ts'
import { roundPx } from './round-px.ts'
import { traceRegion } from './trace-region.ts'

/** Around the ring, for the texts of the angles. */
const marginPx = 38
const markPx = 6
const textPx = 11
const mostLines = 10

/** Where a place of the map lies in the drawing. */
interface Ring {
  readonly map: PolarMap
  readonly middle: number
  readonly rimPx: number
  readonly borePx: number
  readonly at: (row: number, column: number) => PointPx
}

/**
 * The map of a face: contour lines over the ring, as it was seen, 0 degrees to the right. Lines
 * above the mean plane are solid, below it dashed, that of the plane itself heavy; what lies below
 * is shaded; each line bears its height where there is room. The peak is a full triangle that
 * points up, the valley a hollow one that points down, both with their heights. Nothing depends on
 * colour. A land narrower than 0.62 is drawn wider: see drawnRatio.
 *
 * @param options see FlatnessMapOptions
 * @returns the drawing; the same every time
 * @throws RangeError for a size out of range
 */
export function flatnessMap(options: FlatnessMapOptions): Drawing {
  const { map, sizePx, heightText } = options
  if (!(sizePx >= 240 && sizePx <= 1200)) {
    throw new RangeError(`flatnessMap requires sizePx from 240 to 1200, got ${sizePx}`)
  }
  const ring = ringOf(map, sizePx)
  const { peak, valley, peakToValley } = peakAndValley(map)
  const centre = { x: ring.middle, y: ring.middle }
  const edges = `${circlePath(centre, ring.rimPx)}${circlePath(centre, ring.borePx)}`
  const marks = [
    placeMark(ring, peak, true, heightText),
    placeMark(ring, valley, false, heightText),
  ]
  const lines = peakToValley > 0 ? linesOf(ring, options, peak, valley) : []
  const labels = labelPlaces(
    lines.map((line) => ({ points: line.points, text: heightText(line.levelUm) })),
    marks.map((mark) => mark.box),
    (point) => isOnLand(ring, point),
  )
  return {
    widthPx: sizePx,
    heightPx: sizePx,
    shapes: [
      { kind: 'path', d: edges, fill: 'paper', part: 'land' },
      ...lowArea(ring),
      ...lines.map((line) => line.shape),
      { kind: 'path', d: edges, stroke: 'ink', strokePx: 1.5, part: 'edges' },
      ...angleTicks(ring, options.angleText),
      ...labels.flatMap(labelShapes),
      ...marks.flatMap((mark) => mark.shapes),
    ],
  }
}

function ringOf(map: PolarMap, sizePx: number): Ring {
  const { radii, anglesDeg } = map
  const [inner, outer] = [radii[0] as number, radii.at(-1) as number]
  const rimPx = sizePx / 2 - marginPx
  const borePx = rimPx * drawnRatio(inner / outer)
  const middle = sizePx / 2
  const last = radii.length - 1
  const at = (row: number, column: number): PointPx => {
    const [below, above] = [Math.floor(row), Math.min(last, Math.floor(row) + 1)]
    const from = radii[below] as number
    const radius = from + (row - below) * ((radii[above] as number) - from)
    const r = borePx + ((radius - inner) / (outer - inner)) * (rimPx - borePx)
    const angle = (column * 2 * Math.PI) / anglesDeg.length
    return { x: roundPx(middle + r * Math.cos(angle)), y: roundPx(middle - r * Math.sin(angle)) }
  }
  return { map, middle, rimPx, borePx, at }
}

function isOnLand({ middle, rimPx, borePx }: Ring, point: PointPx): boolean {
  const r = Math.hypot(point.x - middle, point.y - middle)
  return r < rimPx - 1 && r > borePx + 1
}

interface DrawnLine {
  readonly levelUm: number
  readonly points: readonly PointPx[]
  readonly shape: PathShape
}

function linesOf(
  ring: Ring,
  options: FlatnessMapOptions,
  peak: MapPlace,
  valley: MapPlace,
): readonly DrawnLine[] {
  const { heights, radii, anglesDeg } = ring.map
  const range = { lowUm: valley.height, highUm: peak.height }
  const { stepUm } = options
  const { levelsUm } = heightSteps(
    range,
    stepUm === undefined ? { mostCount: mostLines } : { stepUm },
  )
  const grid = {
    rowCount: radii.length,
    columnCount: anglesDeg.length,
    values: Float64Array.from(heights.flat()),
  }
  return contourLines(grid, levelsUm)
    .filter((line) => line.points.length > 2)
    .map(({ value, points: places }) => {
      const points = places.map(([row, column]) => ring.at(row, column))
      const isPlane = value === 0
      return {
        levelUm: value,
        points,
        shape: {
          kind: 'path',
          d: outlinePath(points, false),
          stroke: 'ink',
          strokePx: isPlane ? 2.2 : 1,
          dash: value < 0 ? 'dashed' : 'solid',
          part: `line ${value}`,
        },
      }
    })
}

/** What lies below the plane, shaded. */
function lowArea(ring: Ring): readonly PathShape[] {
  const { heights, radii, anglesDeg } = ring.map
  const node = (row: number, column: number) => ring.at(row, column)
  const grid = { rowCount: radii.length, columnCount: anglesDeg.length, node }
  const d = traceRegion(grid, (row, column) => -1e-12 - (heights[row]?.[column] as number))
    .map((loop) => outlinePath(loop, true))
    .join('')
  return d === '' ? [] : [{ kind: 'path', d, fill: 'faint', part: 'low' }]
}

function labelShapes({ text, at, widthPx }: PlacedLabel): readonly Shape[] {
  const box = {
    x: at.x - widthPx / 2,
    y: at.y - labelHeightPx / 2,
    width: widthPx,
    height: labelHeightPx,
  }
  return [
    { kind: 'path', d: boxPath(box), fill: 'paper' },
    {
      kind: 'text',
      x: at.x,
      y: roundPx(at.y + 4),
      text,
      sizePx: textPx,
      anchor: 'middle',
      tone: 'ink',
    },
  ]
}

/** A triangle on the place, its height beside it towards the middle of the land's nearer side. */
function placeMark(
  ring: Ring,
  place: MapPlace,
  isPeak: boolean,
  heightText: (heightUm: number) => string,
): { readonly shapes: readonly Shape[]; readonly box: PlacedLabel } {
  const row = ring.map.radii.indexOf(place.radius)
  const column = ring.map.anglesDeg.indexOf(place.angleDeg)
  const { x, y } = ring.at(row, column)
  const up = isPeak ? -1 : 1
  const corners = [
    { x, y: y + up * markPx },
    { x: x + markPx, y: y - up * markPx },
    { x: x - markPx, y: y - up * markPx },
  ]
  const text = heightText(place.height)
  const widthPx = text.length * 7 + 6
  // Inwards, so that it stays in the picture.
  const side = x > ring.middle ? -1 : 1
  const textX = x + side * (markPx + 3 + widthPx / 2)
  const label = { text, at: { x: textX, y }, widthPx }
  const box = { text, at: { x: x + (side * widthPx) / 2, y }, widthPx: widthPx + 2 * markPx + 6 }
  const [paper, words] = labelShapes(label) as [Shape, Shape]
  const triangle: Shape = {
    kind: 'path',
    d: outlinePath(corners, true),
    fill: isPeak ? 'ink' : 'paper',
    stroke: 'ink',
    strokePx: 1.6,
    part: isPeak ? 'peak' : 'valley',
  }
  return {
    shapes: [paper, { ...words, isStrong: true } as Shape, triangle],
    box,
  }
}

function angleTicks(ring: Ring, angleText: (angleDeg: number) => string): readonly Shape[] {
  return [0, 90, 180, 270].flatMap((deg): Shape[] => {
    const [c, s] = [Math.cos((deg * Math.PI) / 180), -Math.sin((deg * Math.PI) / 180)]
    const from = { x: ring.middle + ring.rimPx * c, y: ring.middle + ring.rimPx * s }
    const out = (px: number) => ({ x: roundPx(from.x + px * c), y: roundPx(from.y + px * s) })
    const [tip, text] = [out(6), out(9)]
    const anchor = deg === 0 ? 'start' : deg === 180 ? 'end' : 'middle'
    const y = deg === 90 ? text.y : deg === 270 ? text.y + 10 : text.y + 4
    return [
      { kind: 'line', x1: out(0).x, y1: out(0).y, x2: tip.x, y2: tip.y, stroke: 'ink' },
      {
        kind: 'text',
        x: text.x,
        y: roundPx(y),
        text: angleText(deg),
        sizePx: textPx,
        anchor,
        tone: 'soft',
      },
    ]
  })
}
