import { circlePath, outlinePath, type PointPx } from './path-data.ts'
import { polarGrid } from './polar-grid.ts'
import { thinOutline } from './thin-outline.ts'
import { traceRegion } from './trace-region.ts'

/** The land of a face on a square canvas, and areas on it as path data. */
export interface RingArea {
  /** Rim and bore, to be filled as land or stroked as edges. */
  readonly edges: string
  /** Where a field sampled on the ring is not negative after `change`; '' where it is nowhere so. */
  readonly pathOf: (values: readonly number[], change: (value: number) => number) => string
  /** A field of x across and y upwards, in outer radii, at every node of the grid. */
  readonly sampled: (field: (x: number, y: number) => number) => readonly number[]
  /** Canvas place of a point in outer radii. */
  readonly toPx: (point: PointPx) => PointPx
}

const marginPx = 2
/** Points nearer to the outline than this share of the picture's width are left out. */
const toleranceShare = 0.0017

/**
 * A ring on a square canvas, for drawings of faces.
 *
 * @param options.sizePx width and height, px, 48 to 1000
 * @param options.innerRatio bore over rim diameter, 0.2 to 0.9
 * @returns its edges and a way to draw areas on it
 * @throws RangeError outside these ranges
 * @example ringArea({ sizePx: 100, innerRatio: 0.5 }).toPx({ x: 1, y: 0 }).x // 98
 */
export function ringArea(options: {
  readonly sizePx: number
  readonly innerRatio: number
}): RingArea {
  const { sizePx, innerRatio } = options
  if (!(sizePx >= 48 && sizePx <= 1000)) {
    throw new RangeError(`ringArea requires sizePx from 48 to 1000, got ${sizePx}`)
  }
  if (!(innerRatio >= 0.2 && innerRatio <= 0.9)) {
    throw new RangeError(`ringArea requires innerRatio from 0.2 to 0.9, got ${innerRatio}`)
  }
  const centre = { x: sizePx / 2, y: sizePx / 2 }
  const rimPx = sizePx / 2 - marginPx
  const grid = polarGrid(innerRatio, 36, 168)
  // A tenth of a pixel is enough for outlines this soft, and keeps the path short.
  const tenths = (px: number): number => Math.round(px * 10) / 10
  const toPx = (p: PointPx): PointPx => ({
    x: tenths(sizePx / 2 + rimPx * p.x),
    y: tenths(sizePx / 2 - rimPx * p.y),
  })
  return {
    edges: `${circlePath(centre, rimPx)}${circlePath(centre, rimPx * innerRatio)}`,
    toPx,
    sampled: (field) =>
      Array.from({ length: grid.rowCount * grid.columnCount }, (_, index) => {
        const node = grid.node(Math.floor(index / grid.columnCount), index % grid.columnCount)
        return field(node.x, node.y)
      }),
    pathOf: (values, change) =>
      traceRegion(grid, (row, column) =>
        change(values[row * grid.columnCount + column] ?? Number.NaN),
      )
        .map((loop) => thinOutline(loop.map(toPx), toleranceShare * sizePx))
        .filter((loop) => loop.length > 2)
        .map((loop) => outlinePath(loop, true))
        .join(''),
  }
}
