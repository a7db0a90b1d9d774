import type { SurveySetUp } from '../../src/domain/dial-survey.ts'
import type { Instrument } from '../../src/domain/instrument.ts'
import type { MeasuredValueContext } from '../../src/domain/parse-measured-value.ts'
import type { NewSurveyReading } from '../../src/domain/parse-survey-readings.ts'
import type { FreshSurvey } from '../../src/store/start-dial-survey.ts'
import type { Shop } from './build-shop.ts'

/** E13 of the facts: eight positions, 40 um in all. */
export const eightReadingsUm = [0, 7, 24, 38, 40, 33, 16, 2] as const

/** A shaft turned once under a standing indicator, on the machine. */
export function buildSetUp(changes: Partial<SurveySetUp> = {}): SurveySetUp {
  return {
    place: 'machine',
    turned: 'part',
    surface: 'outside',
    contact: 'ball',
    leverAngleDeg: null,
    sweptDiameterMm: 50,
    sealMeanDiameterMm: null,
    sizeMm: null,
    anglesDeg: [0, 45, 90, 135, 180, 225, 270, 315],
    isClockwise: true,
    turnsCount: 1,
    isClosed: false,
    planesMm: [],
    floatHeld: 'not-held',
    lockOutReference: 'LO-17',
    unit: 'um',
    sagUm: null,
    topAngleDeg: null,
    instrumentId: 1,
    secondInstrumentId: null,
    ...changes,
  }
}

/** A survey of a shaft with its eight readings, ready to be stored. */
export function freshSurvey(
  dial: Pick<Instrument, 'id'>,
  changes: Partial<FreshSurvey> & { readonly workOrderId: number },
): {
  survey: FreshSurvey
  readings: readonly NewSurveyReading[]
  readingStandardUncertaintyUm: null
} {
  const survey: FreshSurvey = {
    characteristic: 'shaft-run-out',
    condition: 'as-left',
    setUp: buildSetUp({ instrumentId: dial.id }),
    note: '',
    replacesId: null,
    reason: '',
    ...changes,
  }
  const readings = eightReadingsUm.map((um, positionIndex) => ({
    planeIndex: 0,
    turnIndex: 0,
    positionIndex,
    indicator: 'first' as const,
    um,
    typed: String(um),
  }))
  return { survey, readings, readingStandardUncertaintyUm: null }
}

/** What a survey of the shop is computed in. */
export function surveyContext(
  shop: Pick<Shop, 'seal'>,
  instruments: readonly Instrument[],
): MeasuredValueContext {
  return { components: shop.seal.components, instruments, today: '2026-11-25' }
}
