import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'
import { gaussLegendre } from '../statistics/gauss-legendre.ts'
import { normalCdf } from '../statistics/normal-cdf.ts'

/** Limits of a quantity and of its measured value; an open side is left out. */
export interface GlobalRiskLimits {
  readonly lowerLimit?: number | undefined
  readonly upperLimit?: number | undefined
  readonly lowerAcceptanceLimit?: number | undefined
  readonly upperAcceptanceLimit?: number | undefined
}

export interface GlobalRisk {
  /** Share of all items that break a limit and are accepted: the customer's risk. */
  readonly falseAcceptRisk: number
  /** Share of all items that keep the limits and are rejected: the maker's risk. */
  readonly falseRejectRisk: number
  /** Share of all items that keep the limits. */
  readonly conformingShare: number
}

/** Beyond so many u from a limit the chance of acceptance is 0 or 1 to the last digit. */
const reachU = 9

/**
 * Gives the risks of accepting many items by their measured values, whatever their prior.
 *
 * Rc = integral over the bad items of g(x) P(accept | x), Rp = integral over the good ones of
 * g(x) (1 - P(accept | x)), with P(accept | x) = Phi((AU - x) / u) - Phi((AL - x) / u), by
 * Gauss and Legendre's rule on pieces cut at the limits and wherever the chance of acceptance bends
 *
 * @param input density: g, per unit of x; knots: two or more places in rising order, the ends
 *   where g vanishes and places close enough that g is smooth between them; measurementUncertainty
 *   u: above 0; limits TL, TU and AL, AU: finite, in the unit of x, at least one limit
 * @returns both risks and the share of good items, each from 0 to 1
 * @throws RangeError when a number is out of range
 * Validity: about 10 digits where g is smooth between the knots; measuring is normal with u.
 * Source: JCGM 106:2012, clause 9 (from memory).
 * @example globalRisk({ density: () => 1, knots: [0, 1], measurementUncertainty: 0.01,
 *   limits: { upperLimit: 0.5 } }).conformingShare // 0.500
 */
export function globalRisk(input: {
  readonly density: (x: number) => number
  readonly knots: readonly number[]
  readonly measurementUncertainty: number
  readonly limits: GlobalRiskLimits
}): GlobalRisk {
  const { density, knots } = input
  const u = requireRange('globalRisk', 'measurementUncertainty', input.measurementUncertainty, {
    from: Number.MIN_VALUE,
    to: Number.MAX_VALUE,
  })
  const { lower, upper, acceptance, finite } = requireLimits(input.limits)
  const from = requireFinite('globalRisk', 'knots', knots[0] ?? Number.NaN)
  const to = requireFinite('globalRisk', 'knots', knots.at(-1) ?? Number.NaN)
  const bends = acceptance.flatMap((at) =>
    Array.from({ length: 2 * reachU + 1 }, (_, index) => at + (index - reachU) * u),
  )
  const cuts = [...knots, ...finite, ...bends]
    .filter((at) => at >= from && at <= to)
    .sort((a, b) => a - b)
  const [low, high] = [input.limits.lowerAcceptanceLimit, input.limits.upperAcceptanceLimit]
  const rejected = (x: number) =>
    (low === undefined ? 0 : normalCdf((low - x) / u)) +
    (high === undefined ? 0 : normalCdf((x - high) / u))
  const accepted = (x: number) => Math.max(0, 1 - rejected(x))
  const risk = { falseAcceptRisk: 0, falseRejectRisk: 0, conformingShare: 0 }
  for (const [index, start] of cuts.slice(0, -1).entries()) {
    const end = cuts[index + 1] ?? start
    const over = (f: (x: number) => number) => gaussLegendre({ f, from: start, to: end })
    const middle = (start + end) / 2
    if (middle > lower && middle < upper) {
      risk.falseRejectRisk += over((x) => density(x) * Math.min(1, rejected(x)))
      risk.conformingShare += over(density)
    } else {
      risk.falseAcceptRisk += over((x) => density(x) * accepted(x))
    }
  }
  return risk
}

function requireLimits(limits: GlobalRiskLimits) {
  const { lowerLimit, upperLimit, lowerAcceptanceLimit, upperAcceptanceLimit } = limits
  const acceptance = [lowerAcceptanceLimit, upperAcceptanceLimit].filter((at) => at !== undefined)
  const finite = [lowerLimit, upperLimit].filter((at) => at !== undefined)
  for (const at of [...acceptance, ...finite]) requireFinite('globalRisk', 'limits', at)
  const lower = lowerLimit ?? Number.NEGATIVE_INFINITY
  const upper = upperLimit ?? Number.POSITIVE_INFINITY
  if (finite.length === 0 || lower >= upper) {
    throw new RangeError(`globalRisk requires limits from low to high, got ${finite}`)
  }
  return { lower, upper, acceptance, finite }
}
