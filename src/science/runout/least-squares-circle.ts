import { requireFinite } from '../check/require-finite.ts'
import { requireWhole } from '../check/require-whole.ts'
import { leastSquares } from '../statistics/least-squares.ts'

/** A place in a plane, in any one unit. */
export interface PlanePoint {
  readonly x: number
  readonly y: number
}

/** A circle, and how far the points lie outside it (+) or inside it. */
export interface FittedCircle {
  readonly x: number
  readonly y: number
  readonly radius: number
  readonly departures: readonly number[]
}

const mostSteps = 200

/**
 * Gives the least-squares circle (LSCI) through points of a section, by their distances from it.
 *
 * least sum of (distance from centre - radius)^2, by Gauss-Newton from the algebraic circle
 *
 * @param points three or more, not all on one line, x and y in one unit
 * @returns centre, radius and departures in that unit
 * @throws RangeError with fewer points, or where none is nearest
 * Validity: of a short arc, centre and radius are known poorly, as its conditioning says.
 * Source: W. Gander, G. H. Golub and R. Strebel 1994, whose six points give centre (4.7398, 2.9835)
 *   and radius 4.7142; checked against NIST's reference pairs.
 * @example leastSquaresCircle([{ x: 1, y: 7 }, { x: 2, y: 6 }, { x: 5, y: 8 }, { x: 7, y: 7 },
 *   { x: 9, y: 5 }, { x: 3, y: 7 }]).radius // 4.7142
 */
export function leastSquaresCircle(points: readonly PlanePoint[]): FittedCircle {
  requireWhole('leastSquaresCircle', 'count of points', points.length, { from: 3, to: 1_000_000 })
  for (const { x, y } of points) {
    for (const value of [x, y]) requireFinite('leastSquaresCircle', 'coordinate', value)
  }
  const count = points.length
  const middle = {
    x: points.reduce((sum, p) => sum + p.x, 0) / count,
    y: points.reduce((sum, p) => sum + p.y, 0) / count,
  }
  const moved = points.map((p) => ({ x: p.x - middle.x, y: p.y - middle.y }))
  let circle = algebraicCircle(moved)
  for (let step = 0; step < mostSteps; step++) {
    const next = improve(moved, circle)
    const change = Math.hypot(next.x - circle.x, next.y - circle.y, next.radius - circle.radius)
    circle = next
    if (change <= 1e-15 * circle.radius) break
  }
  const departures = moved.map((p) => Math.hypot(p.x - circle.x, p.y - circle.y) - circle.radius)
  return { x: circle.x + middle.x, y: circle.y + middle.y, radius: circle.radius, departures }
}

type Circle = Pick<FittedCircle, 'x' | 'y' | 'radius'>

/** x^2 + y^2 = 2 a x + 2 b y + c, fitted as it stands. */
function algebraicCircle(points: readonly PlanePoint[]): Circle {
  const { coefficients } = leastSquares({
    columns: [points.map((p) => 2 * p.x), points.map((p) => 2 * p.y), points.map(() => 1)],
    values: points.map((p) => p.x * p.x + p.y * p.y),
  })
  const [x, y, c] = coefficients as [number, number, number]
  return { x, y, radius: Math.sqrt(c + x * x + y * y) }
}

function improve(points: readonly PlanePoint[], { x, y, radius }: Circle): Circle {
  const distances = points.map((p) => Math.hypot(p.x - x, p.y - y))
  const { coefficients } = leastSquares({
    columns: [
      points.map((p, i) => (p.x - x) / (distances[i] as number)),
      points.map((p, i) => (p.y - y) / (distances[i] as number)),
      points.map(() => 1),
    ],
    values: distances.map((one) => one - radius),
  })
  const [dx, dy, dr] = coefficients as [number, number, number]
  return { x: x + dx, y: y + dy, radius: radius + dr }
}
