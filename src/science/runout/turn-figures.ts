import { couldBeMissedUm } from './could-be-missed-um.ts'
import type { DialPoint } from './dial-point.ts'
import { fitHarmonics } from './fit-harmonics.ts'
import type { Harmonic } from './harmonic-of.ts'
import { highestOrderFor } from './highest-order-for.ts'
import { leastSquaresRoundnessUm } from './least-squares-roundness-um.ts'
import { minimumZoneRoundness } from './minimum-zone-roundness.ts'
import { positionScatter } from './position-scatter.ts'
import { totalIndicatorReadingUm } from './total-indicator-reading-um.ts'

/** Beyond it a lobe or a burr is easily taken for an eccentricity (common practice, no source). */
const mostScatter = 3

/** All that the readings of one turn say. */
export interface TurnFigures {
  readonly totalUm: number
  readonly meanUm: number
  /** The positions tell an eccentricity far worse than even ones; absent in older records. */
  readonly areBunched?: boolean
  /** e: half of what the centring or the tilt alone would show. */
  readonly eccentricityUm: number
  readonly eccentricityStandardUncertaintyUm: number | null
  /**
   * Of the highest reading; null where there is no eccentricity, or less than twice its u, or where
   * the positions are bunched.
   */
  readonly eccentricityDirectionDeg: number | null
  readonly directionStandardUncertaintyDeg: number | null
  /** 2 e: what the needle would show of it, free of lobes and nearly free of noise. */
  readonly fittedRunOutUm: number
  readonly harmonics: readonly Harmonic[]
  readonly roundnessLeastSquaresUm: number
  readonly roundnessMinimumZoneUm: number
  /** At most, for a reading of stated uncertainty: of either roundness. */
  readonly roundnessStandardUncertaintyUm: number | null
  readonly couldBeMissedUm: number
}

/**
 * Gives everything that the readings of one turn say: total, eccentricity with its direction, waves,
 * roundness, and what these positions could have missed.
 *
 * the sum of totalIndicatorReadingUm, fitHarmonics to highestOrderFor, leastSquaresRoundnessUm,
 * minimumZoneRoundness and couldBeMissedUm; u(roundness) <= sqrt 2 u(reading)
 *
 * @param points at three or more different angles, repeats allowed
 * @param readingStandardUncertaintyUm of one reading, 0 or more; absent where it is not known
 * @returns um and degrees
 * @throws RangeError outside these ranges
 * Validity: as its parts. A direction is given where the amplitude is at least twice its
 *   uncertainty, and the positions tell it no more than three times worse than even ones: else it
 *   may point anywhere.
 * Source: as its parts; the bound of a direction is common practice, no source.
 * @example turnFigures([0, 7, 24, 38, 40, 33, 16, 2].map((valueUm, i) => ({ angleDeg: 45 * i,
 *   valueUm }))).fittedRunOutUm // 42.59
 */
export function turnFigures(
  points: readonly DialPoint[],
  readingStandardUncertaintyUm?: number,
): TurnFigures {
  const anglesDeg = points.map((one) => one.angleDeg)
  const highestOrder = highestOrderFor(anglesDeg)
  const fit = fitHarmonics(points, { highestOrder, readingStandardUncertaintyUm })
  const first = fit.harmonics[0] as Harmonic
  const totalUm = totalIndicatorReadingUm(points.map((one) => one.valueUm))
  const u = first.amplitudeStandardUncertaintyUm
  // Rounding leaves a trace of amplitude in readings that are all alike.
  const areBunched = positionScatter(anglesDeg) > mostScatter
  const hasDirection =
    !areBunched && first.amplitudeUm > Math.max(1e-12 * Math.max(1, totalUm), 2 * (u ?? 0))
  return {
    totalUm,
    meanUm: fit.meanUm,
    areBunched,
    eccentricityUm: first.amplitudeUm,
    eccentricityStandardUncertaintyUm: u,
    eccentricityDirectionDeg: hasDirection ? first.phaseDeg : null,
    directionStandardUncertaintyDeg: hasDirection ? first.phaseStandardUncertaintyDeg : null,
    fittedRunOutUm: 2 * first.amplitudeUm,
    harmonics: fit.harmonics,
    roundnessLeastSquaresUm: leastSquaresRoundnessUm(points),
    roundnessMinimumZoneUm: minimumZoneRoundness(points).roundnessUm,
    roundnessStandardUncertaintyUm:
      readingStandardUncertaintyUm === undefined ? null : Math.SQRT2 * readingStandardUncertaintyUm,
    couldBeMissedUm: couldBeMissedUm(anglesDeg, first.amplitudeUm),
  }
}
