import type { PointPx } from './path-data.ts'

/** The ring of a face cut into rows from bore to rim and columns around. */
export interface PolarGrid {
  readonly rowCount: number
  readonly columnCount: number
  /** Position of a node in outer radii, y up; row 0 lies on the bore, the last on the rim. */
  readonly node: (row: number, column: number) => PointPx
}

/**
 * A grid that ends exactly on bore and rim, so areas traced on it need no clipping.
 *
 * @param innerRatio bore over rim diameter, 0.05 to 0.95
 * @param rowCount rows, 2 or more
 * @param columnCount columns around the ring, 8 or more
 * @returns the grid
 * @throws RangeError outside these ranges
 * @example polarGrid(0.5, 11, 90).node(10, 0).x // 1
 */
export function polarGrid(innerRatio: number, rowCount: number, columnCount: number): PolarGrid {
  if (!(innerRatio >= 0.05 && innerRatio <= 0.95)) {
    throw new RangeError(`polarGrid requires innerRatio from 0.05 to 0.95, got ${innerRatio}`)
  }
  if (!(rowCount >= 2 && columnCount >= 8)) {
    throw new RangeError(
      `polarGrid requires rowCount from 2 and columnCount from 8, got ${rowCount}, ${columnCount}`,
    )
  }
  const node = (row: number, column: number): PointPx => {
    const radius = innerRatio + ((1 - innerRatio) * row) / (rowCount - 1)
    const angle = (2 * Math.PI * column) / columnCount
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) }
  }
  return { rowCount, columnCount, node }
}
