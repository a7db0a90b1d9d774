import { requireFinite } from '../check/require-finite.ts'
import type { AnnularSurface } from './annular-surface.ts'
import { annularTerms } from './annular-terms.ts'

/**
 * Turns a stored surface about its middle, counter-clockwise.
 *
 * for each wave of order m: cosine' = cosine cos(m turn) - sine sin(m turn),
 * sine' = cosine sin(m turn) + sine cos(m turn)
 *
 * @param surface as it is stored
 * @param turnDeg any angle, in degrees
 * @returns the surface as it looks after the turn
 * @throws RangeError when the count of coefficients is not that of the level
 * Source: addition theorem of the cosine.
 * @example turnSurface({ radiusRatio: 0.5, level: 1, coefficients: [0, 0, 0, 0, 2, 0, 0, 0],
 *   seenFrom: 0.5, seenTo: 1 }, 45).coefficients[5] // 2.0000
 */
export function turnSurface(surface: AnnularSurface, turnDeg: number): AnnularSurface {
  requireFinite('turnSurface', 'turnDeg', turnDeg)
  const terms = annularTerms(surface.level)
  if (surface.coefficients.length !== terms.length) {
    throw new RangeError(
      `turnSurface requires ${terms.length} coefficients, got ${surface.coefficients.length}`,
    )
  }
  const coefficients = [...surface.coefficients]
  terms.forEach(({ angularOrder, isSine }, k) => {
    if (angularOrder === 0 || isSine) return
    // The sine of a wave always follows its cosine.
    const [cosine, sine] = [coefficients[k] as number, coefficients[k + 1] as number]
    const angle = (angularOrder * turnDeg * Math.PI) / 180
    coefficients[k] = cosine * Math.cos(angle) - sine * Math.sin(angle)
    coefficients[k + 1] = cosine * Math.sin(angle) + sine * Math.cos(angle)
  })
  return { ...surface, coefficients }
}
