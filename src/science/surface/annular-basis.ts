import { requireRange } from '../check/require-range.ts'
import { requireWhole } from '../check/require-whole.ts'
import type { AnnularTerm } from './annular-terms.ts'

/** Legendre polynomials of degree 0 to `degree` at t, by the recurrence of Bonnet. */
function legendre(t: number, degree: number, into: Float64Array): void {
  into[0] = 1
  if (degree > 0) into[1] = t
  for (let p = 1; p < degree; p++) {
    const higher = (2 * p + 1) * t * (into[p] as number) - p * (into[p - 1] as number)
    into[p + 1] = higher / (p + 1)
  }
}

/**
 * Gives the value of every term at every point of a ring of outer radius 1.
 *
 * term = P_p(t) cos(m angle) or P_p(t) sin(m angle), t = (2 r - 1 - eps) / (1 - eps);
 * for m = 1, p = 0 it is x or y, so that these two together are a plane
 *
 * @param input terms: as annularTerms gives them; radiusRatio: eps, inner over outer radius, from
 *   0.05 to 0.99; xs, ys: the points in units of the outer radius, y upwards, angles
 *   counter-clockwise from x; points off the ring are answered too (the polynomials go on)
 * @returns one row a point, one column a term
 * @throws RangeError when xs and ys differ in length or the ratio lies outside its range
 * Source: V. N. Mahajan, J. Opt. Soc. Am. 71, 75 (1981) for polynomials over an annulus; these are
 *   products of Legendre polynomials and waves, not orthogonal by area.
 * @example annularBasis({ terms: [{ angularOrder: 2, radialOrder: 1, isSine: false }],
 *   radiusRatio: 0.5, xs: [0], ys: [1] })[0] // -1
 */
export function annularBasis(input: {
  readonly terms: readonly AnnularTerm[]
  readonly radiusRatio: number
  readonly xs: ArrayLike<number>
  readonly ys: ArrayLike<number>
}): Float64Array {
  const { terms, radiusRatio, xs, ys } = input
  requireRange('annularBasis', 'radiusRatio', radiusRatio, { from: 0.05, to: 0.99 })
  requireWhole('annularBasis', 'ys length', ys.length, { from: xs.length, to: xs.length })
  const termCount = terms.length
  const radials = Int32Array.from(terms, (term) => term.radialOrder)
  const angulars = Int32Array.from(terms, (term) => term.angularOrder)
  const degree = Math.max(0, ...radials)
  const waveCount = Math.max(0, ...angulars)
  const polynomials = new Float64Array(degree + 1)
  const cosines = new Float64Array(waveCount + 1)
  const sines = new Float64Array(waveCount + 1)
  const values = new Float64Array(xs.length * termCount)
  cosines[0] = 1
  for (let i = 0; i < xs.length; i++) {
    const x = xs[i] as number
    const y = ys[i] as number
    const r = Math.hypot(x, y)
    const c = r > 0 ? x / r : 1
    const s = r > 0 ? y / r : 0
    legendre((2 * r - 1 - radiusRatio) / (1 - radiusRatio), degree, polynomials)
    for (let m = 1; m <= waveCount; m++) {
      const before = cosines[m - 1] as number
      cosines[m] = before * c - (sines[m - 1] as number) * s
      sines[m] = (sines[m - 1] as number) * c + before * s
    }
    for (let k = 0; k < termCount; k++) {
      const m = angulars[k] as number
      const p = radials[k] as number
      const isSine = (terms[k] as AnnularTerm).isSine
      const radial = m === 1 && p === 0 ? r : (polynomials[p] as number)
      values[i * termCount + k] = radial * ((isSine ? sines[m] : cosines[m]) as number)
    }
  }
  return values
}
