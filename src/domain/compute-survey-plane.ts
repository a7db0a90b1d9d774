import { meanOfTurns } from '../science/runout/mean-of-turns.ts'
import { sagCorrectedUm } from '../science/runout/sag-corrected-um.ts'
import { separateEndFloat } from '../science/runout/separate-end-float.ts'
import { totalIndicatorReadingUm } from '../science/runout/total-indicator-reading-um.ts'
import { turnFigures } from '../science/runout/turn-figures.ts'
import type { SurveySetUp, SurveySpot } from './dial-survey.ts'
import { isDriftLarge } from './is-drift-large.ts'
import type { SurveyPlane, SurveyTurn } from './survey-result.ts'

/** The reading of a spot in um, as the needle showed it. */
export type SpotValue = (spot: SurveySpot) => number

type Asked = {
  readonly planeIndex: number
  readonly umAt: SpotValue
  readonly readingStandardUncertaintyUm: number | null
}

/**
 * The figures of one plane of a survey: each turn corrected for the sag of the bracket and the angle
 * of a lever, freed of float where two indicators stood opposite, then the mean of the turns. The
 * totals are as the needle moved, without the lever: its angle is part of the result's budget.
 */
export function computeSurveyPlane(setUp: SurveySetUp, asked: Asked): SurveyPlane {
  const { planeIndex, readingStandardUncertaintyUm: u } = asked
  const turns = Array.from({ length: setUp.turnsCount }, (_, turnIndex) =>
    readTurn(setUp, asked, turnIndex),
  )
  const perUm = Math.cos(((setUp.leverAngleDeg ?? 0) * Math.PI) / 180)
  const mean = meanOfTurns(turns.map((one) => one.valuesUm))
  const points = setUp.anglesDeg.map((angleDeg, i) => ({
    angleDeg,
    valueUm: (mean.valuesUm[i] as number) * perUm,
  }))
  const scatter = mean.standardDeviationUm ?? 0
  // Of the mean of the turns; the part of the instrument is the same in each.
  const ofMean = u === null ? null : Math.hypot(u, scatter / Math.sqrt(turns.length)) * perUm
  return {
    positionMm: setUp.planesMm[planeIndex] ?? null,
    turns: turns.map((one) => drawTurn(one, u)),
    points,
    figures: turnFigures(points, ofMean ?? undefined),
    floatRangeUm:
      setUp.secondInstrumentId === null
        ? null
        : Math.max(...turns.map((one) => one.floatRangeUm ?? 0)),
  }
}

type Turn = {
  readonly valuesUm: readonly number[]
  readonly closingDriftUm: number | null
  readonly floatRangeUm: number | null
}

function readTurn(setUp: SurveySetUp, asked: Asked, turnIndex: number): Turn {
  const { planeIndex, umAt } = asked
  const { anglesDeg, secondInstrumentId } = setUp
  const at = (positionIndex: number, indicator: SurveySpot['indicator']) => {
    const angleDeg = anglesDeg[positionIndex % anglesDeg.length] as number
    const valueUm = umAt({ planeIndex, turnIndex, positionIndex, indicator })
    return sagFree(setUp, angleDeg + (indicator === 'second' ? 180 : 0), valueUm)
  }
  const closingDriftUm = setUp.isClosed ? at(anglesDeg.length, 'first') - at(0, 'first') : null
  const first = anglesDeg.map((_, i) => at(i, 'first'))
  if (secondInstrumentId === null) return { valuesUm: first, closingDriftUm, floatRangeUm: null }
  const pairs = anglesDeg.map((angleDeg, i) => ({
    angleDeg,
    firstUm: first[i] as number,
    secondUm: at(i, 'second'),
  }))
  const { face, floatRangeUm } = separateEndFloat(pairs)
  return { valuesUm: face.map((one) => one.valueUm), closingDriftUm, floatRangeUm }
}

function sagFree({ sagUm, topAngleDeg }: SurveySetUp, angleDeg: number, valueUm: number): number {
  if (sagUm === null) return valueUm
  return sagCorrectedUm({ valueUm, angleDeg, topAngleDeg: topAngleDeg ?? 0, sagUm })
}

function drawTurn({ valuesUm, closingDriftUm }: Turn, u: number | null): SurveyTurn {
  return {
    totalUm: totalIndicatorReadingUm(valuesUm),
    closingDriftUm,
    isDriftLarge: closingDriftUm !== null && isDriftLarge(closingDriftUm, u ?? 0),
  }
}
