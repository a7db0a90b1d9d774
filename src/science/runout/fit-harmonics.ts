import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'
import { requireWhole } from '../check/require-whole.ts'
import { leastSquares } from '../statistics/least-squares.ts'
import type { DialPoint } from './dial-point.ts'
import { distinctAngles } from './distinct-angles.ts'
import { harmonicColumns } from './harmonic-columns.ts'
import { type Harmonic, harmonicOf } from './harmonic-of.ts'
import { waveVariances } from './wave-variances.ts'

/** Readings of a turn as a mean, waves and what is left. */
export interface HarmonicFit {
  readonly meanUm: number
  readonly meanStandardUncertaintyUm: number | null
  readonly harmonics: readonly Harmonic[]
  readonly residualsUm: readonly number[]
}

const name = 'fitHarmonics'

/**
 * Splits the readings of a turn into their mean and waves of the orders 1 to highestOrder, by least
 * squares, each reading with the same weight.
 *
 * value = mean + sum of (a_k cos k t + b_k sin k t); amplitude = hypot(a, b),
 * phase = atan2(b, a) / k
 *
 * @param points at any angles t, repeats allowed; at least 2 highestOrder + 1 different ones
 * @param options highestOrder: whole, 1 or more; readingStandardUncertaintyUm: of one reading,
 *   independent of the others, 0 or more, absent where it is not known
 * @returns um and degrees
 * @throws RangeError outside these ranges, and where the positions can't tell the orders
 * Validity: a wave above highestOrder falls onto the others (aliasing). Direction means something
 *   only where the amplitude is well above its uncertainty.
 * Source: least squares, as for the circle of ISO 12181-1 (from memory).
 * @example fitHarmonics([{ angleDeg: 0, valueUm: 2 }, { angleDeg: 90, valueUm: 0 },
 *   { angleDeg: 180, valueUm: -2 }, { angleDeg: 270, valueUm: 0 }], { highestOrder: 1 }
 *   ).harmonics[0]?.amplitudeUm // 2.000
 */
export function fitHarmonics(
  points: readonly DialPoint[],
  options: {
    readonly highestOrder: number
    readonly readingStandardUncertaintyUm?: number | undefined
  },
): HarmonicFit {
  const { highestOrder, readingStandardUncertaintyUm } = options
  for (const { valueUm } of points) requireFinite(name, 'valueUm', valueUm)
  if (readingStandardUncertaintyUm !== undefined) {
    const range = { from: 0, to: 1e9 }
    requireRange(name, 'readingStandardUncertaintyUm', readingStandardUncertaintyUm, range)
  }
  requireWhole(name, 'highestOrder', highestOrder, { from: 1, to: 1000 })
  const anglesDeg = points.map((one) => one.angleDeg)
  const count = distinctAngles(anglesDeg).length
  requireRange(name, 'count of positions', count, { from: 2 * highestOrder + 1, to: 1e6 })
  const columns = harmonicColumns(anglesDeg, highestOrder)
  const fit = leastSquares({ columns, values: points.map((one) => one.valueUm) })
  const sigma = readingStandardUncertaintyUm ?? null
  const variances = sigma === null ? [] : waveVariances(columns)
  return {
    meanUm: fit.coefficients[0] as number,
    meanStandardUncertaintyUm:
      sigma === null ? null : sigma * Math.sqrt(fit.inverseDiagonal[0] as number),
    harmonics: Array.from({ length: highestOrder }, (_, i) => {
      const variance = variances[i]
      const known = sigma === null || variance === undefined ? null : { variance, sigma }
      return harmonicOf(i + 1, fit, known)
    }),
    residualsUm: fit.residuals,
  }
}
