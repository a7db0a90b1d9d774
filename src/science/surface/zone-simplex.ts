import { requireWhole } from '../check/require-whole.ts'
import { solveSquare } from '../linear/solve-square.ts'

/** A point of a surface: its foot and its height. */
export interface ZonePoint {
  readonly x: number
  readonly y: number
  readonly z: number
}

/** What the simplex method found, in the units of its points. */
export interface ZoneSolution {
  readonly height: number
  readonly slopeX: number
  readonly slopeY: number
  readonly highIndexes: readonly number[]
  readonly lowIndexes: readonly number[]
}

/** A column of the programme: a point pressed by the upper (high) or the lower plane. */
interface Column {
  readonly index: number
  readonly isHigh: boolean
}

const tolerance = 1e-12
/** So many steps without gain, and the first column that may enter does (rule of Bland). */
const patience = 20
const mostSteps = 20_000

const entries = (point: ZonePoint, isHigh: boolean): readonly number[] =>
  isHigh ? [1, 0, point.x, point.y] : [0, 1, -point.x, -point.y]

/** Three points that span the largest triangle that a short search finds. */
function firstTriangle(points: readonly ZonePoint[]): readonly [number, number, number] {
  const furthest = (of: (p: ZonePoint) => number) =>
    points.reduce((best, p, i) => (of(p) > of(points[best] as ZonePoint) ? i : best), 0)
  const a = furthest((p) => p.x)
  const pa = points[a] as ZonePoint
  const b = furthest((p) => Math.hypot(p.x - pa.x, p.y - pa.y))
  const pb = points[b] as ZonePoint
  const area = (p: ZonePoint) =>
    Math.abs((pb.x - pa.x) * (p.y - pa.y) - (pb.y - pa.y) * (p.x - pa.x))
  return [a, b, furthest(area)]
}

/**
 * Solves the linear programme of the minimum zone by the simplex method on its dual: which points
 * press the upper plane down and the lower plane up, in balance, so that their mean heights are as
 * far apart as can be.
 *
 * most sum u z - sum v z with sum u = sum v = 1, sum u x = sum v x, sum u y = sum v y, u, v >= 0
 *
 * @param points three or more, not all on one line, coordinates of the size of 1
 * @returns height between the planes, their slope, and the points with u or v above 0
 * @throws RangeError with fewer than three points, or when no end is reached
 * Source: G. B. Dantzig's simplex method; R. G. Bland 1977 against cycles (from memory).
 * @example zoneSimplex([{ x: -1, y: 0, z: 1 }, { x: 1, y: 0, z: 1 }, { x: 0, y: -1, z: 0 },
 *   { x: 0, y: 1, z: 0 }]).height // 1.0000
 */
export function zoneSimplex(points: readonly ZonePoint[]): ZoneSolution {
  requireWhole('zoneSimplex', 'count of points', points.length, { from: 3, to: 1_000_000 })
  const [a, b, c] = firstTriangle(points)
  const basis: Column[] = [
    { index: a, isHigh: true },
    { index: a, isHigh: false },
    { index: b, isHigh: true },
    { index: c, isHigh: true },
  ]
  let stalledCount = 0
  let before = Number.NEGATIVE_INFINITY
  for (let step = 0; step < mostSteps; step++) {
    const state = pricesOf(points, basis)
    const entering = choose(points, state.prices, stalledCount > patience)
    if (entering === null) return solutionOf(basis, state)
    basis[leaving(points, basis, state.loads, entering)] = entering
    stalledCount = state.height > before + tolerance ? 0 : stalledCount + 1
    before = Math.max(before, state.height)
  }
  throw new RangeError('zoneSimplex requires points that let it end, got no end')
}

interface State {
  /** Upper plane's height at 0, minus the lower one's, slopes. */
  readonly prices: readonly number[]
  readonly loads: readonly number[]
  readonly height: number
}

function pricesOf(points: readonly ZonePoint[], basis: readonly Column[]): State {
  const columns = basis.map(({ index, isHigh }) => entries(points[index] as ZonePoint, isHigh))
  const rows = [0, 1, 2, 3].map((k) => columns.map((column) => column[k] as number))
  const gains = basis.map(({ index, isHigh }) => {
    const { z } = points[index] as ZonePoint
    return isHigh ? z : -z
  })
  const loads = solveSquare(rows, [1, 1, 0, 0])
  const prices = solveSquare(columns, gains)
  if (loads === null || prices === null) {
    throw new RangeError('zoneSimplex requires points that are not all on one line')
  }
  return { prices, loads, height: (prices[0] as number) + (prices[1] as number) }
}

/** The point furthest outside the two planes; or the first one that is outside. */
function choose(
  points: readonly ZonePoint[],
  prices: readonly number[],
  isFirst: boolean,
): Column | null {
  const [top, bottom, slopeX, slopeY] = prices as [number, number, number, number]
  let best: Column | null = null
  let most = tolerance
  for (let index = 0; index < points.length; index++) {
    const { x, y, z } = points[index] as ZonePoint
    const height = z - slopeX * x - slopeY * y
    const above = height - top
    const below = -height - bottom
    const outside = Math.max(above, below)
    if (outside > most) {
      best = { index, isHigh: above >= below }
      most = outside
      if (isFirst) return best
    }
  }
  return best
}

/** The column whose load is the first to reach 0 as the new one is loaded. */
function leaving(
  points: readonly ZonePoint[],
  basis: readonly Column[],
  loads: readonly number[],
  entering: Column,
): number {
  const columns = basis.map(({ index, isHigh }) => entries(points[index] as ZonePoint, isHigh))
  const rows = [0, 1, 2, 3].map((k) => columns.map((column) => column[k] as number))
  const point = points[entering.index] as ZonePoint
  const shares = solveSquare(rows, entries(point, entering.isHigh)) as number[]
  const order = (at: number) => 2 * (basis[at] as Column).index + (basis[at]?.isHigh ? 0 : 1)
  let chosen = -1
  let least = Number.POSITIVE_INFINITY
  shares.forEach((share, at) => {
    if (!(share > tolerance)) return
    const ratio = Math.max(0, loads[at] as number) / share
    const isTied = chosen >= 0 && Math.abs(ratio - least) <= tolerance
    if (isTied ? order(at) < order(chosen) : ratio < least) {
      chosen = at
      least = ratio
    }
  })
  return chosen
}

function solutionOf(basis: readonly Column[], { prices, loads, height }: State): ZoneSolution {
  const loaded = (isHigh: boolean) =>
    basis
      .filter((column, at) => column.isHigh === isHigh && (loads[at] as number) > tolerance)
      .map((column) => column.index)
      .sort((first, second) => first - second)
  return {
    height: Math.max(0, height),
    slopeX: prices[2] as number,
    slopeY: prices[3] as number,
    highIndexes: loaded(true),
    lowIndexes: loaded(false),
  }
}
