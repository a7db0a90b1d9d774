import type { Figure } from './certified-results.ts'
import type {
  CertifiedSurvey,
  CertifiedSurveyPlane,
  CertifiedSurveyRow,
} from './certified-survey.ts'
import { type SurveyRecord, surveyKindOf } from './dial-survey.ts'
import { type DrawnSurveyPlane, drawnSurvey } from './drawn-survey.ts'
import { figure, optionalFigure } from './figure.ts'
import type { Judged } from './judged.ts'
import type { MeasuredValue } from './measured-value.ts'
import { printedResult } from './printed-result.ts'
import { printedUnit } from './printed-unit.ts'
import { surveyProgress } from './survey-progress.ts'
import type { SurveyPlane, SurveyResult } from './survey-result.ts'
import { spotKey } from './survey-spots.ts'
import { uncertainFigure } from './uncertain-figure.ts'

const um = { decimals: 1 } as const

/**
 * A recorded survey as pages and certificate show it.
 * @param of the survey, the value it became with its verdict, and whether that is the newest
 */
export function certifySurvey(of: {
  readonly survey: SurveyRecord
  readonly result: SurveyResult
  readonly measured: MeasuredValue
  readonly judged: Judged
  readonly isNewest: boolean
}): CertifiedSurvey {
  const { survey, result, measured, judged } = of
  const { setUp, characteristic } = survey
  const entered = (value: number | null) => optionalFigure(value, 'as-entered')
  const drawn = drawnSurvey(survey, result)
  return {
    characteristic,
    condition: survey.condition,
    isNewest: of.isNewest,
    text: printedResult({
      characteristic,
      value: measured.valueUm,
      uncertainty: measured.uncertainty,
    }).text,
    unit: printedUnit[characteristic].unit,
    limitUm: judged.upper,
    place: setUp.place,
    turned: setUp.turned,
    surface: setUp.surface,
    contact: setUp.contact,
    floatHeld: setUp.floatHeld,
    isClockwise: setUp.isClockwise,
    leverAngleDeg: entered(setUp.leverAngleDeg),
    sweptDiameterMm: entered(setUp.sweptDiameterMm),
    sealMeanDiameterMm: entered(setUp.sealMeanDiameterMm),
    sagUm: entered(setUp.sagUm),
    topAngleDeg: entered(setUp.topAngleDeg),
    lockOutReference: setUp.lockOutReference,
    hasSecondIndicator: setUp.secondInstrumentId !== null,
    readingUnit: setUp.unit,
    rows: rowsOf(survey),
    planes: result.planes.map((plane, index) => planeOf(plane, drawn[index] as DrawnSurveyPlane)),
    tilt: tiltOf(result),
    straightness: straightnessOf(result),
    cautions: result.cautions,
    instrumentNumber: measured.instrument.number,
    secondInstrumentNumber: measured.secondInstrument?.number ?? null,
    recordedByName: measured.recordedByName,
    recordedAt: measured.recordedAt,
  }
}

function planeOf(plane: SurveyPlane, drawn: DrawnSurveyPlane): CertifiedSurveyPlane {
  const { figures, turns, floatRangeUm } = plane
  const drifts = turns.flatMap((one) => (one.closingDriftUm === null ? [] : [one.closingDriftUm]))
  const largest = drifts.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0)
  return {
    ...drawn,
    totalUm: figure(turns.reduce((sum, one) => sum + one.totalUm, 0) / turns.length, um),
    eccentricityText: withDoubt(figures.eccentricityUm, figures.eccentricityStandardUncertaintyUm),
    directionText:
      figures.eccentricityDirectionDeg === null
        ? null
        : directionText(figures.eccentricityDirectionDeg, figures.directionStandardUncertaintyDeg),
    fittedRunOutUm: figure(figures.fittedRunOutUm, um),
    roundnessLeastSquaresUm: figure(figures.roundnessLeastSquaresUm, um),
    roundnessMinimumZoneUm: figure(figures.roundnessMinimumZoneUm, um),
    couldBeMissedUm: figure(figures.couldBeMissedUm, um),
    closingDriftUm: drifts.length === 0 ? null : figure(largest, um),
    floatRangeUm: optionalFigure(floatRangeUm, um),
  }
}

/** With twice its standard uncertainty, where that is known and not 0. */
function withDoubt(value: number, u: number | null): string {
  if (u === null || u === 0) return figure(value, um).text
  return uncertainFigure({ value, expandedUncertainty: 2 * u }).text
}

function directionText(deg: number, u: number | null): string {
  const whole: Figure = figure(deg, { decimals: 0 })
  return u === null || u === 0 ? whole.text : `${whole.text} ± ${Math.max(1, Math.round(2 * u))}`
}

function tiltOf({ tilt }: SurveyResult): CertifiedSurvey['tilt'] {
  if (tilt === null) return null
  return {
    mrad: figure(tilt.tiltMrad, { decimals: 3 }),
    mmPerM: figure(tilt.mmPerM, { decimals: 3 }),
    movementAtSealUm: optionalFigure(tilt.movementAtSealUm, um),
  }
}

function straightnessOf({ straightness }: SurveyResult): CertifiedSurvey['straightness'] {
  if (straightness === null) return null
  const { minimumZoneUm, bow } = straightness
  return {
    minimumZoneUm: figure(minimumZoneUm, um),
    bowUm: figure(bow.departureUm, um),
    bowAtMm: figure(bow.positionMm, 'as-entered'),
  }
}

/** The readings that stand, as typed; one row for each position, one text for each turn. */
function rowsOf(survey: SurveyRecord): readonly CertifiedSurveyRow[] {
  const { spots, current } = surveyProgress(survey)
  const { anglesDeg } = survey.setUp
  const isTwoEnds = surveyKindOf[survey.characteristic] === 'two-ends'
  return spots
    .filter((one) => one.turnIndex === 0)
    .map(({ planeIndex, positionIndex, indicator }) => ({
      planeIndex,
      angleDeg: isTwoEnds ? null : (anglesDeg[positionIndex % anglesDeg.length] ?? null),
      spot: spotOf(isTwoEnds, positionIndex, anglesDeg.length),
      indicator,
      typed: Array.from({ length: survey.setUp.turnsCount }, (_, turnIndex) => {
        const key = spotKey({ planeIndex, turnIndex, positionIndex, indicator })
        return current.get(key)?.typed ?? ''
      }),
    }))
}

function spotOf(isTwoEnds: boolean, index: number, count: number): CertifiedSurveyRow['spot'] {
  if (isTwoEnds) return index === 0 ? 'first-end' : 'second-end'
  return index < count ? 'position' : 'closing'
}
