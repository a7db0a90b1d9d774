import { requireRange } from '../check/require-range.ts'
import { requireWhole } from '../check/require-whole.ts'
import { choleskySolve } from '../linear/cholesky-solve.ts'
import { annularBasis } from '../surface/annular-basis.ts'
import { type AnnularTerm, annularTerms } from '../surface/annular-terms.ts'
import { markPrior } from './mark-prior.ts'
import { type SolvedMarks, solveMarks } from './solve-marks.ts'

/** A place on a ring of outer radius 1 and the order of the band that was seen there. */
export interface RingMark {
  readonly x: number
  readonly y: number
  readonly order: number
}

/** A gap fitted to marks: what it leaves, and how sure it is. */
export interface FittedMarks {
  readonly level: 4
  /** The constant, then the coefficients of annularTerms(4), in bands. */
  readonly gap: Float64Array
  /** Lower triangle of the inverse covariance of these. */
  readonly lower: Float64Array
  /** What the marks say of the size of the form, and of the noise over what is usual. */
  readonly scaleBands: number
  readonly noiseFactor: number
  /** Order less fitted order of each mark. */
  readonly residuals: readonly number[]
  /**
   * Order of each mark less what all the others say of it, and that over its standard deviation,
   * with the usual noise. */
  readonly surprises: readonly { readonly bands: number; readonly ratio: number }[]
}

const level = 4
/** How well the middle of a band is met, in bands; and a place on the picture, in outer radii. */
const usualReadingBands = 0.06
const usualPlace = 0.004
const scales = Array.from({ length: 18 }, (_, i) => 0.04 * 1.37 ** i)
const noiseFactors = [1, 1.5, 2.25, 3.4] as const

/** One row a mark: 1, then the terms there. */
function rowsOf(
  marks: readonly RingMark[],
  terms: readonly AnnularTerm[],
  radiusRatio: number,
): Float64Array {
  const xs = marks.map((mark) => mark.x)
  const ys = marks.map((mark) => mark.y)
  const basis = annularBasis({ terms, radiusRatio, xs, ys })
  const size = terms.length + 1
  const rows = new Float64Array(marks.length * size)
  marks.forEach((_, i) => {
    rows[i * size] = 1
    rows.set(basis.subarray(i * terms.length, (i + 1) * terms.length), i * size + 1)
  })
  return rows
}

const fittedAt = (rows: Float64Array, gap: Float64Array, i: number) =>
  gap.reduce((sum, value, k) => sum + value * (rows[i * gap.length + k] as number), 0)

/**
 * Fits a gap to places of known band order: every term of a fine surface, held small by a prior
 * whose size is the one that makes the marks most likely.
 *
 * order = constant + plane + form + noise; noise sd = factor x hypot(0.06, 0.004 slope)
 *
 * @param marks 20 or more (by themselves they leave form between them open: U says how much)
 * @param radiusRatio inner over outer radius, from 0.05 to 0.99
 * @returns the fit; the same marks give the same numbers, bit for bit
 * @throws RangeError outside these ranges, or when the marks leave the plane open
 * Validity: a smooth face; sizes of form and noise are chosen from a grid of 18 and 4.
 * Source: Bayesian linear model with its prior scale by evidence, D. J. C. MacKay 1992 (from
 *   memory); noise and grids chosen on synthetic faces.
 * @example fitMarks(Array.from({ length: 20 }, (_, i) => ({ x: Math.cos(i), y: Math.sin(i),
 *   order: 3 + 4 * Math.cos(i) })), 0.8).gap[1] // 4.00
 */
export function fitMarks(marks: readonly RingMark[], radiusRatio: number): FittedMarks {
  requireWhole('fitMarks', 'count of marks', marks.length, { from: 20, to: 5000 })
  requireRange('fitMarks', 'radiusRatio', radiusRatio, { from: 0.05, to: 0.99 })
  const terms = annularTerms(level)
  const rows = rowsOf(marks, terms, radiusRatio)
  const orders = marks.map((mark) => mark.order)
  const solve = (scaleBands: number, sd: number) =>
    solveMarks(rows, orders, {
      sds: new Float64Array(marks.length).fill(sd),
      precisions: markPrior(terms, scaleBands),
    })
  const level0 = solve(scales[0] as number, usualReadingBands).gap
  const slope = Math.hypot(level0[1] as number, level0[2] as number)
  const usualSd = Math.hypot(usualReadingBands, usualPlace * slope)
  const best = (factor: number) =>
    scales
      .map((scaleBands) => ({ scaleBands, factor, fit: solve(scaleBands, factor * usualSd) }))
      .reduce((a, b) => (b.fit.evidence > a.fit.evidence ? b : a))
  const usual = best(1)
  const chosen = noiseFactors
    .map((factor) => (factor === 1 ? usual : best(factor)))
    .reduce((a, b) => (b.fit.evidence > a.fit.evidence ? b : a))
  return {
    level,
    gap: chosen.fit.gap,
    lower: chosen.fit.lower,
    scaleBands: chosen.scaleBands,
    noiseFactor: chosen.factor,
    residuals: orders.map((order, i) => order - fittedAt(rows, chosen.fit.gap, i)),
    surprises: surprisesOf(rows, orders, usual.fit, usualSd),
  }
}

/** What each mark would have missed by, had it not been there (leave one out). */
function surprisesOf(
  rows: Float64Array,
  orders: readonly number[],
  { gap, lower }: SolvedMarks,
  sd: number,
): FittedMarks['surprises'] {
  const size = gap.length
  return orders.map((order, i) => {
    const row = rows.subarray(i * size, (i + 1) * size)
    const pulled = choleskySolve(lower, row)
    const hold = row.reduce((sum, value, k) => sum + value * (pulled[k] as number), 0) / (sd * sd)
    const freedom = Math.max(1e-9, 1 - hold)
    const bands = (order - fittedAt(rows, gap, i)) / freedom
    return { bands, ratio: (bands * Math.sqrt(freedom)) / sd }
  })
}
