import type { SurveyCharacteristic } from '../../src/domain/characteristic.ts'
import { type SurveySetUp, surveyKindOf } from '../../src/domain/dial-survey.ts'
import type { ReadingCondition } from '../../src/domain/flatness.ts'
import type { Instrument } from '../../src/domain/instrument.ts'
import { surveySpots } from '../../src/domain/survey-spots.ts'
import { addWholeSurvey, type WholeSurvey } from '../../src/store/add-whole-survey.ts'
import { listInstruments } from '../../src/store/list-instruments.ts'
import { addInCalibration, type Shop } from './build-shop.ts'
import { buildSetUp, surveyContext } from './build-survey.ts'
import { actorOf } from './cast.ts'

/** A dial indicator of 0.001 mm, in calibration. */
export function addDial(shop: Shop): Instrument {
  return addInCalibration(shop.store, {
    kind: 'dial-indicator',
    number: 'D-01',
    unit: 'mm',
    resolutionStep: 0.001,
    rangeFrom: 0,
    rangeTo: 1,
  })
}

/** Records a whole survey by Tess: a wave of one crest, or as `umAt` says. */
export function addSurvey(
  shop: Shop,
  dial: Instrument,
  of: {
    readonly characteristic: SurveyCharacteristic
    readonly condition?: ReadingCondition
    readonly eccentricityUm?: number
    readonly directionDeg?: number
    /** Of a position (or of two ends) in its turn; the closing position is the first again. */
    readonly umAt?: (angleDeg: number, turnIndex: number) => number
    readonly setUp?: Partial<SurveySetUp>
    readonly workOrderId?: number
  },
): WholeSurvey {
  const { characteristic, condition = 'as-left', eccentricityUm = 20, directionDeg = 70 } = of
  const usual = { surface: 'face', turned: 'indicator' } as const
  const isFace = surveyKindOf[characteristic] === 'face'
  const setUp = buildSetUp({ instrumentId: dial.id, ...(isFace ? usual : {}), ...of.setUp })
  const { anglesDeg } = setUp
  const wave = (deg: number) => eccentricityUm * Math.cos(((deg - directionDeg) * Math.PI) / 180)
  const umAt = of.umAt ?? wave
  const readings = surveySpots(setUp, characteristic).map((spot) => {
    const deg = anglesDeg[spot.positionIndex % anglesDeg.length] as number
    // As typed: to a tenth of a graduation.
    const um = Math.round(umAt(deg, spot.turnIndex) * 10) / 10
    return { ...spot, um, typed: String(um) }
  })
  const workOrderId = of.workOrderId ?? shop.workOrder.id
  const survey = { workOrderId, characteristic, condition, setUp, note: '', replacesId: null }
  return addWholeSurvey(
    shop.store,
    { survey: { ...survey, reason: '' }, readings, readingStandardUncertaintyUm: null },
    surveyContext(shop, listInstruments(shop.store)),
    actorOf(shop.cast.tess),
  )
}
