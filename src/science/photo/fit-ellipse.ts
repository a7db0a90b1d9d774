import { requireFinite } from '../check/require-finite.ts'
import { requireWhole } from '../check/require-whole.ts'
import { leastSquares } from '../statistics/least-squares.ts'
import type { Ellipse } from './ellipse.ts'

/** The half axes from 1 - e and 1 + e, f and the constant of the centred form; null when none. */
function axes(e: number, f: number, constant: number): { big: number; small: number } | null {
  const spread = Math.hypot(e, f / 2)
  if (!(constant > 0 && spread < 0.9)) return null
  return { big: Math.sqrt(constant / (1 - spread)), small: Math.sqrt(constant / (1 + spread)) }
}

/**
 * Fits an ellipse, nearly a circle, to points on an edge.
 *
 * x^2 + y^2 + e (x^2 - y^2) + f x y + D x + E y = F, least squares
 *
 * @param points 6 or more pairs x, y in pixels of the upright picture, not all on one line
 * @returns the ellipse, rx the larger half axis; null when the points lie on none that is at most
 *   about four times as long as wide
 * @throws RangeError with fewer points, or one that is not finite
 * Validity: the algebraic distance favours no side as long as the ellipse is nearly a circle.
 * Source: linear least squares; the form was chosen so that a circle is e = f = 0.
 * @example fitEllipse([[8, 5], [2, 5], [5, 8], [5, 2], [6.8, 7.4], [3.2, 2.6]])?.rx // 3
 */
export function fitEllipse(points: readonly (readonly [number, number])[]): Ellipse | null {
  requireWhole('fitEllipse', 'point count', points.length, { from: 6, to: 100_000 })
  for (const [x, y] of points) {
    requireFinite('fitEllipse', 'x', x)
    requireFinite('fitEllipse', 'y', y)
  }
  const mx = points.reduce((sum, [x]) => sum + x, 0) / points.length
  const my = points.reduce((sum, [, y]) => sum + y, 0) / points.length
  const size = Math.sqrt(
    points.reduce((sum, [x, y]) => sum + (x - mx) ** 2 + (y - my) ** 2, 0) / points.length,
  )
  if (!(size > 1e-9)) return null
  const scaled = points.map(([x, y]) => [(x - mx) / size, (y - my) / size] as const)
  const columns = [
    scaled.map(([x, y]) => x * x - y * y),
    scaled.map(([x, y]) => x * y),
    scaled.map(([x]) => x),
    scaled.map(([, y]) => y),
    scaled.map(() => 1),
  ]
  const values = scaled.map(([x, y]) => -(x * x + y * y))
  let fit: readonly number[]
  try {
    fit = leastSquares({ columns, values }).coefficients
  } catch {
    return null
  }
  const [e = 0, f = 0, D = 0, E = 0, minusF = 0] = fit
  // The centre is where the gradient vanishes: a 2 x 2 system.
  const determinant = 4 * (1 + e) * (1 - e) - f * f
  if (!(determinant > 0.1)) return null
  const cx = (-2 * (1 - e) * D + f * E) / determinant
  const cy = (-2 * (1 + e) * E + f * D) / determinant
  const constant = -minusF - (D * cx + E * cy) / 2
  const half = axes(e, f, constant)
  if (half === null) return null
  // Along the larger axis the form is smallest; y of the picture points down.
  const downwards = Math.atan2(-f / 2, -e) / 2
  return {
    cx: mx + size * cx,
    cy: my + size * cy,
    rx: size * half.big,
    ry: size * half.small,
    rotationDeg: (-downwards * 180) / Math.PI,
  }
}
