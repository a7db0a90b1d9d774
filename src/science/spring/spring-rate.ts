import { requireRange } from '../check/require-range.ts'
import { requireWhole } from '../check/require-whole.ts'
import { leastSquares } from '../statistics/least-squares.ts'

/** A length that a spring was pressed to, and the load that it took. */
export interface SpringLoad {
  readonly lengthMm: number
  readonly loadN: number
}

/** The straight line of a spring: load = rate x (free length - length). */
export interface SpringRate {
  readonly rateNPerMm: number
  /** Null with two loads, which any line fits. */
  readonly rateStandardUncertaintyNPerMm: number | null
  /** The length at which the line comes to no load. */
  readonly fittedFreeLengthMm: number
  readonly residualsN: readonly number[]
  readonly degreesOfFreedom: number
  /** Scatter of one load about the line; null with two loads. */
  readonly residualStandardDeviationN: number | null
  readonly meanLengthMm: number
  /** Sum of (length - mean)^2. */
  readonly lengthSpreadMm2: number
}

/**
 * Gives the rate of a spring from loads at lengths, by least squares.
 *
 * load = rate x (fittedFreeLength - length); u(rate)^2 = s^2 / sum of (length - mean)^2,
 * s^2 = sum of residuals^2 / (count - 2)
 *
 * @param loads two or more, up to 1000; lengthMm from 0.1 to 10 000, loadN from 0 to 1e6; at
 *   different lengths, heavier where shorter
 * @returns N per mm, mm
 * @throws RangeError outside these ranges, and where the load doesn't rise as the spring shortens
 * Validity: of the straight part: coils that touch, and a bellows or wave spring near its ends, rise
 *   faster. Large residuals say so.
 * Source: Hooke's law; NIST/SEMATECH e-Handbook 4.1.4.1 for the line.
 * @example springRate([{ lengthMm: 30, loadN: 20 }, { lengthMm: 25, loadN: 45 }]).rateNPerMm // 5
 */
export function springRate(loads: readonly SpringLoad[]): SpringRate {
  const name = 'springRate'
  requireWhole(name, 'count of loads', loads.length, { from: 2, to: 1000 })
  for (const { lengthMm, loadN } of loads) {
    requireRange(name, 'lengthMm', lengthMm, { from: 0.1, to: 10_000 })
    requireRange(name, 'loadN', loadN, { from: 0, to: 1e6 })
  }
  const count = loads.length
  const middle = loads.reduce((sum, one) => sum + one.lengthMm, 0) / count
  const fit = leastSquares({
    columns: [loads.map(() => 1), loads.map((one) => middle - one.lengthMm)],
    values: loads.map((one) => one.loadN),
  })
  const [meanLoad, rate] = fit.coefficients as [number, number]
  requireRange(name, 'load rising as the spring shortens, rate', rate, { from: 1e-9, to: 1e9 })
  const degreesOfFreedom = count - 2
  const variance = degreesOfFreedom > 0 ? fit.sumOfSquares / degreesOfFreedom : null
  return {
    rateNPerMm: rate,
    rateStandardUncertaintyNPerMm:
      variance === null ? null : Math.sqrt(variance * (fit.inverseDiagonal[1] as number)),
    fittedFreeLengthMm: middle + meanLoad / rate,
    residualsN: fit.residuals,
    degreesOfFreedom,
    residualStandardDeviationN: variance === null ? null : Math.sqrt(variance),
    meanLengthMm: middle,
    lengthSpreadMm2: 1 / (fit.inverseDiagonal[1] as number),
  }
}
