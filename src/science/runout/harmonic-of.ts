import { type LeastSquaresFit, leastSquares } from '../statistics/least-squares.ts'

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
 * @param how columns as harmonicColumns gives them; sigma: standard uncertainty of a reading in um,
 *   null where it is not known
 * @returns um and degrees
 * Validity: linear: direction means something only where the amplitude is well above its
 *   uncertainty.
 * Source: propagation of uncertainty, JCGM 100:2008, equation (10).
 * @example harmonicOf(1, { coefficients: [3, 0, 2], residuals: [], sumOfSquares: 0,
 *   inverseDiagonal: [0.25, 0.5, 0.5] }, { columns: [[1, 1, 1, 1], [1, 0, -1, 0], [0, 1, 0, -1]],
 *   sigma: 1 }).phaseDeg // 90.00
 */
export function harmonicOf(
  order: number,
  fit: LeastSquaresFit,
  how: { readonly columns: readonly (readonly number[])[]; readonly sigma: number | null },
): Harmonic {
  const at = 2 * order - 1
  const [cosineUm, sineUm] = [fit.coefficients[at] as number, fit.coefficients[at + 1] as number]
  const amplitudeUm = Math.hypot(cosineUm, sineUm)
  const turn = 360 / order
  const phase = (Math.atan2(sineUm, cosineUm) * 180) / Math.PI / order
  const positive = phase < 0 ? phase + turn : phase
  const phaseDeg = positive < turn ? positive : 0
  const size = { order, cosineUm, sineUm, amplitudeUm, phaseDeg }
  if (how.sigma === null) {
    return { ...size, amplitudeStandardUncertaintyUm: null, phaseStandardUncertaintyDeg: null }
  }
  const direction = Math.atan2(sineUm, cosineUm)
  const along = spread(how.columns, at, direction) * how.sigma
  const across = spread(how.columns, at, direction + Math.PI / 2) * how.sigma
  return {
    ...size,
    amplitudeStandardUncertaintyUm: along,
    phaseStandardUncertaintyDeg:
      amplitudeUm > 0 ? ((across / (order * amplitudeUm)) * 180) / Math.PI : null,
  }
}

/**
 * Scatter of cos(direction) a + sin(direction) b for a scatter of 1 of a reading: the fit is done
 * with both columns turned, so that this sum is a coefficient of its own.
 */
function spread(columns: readonly (readonly number[])[], at: number, direction: number): number {
  const [c, s] = [Math.cos(direction), Math.sin(direction)]
  const [cosines, sines] = [columns[at] as readonly number[], columns[at + 1] as readonly number[]]
  const turned = columns.map((column, k) => {
    if (k === at) return cosines.map((value, i) => c * value + s * (sines[i] as number))
    if (k === at + 1) return cosines.map((value, i) => c * (sines[i] as number) - s * value)
    return column
  })
  const { inverseDiagonal } = leastSquares({ columns: turned, values: cosines })
  return Math.sqrt(inverseDiagonal[at] as number)
}
