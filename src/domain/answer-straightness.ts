import { centreLineStraightness } from '../science/runout/centre-line-straightness.ts'
import { runOutBudget } from '../science/runout/run-out-budget.ts'
import { turnFigures } from '../science/runout/turn-figures.ts'
import { expandedResult } from '../science/uncertainty/expanded-result.ts'
import { methods } from './methods.ts'
import type { StraightnessRequest } from './parse-straightness-request.ts'

/** What turns at several planes say of a shaft. No record is made. */
export function answerStraightness(request: StraightnessRequest) {
  const { support, readingStandardUncertaintyUm: u } = request
  const planes = request.planes.map(({ positionMm, readings }) => ({
    positionMm,
    figures: turnFigures(readings, u ?? undefined),
  }))
  const line = centreLineStraightness(
    planes.map(({ positionMm, figures }) => ({
      positionMm,
      xUm: figures.harmonics[0]?.cosineUm ?? 0,
      yUm: figures.harmonics[0]?.sineUm ?? 0,
    })),
  )
  const largest = planes.reduce((a, b) => (b.figures.totalUm > a.figures.totalUm ? b : a))
  return {
    planes: planes.map(({ positionMm, figures }, i) => ({
      positionMm,
      totalIndicatorReadingUm: figures.totalUm,
      eccentricityUm: figures.eccentricityUm,
      eccentricityDirectionDeg: figures.eccentricityDirectionDeg,
      roundnessLeastSquaresUm: figures.roundnessLeastSquaresUm,
      departureFromEndsUm: line.fromEnds[i]?.departureUm,
      departureDirectionDeg: line.fromEnds[i]?.directionDeg,
    })),
    largestTotalIndicatorReadingUm: largest.figures.totalUm,
    largestAtMm: largest.positionMm,
    straightnessMinimumZoneUm: line.minimumZoneUm,
    straightnessLeastSquaresUm: line.leastSquaresUm,
    bowUm: line.bow.departureUm,
    bowAtMm: line.bow.positionMm,
    bowDirectionDeg: line.bow.directionDeg,
    cautions: [
      ...(support === 'vee-blocks' ? ['vee-blocks-mix-lobes-and-bow'] : []),
      ...(planes.some((one) => one.figures.areBunched) ? ['positions-bunched'] : []),
    ],
    ...(u === null ? {} : uncertaintyOf(u)),
    method: methods.straightness,
  }
}

/** Of the largest total indicator reading. */
function uncertaintyOf(u: number) {
  const budget = runOutBudget(u)
  const { standardUncertainty, expandedUncertainty, coverageFactor } = expandedResult(budget)
  return {
    standardUncertaintyUm: standardUncertainty,
    expandedUncertaintyUm: expandedUncertainty,
    coverageFactor,
    budget,
  }
}
