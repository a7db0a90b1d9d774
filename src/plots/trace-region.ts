import type { PointPx } from './path-data.ts'
import type { PolarGrid } from './polar-grid.ts'

// The sides of a cell: bottom, right, top, left; row grows upwards, column to the right.
// For each of the 16 cases the pairs of sides that an outline joins; 5 and 10 are the two cases
// with opposite corners inside, taken as apart.
const joins: readonly (readonly (readonly [number, number])[])[] = [
  [],
  [[3, 0]],
  [[0, 1]],
  [[3, 1]],
  [[1, 2]],
  [
    [3, 0],
    [1, 2],
  ],
  [[0, 2]],
  [[3, 2]],
  [[2, 3]],
  [[2, 0]],
  [
    [0, 1],
    [2, 3],
  ],
  [[2, 1]],
  [[1, 3]],
  [[1, 0]],
  [[0, 3]],
  [],
]

/**
 * The outlines of the part of a ring where a field is not negative (marching squares on the
 * polar grid, one row of outside nodes added along bore and rim, so every outline closes).
 *
 * @param grid the ring
 * @param valueAt value of the field at a node of the grid
 * @returns closed outlines in outer radii; together, by the even-odd rule, they are the area
 * @example traceRegion({ rowCount: 2, columnCount: 8, node: () => ({ x: 1, y: 0 }) }, () => -1).length // 0
 */
export function traceRegion(
  grid: PolarGrid,
  valueAt: (row: number, column: number) => number,
): readonly (readonly PointPx[])[] {
  const { columnCount } = grid
  const rows = grid.rowCount + 2
  const place = (row: number, column: number): PointPx =>
    grid.node(Math.min(grid.rowCount - 1, Math.max(0, row - 1)), column % columnCount)
  const values: number[] = []
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columnCount; column += 1) {
      const isOutside = row === 0 || row === rows - 1
      values.push(isOutside ? -1 : valueAt(row - 1, column))
    }
  }
  const value = (row: number, column: number): number =>
    values[row * columnCount + (column % columnCount)] ?? -1

  // A side of a cell is named once for both cells that share it.
  const along = (row: number, column: number): number =>
    2 * (row * columnCount + (column % columnCount))
  const points = new Map<number, PointPx>()
  const crossing = (key: number, a: readonly [number, number], b: readonly [number, number]) => {
    if (points.has(key)) return
    const va = value(a[0], a[1])
    const vb = value(b[0], b[1])
    const share = va / (va - vb)
    const pa = place(a[0], a[1])
    const pb = place(b[0], b[1])
    points.set(key, { x: pa.x + share * (pb.x - pa.x), y: pa.y + share * (pb.y - pa.y) })
  }

  const next = new Map<number, number>()
  for (let row = 0; row < rows - 1; row += 1) {
    for (let column = 0; column < columnCount; column += 1) {
      const corners = [
        [row, column],
        [row, column + 1],
        [row + 1, column + 1],
        [row + 1, column],
      ] as const
      const sides = [
        along(row, column),
        along(row, column + 1) + 1,
        along(row + 1, column),
        along(row, column) + 1,
      ]
      let caseIndex = 0
      corners.forEach(([r, c], index) => {
        if (value(r, c) >= 0) caseIndex |= 1 << index
      })
      for (const [from, to] of joins[caseIndex] ?? []) {
        for (const side of [from, to]) {
          const a = corners[side]
          const b = corners[(side + 1) % 4]
          const key = sides[side]
          if (a && b && key !== undefined) crossing(key, a, b)
        }
        const fromKey = sides[from]
        const toKey = sides[to]
        if (fromKey !== undefined && toKey !== undefined) next.set(fromKey, toKey)
      }
    }
  }
  return closedLoops(next, points)
}

/** Walks the joined sides until each walk is back where it began. */
function closedLoops(
  next: Map<number, number>,
  points: ReadonlyMap<number, PointPx>,
): readonly (readonly PointPx[])[] {
  const loops: PointPx[][] = []
  for (const start of [...next.keys()]) {
    const loop: PointPx[] = []
    let key: number | undefined = start
    while (key !== undefined && next.has(key)) {
      const point = points.get(key)
      if (point) loop.push(point)
      const following = next.get(key)
      next.delete(key)
      key = following
    }
    if (loop.length > 2) loops.push(loop)
  }
  return loops
}
