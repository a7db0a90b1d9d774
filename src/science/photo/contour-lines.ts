/** A line along which a value is constant, in places of the grid: row and column, with parts. */
export interface ContourLine {
  readonly value: number
  readonly points: readonly (readonly [number, number])[]
}

interface Grid {
  readonly rowCount: number
  readonly columnCount: number
  /** Row by row; the last column borders on the first. */
  readonly values: ArrayLike<number>
}

/** Where a value lies on the four sides of a cell: keys of the sides, and the places. */
function crossings(grid: Grid, row: number, column: number, value: number) {
  const { columnCount, values } = grid
  const right = (column + 1) % columnCount
  const at = (r: number, c: number) => values[r * columnCount + c] as number
  const sides = [
    { key: 2 * (row * columnCount + column), a: at(row, column), b: at(row, right) },
    { key: 2 * (row * columnCount + right) + 1, a: at(row, right), b: at(row + 1, right) },
    { key: 2 * ((row + 1) * columnCount + column), a: at(row + 1, column), b: at(row + 1, right) },
    { key: 2 * (row * columnCount + column) + 1, a: at(row, column), b: at(row + 1, column) },
  ] as const
  const found: { key: number; place: readonly [number, number] }[] = []
  sides.forEach((side, k) => {
    if (side.a < value === side.b < value) return
    const part = (value - side.a) / (side.b - side.a)
    const place = [
      [row, column + part],
      [row + part, column + 1],
      [row + 1, column + part],
      [row + part, column],
    ][k] as [number, number]
    found.push({ key: side.key, place })
  })
  return found
}

/** Joins pieces that share a side of a cell into lines. */
function join(
  pieces: readonly (readonly [number, number])[],
  places: ReadonlyMap<number, readonly [number, number]>,
): (readonly [number, number])[][] {
  const neighbours = new Map<number, number[]>()
  for (const [a, b] of pieces) {
    neighbours.set(a, [...(neighbours.get(a) ?? []), b])
    neighbours.set(b, [...(neighbours.get(b) ?? []), a])
  }
  const seen = new Set<number>()
  const walk = (start: number) => {
    const line: number[] = []
    let here: number | undefined = start
    while (here !== undefined) {
      seen.add(here)
      line.push(here)
      here = neighbours.get(here)?.find((next) => !seen.has(next))
    }
    const first = neighbours.get(start) ?? []
    const isClosed = line.length > 2 && first.includes(line.at(-1) as number)
    return isClosed ? [...line, start] : line
  }
  // Open lines from their ends first, what is left is closed.
  const keys = [...neighbours.keys()]
  const ends = keys.filter((key) => neighbours.get(key)?.length === 1)
  return [...ends, ...keys].flatMap((key) => {
    if (seen.has(key)) return []
    return [walk(key).map((one) => places.get(one) as readonly [number, number])]
  })
}

/**
 * Traces the lines along which a value over a ring is constant (marching squares).
 *
 * @param grid values on rings (rows) and rays (columns, closed around)
 * @param levels the constant values
 * @returns lines in places of the grid; a closed line ends where it began
 * Source: marching squares, common practice, no source.
 * @example contourLines({ rowCount: 2, columnCount: 3, values: [0, 0, 0, 1, 1, 1] }, [0.25])
 *   .length // 1
 */
export function contourLines(grid: Grid, levels: readonly number[]): ContourLine[] {
  return levels.flatMap((value) => {
    const places = new Map<number, readonly [number, number]>()
    const pieces: (readonly [number, number])[] = []
    for (let row = 0; row + 1 < grid.rowCount; row++) {
      for (let column = 0; column < grid.columnCount; column++) {
        const found = crossings(grid, row, column, value)
        for (const { key, place } of found) {
          if (!places.has(key)) places.set(key, place)
        }
        for (let k = 0; k + 1 < found.length; k += 2) {
          const [a, b] = [found[k], found[k + 1]]
          if (a !== undefined && b !== undefined) pieces.push([a.key, b.key])
        }
      }
    }
    return join(pieces, places).map((points) => ({ value, points }))
  })
}
