import { type BandPattern, gapBands } from './band-surface.ts'
import type { Drawing, PathShape, Tone } from './drawing.ts'
import { circlePath, outlinePath, type PointPx } from './path-data.ts'
import { type PolarGrid, polarGrid } from './polar-grid.ts'
import { thinOutline } from './thin-outline.ts'
import { traceRegion } from './trace-region.ts'

/** Half widths of the drawn bands, in bands of gap: flank and middle of cos² light. */
const halfWidths: readonly { readonly tone: Tone; readonly bands: number }[] = [
  { tone: 'half', bands: 0.29 },
  { tone: 'dark', bands: 0.17 },
]
const marginPx = 2
/** Points nearer to the outline than this share of the picture's width are left out. */
const toleranceShare = 0.0017

/**
 * The picture of a light-band pattern on the ring of a face, as it looks through the optical
 * flat: bright land, soft dark bands where the air gap is a whole number of half wavelengths.
 * Line of contact at the bottom, wedge opening upwards (see gapBands): convex bands bulge up,
 * concave bands bulge down. One path a band and tone, its `part` named by the order of the band.
 *
 * @param options.pattern what is seen
 * @param options.sizePx width and height, px, 48 to 1000
 * @param options.innerRatio bore over rim diameter, 0.2 to 0.9 (default 0.42)
 * @returns the drawing; the same every time
 * @throws RangeError outside these ranges
 * Validity: a model face, drawn to be told apart from the others, not a reading.
 * @example bandPicture({ pattern: 'straight', sizePx: 100 }).widthPx // 100
 */
export function bandPicture(options: {
  readonly pattern: BandPattern
  readonly sizePx: number
  readonly innerRatio?: number
}): Drawing {
  const { pattern, sizePx, innerRatio = 0.42 } = options
  if (!(sizePx >= 48 && sizePx <= 1000)) {
    throw new RangeError(`bandPicture requires sizePx from 48 to 1000, got ${sizePx}`)
  }
  if (!(innerRatio >= 0.2 && innerRatio <= 0.9)) {
    throw new RangeError(`bandPicture requires innerRatio from 0.2 to 0.9, got ${innerRatio}`)
  }
  const key = `${pattern} ${sizePx} ${innerRatio}`
  const kept = drawn.get(key) ?? draw(pattern, sizePx, innerRatio)
  if (drawn.size < keptCount) drawn.set(key, kept)
  return kept
}

/** Pictures take 20 ms each and never change: the few that pages and documents use are kept. */
const drawn = new Map<string, Drawing>()
const keptCount = 64

function draw(pattern: BandPattern, sizePx: number, innerRatio: number): Drawing {
  const centre = { x: sizePx / 2, y: sizePx / 2 }
  const rimPx = sizePx / 2 - marginPx
  const edges = `${circlePath(centre, rimPx)}${circlePath(centre, rimPx * innerRatio)}`
  const grid = polarGrid(innerRatio, 36, 168)
  const area: AreaPath = (valueAt) => areaPath(grid, sizePx, valueAt)
  const marks = pattern === 'unreadable' ? patches(grid, area) : bands(pattern, grid, area)
  return {
    widthPx: sizePx,
    heightPx: sizePx,
    shapes: [
      { kind: 'path', d: edges, fill: 'bright', part: 'land' },
      ...marks,
      { kind: 'path', d: edges, stroke: 'ink', strokePx: 1.5, part: 'edges' },
    ],
  }
}

type AreaPath = (valueAt: (row: number, column: number) => number) => string

/** A field at every node of the grid, computed once and read many times. */
function sampled(grid: PolarGrid, field: (x: number, y: number) => number): readonly number[] {
  return Array.from({ length: grid.rowCount * grid.columnCount }, (_, index) => {
    const node = grid.node(Math.floor(index / grid.columnCount), index % grid.columnCount)
    return field(node.x, node.y)
  })
}

function bands(pattern: BandPattern, grid: PolarGrid, area: AreaPath): readonly PathShape[] {
  const gaps = sampled(grid, (x, y) => gapBands(pattern, x, y))
  const gapAt = (row: number, column: number): number =>
    gaps[row * grid.columnCount + column] ?? Number.NaN
  const lowest = Math.floor(Math.min(...gaps))
  const highest = Math.ceil(Math.max(...gaps))
  return halfWidths.flatMap(({ tone, bands: half }) => {
    const shapes: PathShape[] = []
    for (let order = lowest; order <= highest; order += 1) {
      const d = area((row, column) => half - Math.abs(gapAt(row, column) - order))
      if (d !== '') shapes.push({ kind: 'path', d, fill: tone, part: `band ${order}` })
    }
    return shapes
  })
}

/** Dirt, a matt or a wet face: blotches without any order, from a sum of fixed waves. */
function patches(grid: PolarGrid, area: AreaPath): readonly PathShape[] {
  const cloud = sampled(
    grid,
    (x, y) =>
      Math.sin(5.1 * x + 2.3 * y + 0.4) +
      Math.sin(3.7 * y - 4.4 * x + 1.9) +
      Math.sin(8.9 * x + 7.3 * y + 2.2) * 0.9 +
      Math.sin(10.7 * y - 9.1 * x + 5.1) * 0.8 +
      Math.sin(17.3 * x - 12.9 * y + 0.7) * 0.5,
  )
  const above = (level: number): string =>
    area((row, column) => (cloud[row * grid.columnCount + column] ?? Number.NaN) - level)
  return [
    { kind: 'path', d: above(0.3), fill: 'half', part: 'smear' },
    { kind: 'path', d: above(2), fill: 'dark', part: 'spot' },
  ]
}

function areaPath(grid: PolarGrid, sizePx: number, valueAt: Parameters<AreaPath>[0]): string {
  // A tenth of a pixel is enough for outlines this soft, and keeps the path short.
  const tenths = (px: number): number => Math.round(px * 10) / 10
  const rimPx = sizePx / 2 - marginPx
  const toPx = (p: PointPx): PointPx => ({
    x: tenths(sizePx / 2 + rimPx * p.x),
    y: tenths(sizePx / 2 - rimPx * p.y),
  })
  return traceRegion(grid, valueAt)
    .map((loop) => thinOutline(loop.map(toPx), toleranceShare * sizePx))
    .filter((loop) => loop.length > 2)
    .map((loop) => outlinePath(loop, true))
    .join('')
}
