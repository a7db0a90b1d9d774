import { requireRange } from '../check/require-range.ts'
import { autocorrelationCorrection } from '../statistics/autocorrelation-correction.ts'
import { fUpperTail } from '../statistics/f-upper-tail.ts'
import { fitLine } from '../statistics/fit-line.ts'
import { fitSettling } from '../statistics/fit-settling.ts'

/** How a pressure fell, or why it cannot be said yet. */
export type SettlingVerdict =
  | (Fall & { readonly settling: 'settled' })
  | (Fall & { readonly settling: 'corrected'; readonly timeConstantS: number })
  | { readonly settling: 'unsettled'; readonly timeConstantS: number; readonly windowS: number }

interface Fall {
  /** Steady fall per second, positive when the pressure falls. */
  readonly fallPerS: number
  readonly standardUncertaintyPerS: number
  readonly degreesOfFreedom: number
}

/** Below this chance a straight line is not believed. */
const significance = 0.01
/** A window of fewer time constants cannot tell settling from leaking. */
export const requiredTimeConstants = 3
/** Relative size of residuals that are the rounding of the computer, not noise of a gauge. */
const roundingRelative = 1e-9

interface Noise {
  readonly variance: number
  readonly varianceInflation: number
  readonly effectiveCount: number
}

/** Gives the noise behind residuals: never below the floor, and with what autocorrelation costs. */
function noiseOf(
  fit: { readonly residuals: readonly number[]; readonly sumOfSquares: number },
  parameterCount: number,
  floors: { readonly step: number; readonly rounding: number },
): Noise {
  const count = fit.residuals.length
  const seen = fit.sumOfSquares / (count - parameterCount)
  const variance = Math.max(seen, floors.step, floors.rounding)
  if (seen <= floors.rounding) return { variance, varianceInflation: 1, effectiveCount: count }
  const biasTerms = parameterCount === 2 ? 1 : 2
  return { variance, ...autocorrelationCorrection({ residuals: fit.residuals, biasTerms }) }
}

/**
 * Judges whether a pressure had settled, and gives its steady fall when that can be said.
 *
 * A straight line is tried against level + amplitude exp(-t/tau) - fall x t:
 * F = (RSS_line - RSS) / 2 / (variance x inflation), with 2 and n_eff - 4 degrees of freedom.
 * - P(F) >= 0.01: settled, the line's fall.
 * - P(F) < 0.01 and window >= 3 tau: corrected, the curve's fall.
 * - else unsettled: no number, a longer hold is needed.
 * Uncertainties: standard error x sqrt(inflation of the variance by autocorrelation).
 *
 * @param input timesS: at least 6, increasing; values: pressures brought to one temperature, any
 *   unit; stepVariance: least variance of a reading that its display allows, 0 or more
 * @returns the verdict, with fall and standard uncertainty in unit per s and the degrees of freedom
 *   (n_eff - 2 or n_eff - 4, at least 1), or with the time constant and window in s
 * @throws RangeError outside these ranges
 * Validity: evenly sampled noise like AR(1). In simulations the test called a settled trace
 *   unsettled in at most 1.6 % at correlations up to 0.9. A leak so large that the driving pressure
 *   falls during the hold looks like settling.
 * Source: F test of nested models; deflation by autocorrelation: own simulations.
 * @example judgeSettling({ timesS: [0, 1, 2, 3, 4, 5, 6], values: [7, 6, 5, 4, 3, 2, 1],
 *   stepVariance: 0 }).settling // settled
 */
export function judgeSettling(input: {
  readonly timesS: readonly number[]
  readonly values: readonly number[]
  readonly stepVariance: number
}): SettlingVerdict {
  const { timesS, values, stepVariance } = input
  const count = requireRange('judgeSettling', 'count of times', timesS.length, { from: 6, to: 1e6 })
  requireRange('judgeSettling', 'stepVariance', stepVariance, { from: 0, to: 1e300 })
  const largest = values.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
  const floors = { step: stepVariance, rounding: (roundingRelative * largest) ** 2 }

  const line = fitLine({ x: timesS, y: values })
  const curve = fitSettling({ timesS, values })
  const curveNoise = noiseOf(curve, 4, floors)
  const curveFreedom = Math.max(1, curveNoise.effectiveCount - 4)
  const gained = Math.max(0, line.sumOfSquares - curve.sumOfSquares) / 2
  const explained = curveNoise.variance * curveNoise.varianceInflation
  const chance = fUpperTail({
    f: gained === 0 ? 0 : Math.min(1e300, gained / explained),
    numeratorDegreesOfFreedom: 2,
    denominatorDegreesOfFreedom: curveFreedom,
  })

  if (chance >= significance) {
    const noise = noiseOf(line, 2, floors)
    return {
      settling: 'settled',
      fallPerS: 0 - line.slope,
      standardUncertaintyPerS:
        line.slopePerNoise * Math.sqrt(noise.variance * noise.varianceInflation),
      degreesOfFreedom: Math.max(1, noise.effectiveCount - 2),
    }
  }
  const windowS = (timesS[count - 1] as number) - (timesS[0] as number)
  const { timeConstantS } = curve
  if (windowS < requiredTimeConstants * timeConstantS) {
    return { settling: 'unsettled', timeConstantS, windowS }
  }
  return {
    settling: 'corrected',
    fallPerS: curve.fallPerS,
    standardUncertaintyPerS: curve.fallPerNoise * Math.sqrt(explained),
    degreesOfFreedom: curveFreedom,
    timeConstantS,
  }
}
