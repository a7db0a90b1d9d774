import type { LeastSquaresFit } from '../statistics/least-squares.ts'
import type { WaveVariance } from './wave-variances.ts'

/** One wave of a turn: amplitude cos(order (angle - phase)). */
export interface Harmonic {
  /** Crests round the turn: 1 is the eccentricity or the tilt, 2 the ovality, 3 and more lobes. */
  readonly order: number
  readonly cosineUm: number
  readonly sineUm: number
  readonly amplitudeUm: number
  /** Where the first crest stands, from 0 to below 360 / order. */
  readonly phaseDeg: number
  /** Null where the uncertainty of a reading is not stated. */
  readonly amplitudeStandardUncertaintyUm: number | null
  /** Null as above, and for an amplitude of 0, which has no direction. */
  readonly phaseStandardUncertaintyDeg: number | null
}

/**
 * Gives one wave of a fitted turn with the uncertainty of its size and of its direction.
 *
 * u(amplitude) is the uncertainty along the vector (a, b), u(phase) that across it over
 * order x amplitude
 *
 * @param order of the wave, whole, 1 or more
 * @param fit of the columns
 * @param known variance of this wave as waveVariances gives it; sigma: standard uncertainty of a
 *   reading in um; null where it is not known
 * @returns um and degrees
 * Validity: linear: direction means something only where the amplitude is well above its
 *   uncertainty.
 * Source: propagation of uncertainty, JCGM 100:2008, equation (10).
 * @example harmonicOf(1, { coefficients: [3, 0, 2], residuals: [], sumOfSquares: 0,
 *   inverseDiagonal: [0.25, 0.5, 0.5] }, null).phaseDeg // 90.00
 */
export function harmonicOf(
  order: number,
  fit: LeastSquaresFit,
  known: { readonly variance: WaveVariance; readonly sigma: number } | null,
): Harmonic {
  const at = 2 * order - 1
  const [cosineUm, sineUm] = [fit.coefficients[at] as number, fit.coefficients[at + 1] as number]
  const amplitudeUm = Math.hypot(cosineUm, sineUm)
  const turn = 360 / order
  const phase = (Math.atan2(sineUm, cosineUm) * 180) / Math.PI / order
  const positive = phase < 0 ? phase + turn : phase
  const phaseDeg = positive < turn ? positive : 0
  const size = { order, cosineUm, sineUm, amplitudeUm, phaseDeg }
  if (known === null) {
    return { ...size, amplitudeStandardUncertaintyUm: null, phaseStandardUncertaintyDeg: null }
  }
  const direction = Math.atan2(sineUm, cosineUm)
  const along = spread(known.variance, direction) * known.sigma
  const across = spread(known.variance, direction + Math.PI / 2) * known.sigma
  return {
    ...size,
    amplitudeStandardUncertaintyUm: along,
    phaseStandardUncertaintyDeg:
      amplitudeUm > 0 ? ((across / (order * amplitudeUm)) * 180) / Math.PI : null,
  }
}

/** Scatter of cos(direction) a + sin(direction) b for a scatter of 1 of a reading. */
function spread({ cosine, sine, joint }: WaveVariance, direction: number): number {
  const [c, s] = [Math.cos(direction), Math.sin(direction)]
  return Math.sqrt(Math.max(0, c * c * cosine + 2 * c * s * joint + s * s * sine))
}
