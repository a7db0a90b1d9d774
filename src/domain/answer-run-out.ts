import type { DialPoint } from '../science/runout/dial-point.ts'
import { distinctAngles } from '../science/runout/distinct-angles.ts'
import { faceTilt } from '../science/runout/face-tilt.ts'
import { runOutBudget } from '../science/runout/run-out-budget.ts'
import { type TurnFigures, turnFigures } from '../science/runout/turn-figures.ts'
import { expandedResult } from '../science/uncertainty/expanded-result.ts'
import { isDriftLarge } from './is-drift-large.ts'
import { methods } from './methods.ts'
import type { RunOutRequest } from './parse-run-out-request.ts'

/** What the readings of one turn say. No record is made. */
export function answerRunOut(request: RunOutRequest) {
  const { readings, readingStandardUncertaintyUm: u } = request
  const figures = turnFigures(readings, u ?? undefined)
  const drift = closingDriftOf(readings)
  return {
    totalIndicatorReadingUm: figures.totalUm,
    eccentricityUm: figures.eccentricityUm,
    eccentricityDirectionDeg: figures.eccentricityDirectionDeg,
    fittedRunOutUm: figures.fittedRunOutUm,
    harmonics: figures.harmonics.map(({ order, amplitudeUm, phaseDeg }) => ({
      order,
      amplitudeUm,
      phaseDeg,
    })),
    roundnessLeastSquaresUm: figures.roundnessLeastSquaresUm,
    roundnessMinimumZoneUm: figures.roundnessMinimumZoneUm,
    ...tiltOf(request, figures),
    couldBeMissedUm: figures.couldBeMissedUm,
    closingDriftUm: drift,
    cautions: [
      ...(figures.areBunched ? (['positions-bunched'] as const) : []),
      ...(drift !== null && isDriftLarge(drift, u ?? 0) ? (['drift'] as const) : []),
    ],
    ...(u === null ? {} : uncertaintiesOf(request, figures, u)),
    method: methods.runOut,
  }
}

/** Last reading less first where both are of one position: the needle should have come back. */
function closingDriftOf(readings: readonly DialPoint[]): number | null {
  const [first, last] = [readings[0], readings.at(-1)]
  if (first === undefined || last === undefined || readings.length < 4) return null
  const isClosed = distinctAngles([first.angleDeg, last.angleDeg]).length === 1
  return isClosed ? last.valueUm - first.valueUm : null
}

function tiltOf({ kind, sweptDiameterMm, sealMeanDiameterMm }: RunOutRequest, of: TurnFigures) {
  if (kind === 'radial' || sweptDiameterMm === null) return {}
  const tilt = faceTilt({
    amplitudeUm: of.eccentricityUm,
    sweptDiameterMm,
    sealMeanDiameterMm: sealMeanDiameterMm ?? undefined,
  })
  return {
    tiltMrad: tilt.tiltMrad,
    tiltDeg: tilt.tiltDeg,
    tiltMmPerM: tilt.mmPerM,
    tiltDirectionDeg: of.eccentricityDirectionDeg,
    movementAtSealUm: tilt.movementAtSealUm,
  }
}

/** Of the total indicator reading first; those of the other figures stand by their names. */
function uncertaintiesOf(request: RunOutRequest, of: TurnFigures, u: number) {
  const budget = runOutBudget(u)
  const { standardUncertainty, expandedUncertainty, coverageFactor } = expandedResult(budget)
  const ofTilt = { ...of, eccentricityUm: of.eccentricityStandardUncertaintyUm ?? 0 }
  const { tiltMrad, movementAtSealUm } = tiltOf(request, ofTilt)
  return {
    standardUncertaintyUm: standardUncertainty,
    expandedUncertaintyUm: expandedUncertainty,
    coverageFactor,
    budget,
    standardUncertainties: {
      eccentricityUm: of.eccentricityStandardUncertaintyUm,
      eccentricityDirectionDeg: of.directionStandardUncertaintyDeg,
      fittedRunOutUm: 2 * (of.eccentricityStandardUncertaintyUm ?? 0),
      roundnessUm: of.roundnessStandardUncertaintyUm,
      ...(tiltMrad === undefined ? {} : { tiltMrad, movementAtSealUm }),
    },
  }
}
