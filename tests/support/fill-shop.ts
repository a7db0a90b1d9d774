import type { Instrument } from '../../src/domain/instrument.ts'
import type { WorkOrder } from '../../src/domain/work-order.ts'
import { addCalibration } from '../../src/store/add-calibration.ts'
import { addConcession } from '../../src/store/add-concession.ts'
import { addDynamicRun } from '../../src/store/add-dynamic-run.ts'
import { addFacePhoto } from '../../src/store/add-face-photo.ts'
import { addFinding } from '../../src/store/add-finding.ts'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { addHandOver } from '../../src/store/add-hand-over.ts'
import { addInstrumentAmendment } from '../../src/store/add-instrument-amendment.ts'
import { addInstrumentFile } from '../../src/store/add-instrument-file.ts'
import { addLapCycle } from '../../src/store/add-lap-cycle.ts'
import { addLimitSet } from '../../src/store/add-limit-set.ts'
import { addLimitSetStep } from '../../src/store/add-limit-set-step.ts'
import { addMeasuredValue } from '../../src/store/add-measured-value.ts'
import { addPartLine } from '../../src/store/add-part-line.ts'
import { addStaticTest } from '../../src/store/add-static-test.ts'
import { addSurveyReading } from '../../src/store/add-survey-reading.ts'
import { addUseException } from '../../src/store/add-use-exception.ts'
import { addWholeSurvey } from '../../src/store/add-whole-survey.ts'
import { agreeCustomerRule } from '../../src/store/agree-customer-rule.ts'
import { agreeOrderRule } from '../../src/store/agree-order-rule.ts'
import { answerDoubts } from '../../src/store/answer-doubts.ts'
import { answerUseException } from '../../src/store/answer-use-exception.ts'
import { giveUpDialSurvey } from '../../src/store/end-dial-survey.ts'
import { refuse } from '../../src/store/refuse.ts'
import { setInstrumentHolder } from '../../src/store/set-instrument-holder.ts'
import { startDialSurvey } from '../../src/store/start-dial-survey.ts'
import { freshFinding, freshPartLine } from './build-finding.ts'
import { newCalibration, numbersOf } from './build-instrument.ts'
import { addInCalibration, approved, buildShop, newLimitSet, type Shop } from './build-shop.ts'
import { freshSurvey, surveyContext } from './build-survey.ts'
import { actorOf, operator } from './cast.ts'
import {
  anotherOrder,
  doTheWork,
  freshCycle,
  freshPhoto,
  freshReading,
  freshRun,
  freshTest,
  freshValue,
  freshWholeFace,
  workAndHandOver,
  workAndRelease,
} from './shop-steps.ts'
import { stripAndAssemble } from './strip-steps.ts'

/** A third order, of which one face fails and is taken by concession. */
function concede(shop: Shop): void {
  const { store, cast } = shop
  const third = anotherOrder(shop)
  const { id: workOrderId } = third
  const stated = { rule: 'four-outcomes', probability: 0.95, reference: 'PO 12' } as const
  agreeOrderRule(store, { workOrderId, stated }, actorOf(cast.ian))
  const directions = [{ directionDeg: 0, bands: 9, bandsTyped: '9' }]
  const reading = freshReading(shop, 'rotating-face', { workOrderId, directions })
  const { id: subjectId } = addFlatnessReading(store, reading, actorOf(cast.tess))
  const asked = {
    subjectKind: 'flatness-reading',
    subjectId,
    characteristic: 'flatness',
    reason: 'runs on water at 2 bar',
    customerReference: 'Letter 4711',
  } as const
  addConcession(store, { workOrderId, asked, by: cast.ian }, actorOf(cast.ian))
}

/** The dial was found beyond its tolerance; both values read with it stand. It has papers. */
function doubtAndKeep({ store, cast }: Shop, dial: Instrument): void {
  const of = { instrumentId: dial.id }
  const dates = { calibratedOn: '2026-11-25', dueOn: '2027-11-25' }
  const found = newCalibration({ ...of, ...dates, asFound: 'beyond', asLeft: 'within' })
  const { id: calibrationId } = addCalibration(store, found, operator)
  const subjects = [1, 2].map((subjectId) => ({
    subjectKind: 'measured-value' as const,
    subjectId,
  }))
  const said = { answer: 'stands', reason: 'only its upper end was off', by: cast.ian } as const
  const answer = { ...of, calibrationId, subjects, seenAnswerId: 0, ...said }
  answerDoubts(store, answer, actorOf(cast.ian))
  setInstrumentHolder(store, { ...of, holder: 'Bench 2' }, actorOf(cast.tess))
  const amended = { ...numbersOf(dial), largestError: 0.015, reason: 'from its data sheet' }
  addInstrumentAmendment(store, { ...of, ...amended, seenId: 0 }, actorOf(cast.ian))
  const file = { kind: 'file', name: 'K-1.txt', mediaType: 'text/plain; charset=utf-8' } as const
  const bytes = Buffer.from('0.02 mm at 9 mm')
  addInstrumentFile(store, { ...of, calibrationId, ...file, bytes }, actorOf(cast.ian))
}

/** A finding and a part line, each corrected once. */
function strip(shop: Shop, { id: workOrderId }: WorkOrder): void {
  const { store } = shop
  const tess = actorOf(shop.cast.tess)
  const seen = addFinding(store, freshFinding({ workOrderId }), tess)
  const place = { fromHour: 2, toHour: 5, radialPlace: 'outer-edge' } as const
  const again = { workOrderId, replacesId: seen.id, reason: 'place added', ...place }
  addFinding(store, freshFinding(again), tess)
  const line = addPartLine(store, freshPartLine({ workOrderId }), tess)
  const right = { workOrderId, replacesId: line.id, reason: 'batch misread', batch: 'B-18' }
  addPartLine(store, freshPartLine(right), tess)
}

/** One survey given up half-way, then one recorded. */
function survey(shop: Shop, { id: workOrderId }: WorkOrder, dial: Instrument): void {
  const tess = actorOf(shop.cast.tess)
  const again = freshSurvey(dial, { workOrderId })
  const { id: surveyId } = startDialSurvey(shop.store, again.survey, tess)
  const [first] = again.readings
  if (first !== undefined) addSurveyReading(shop.store, { workOrderId, surveyId }, first, tess)
  giveUpDialSurvey(shop.store, { workOrderId, surveyId, reason: 'the stand slipped' }, tess)
  addWholeSurvey(shop.store, freshSurvey(dial, { workOrderId }), surveyContext(shop, [dial]), tess)
}

/** The gauge may be used for an order although its readings lie beyond its range. */
function askAndAnswer({ store, cast, gauge }: Shop, { id: workOrderId }: WorkOrder): void {
  const wish = { fault: 'out-of-range', reason: 'the other one is away' } as const
  const asked = { ...wish, instrumentId: gauge.id, workOrderId, by: cast.tess }
  const { id: useExceptionId } = addUseException(store, asked, actorOf(cast.tess))
  const said = { answer: 'allowed', validUntil: '2026-11-30', reason: 'compared today' } as const
  answerUseException(store, { ...said, useExceptionId, by: cast.ian }, actorOf(cast.ian))
}

/**
 * A shop with a row in every table of records: one order released with its certificate, one
 * refused, corrected and handed over again. The newest reading, test, value and cycle are corrections, and
 * the newest limit set is used by nobody yet.
 */
export function fillShop(shop: Shop = buildShop()): Shop {
  const { store, cast } = shop
  const [tess, ian] = [actorOf(cast.tess), actorOf(cast.ian)]
  addFacePhoto(store, freshPhoto(shop), tess)
  workAndRelease(shop)
  const second = anotherOrder(shop)
  const handOver = workAndHandOver(shop, second)
  refuse(store, { handOverId: handOver.id, reason: 'seat is scratched', by: cast.ian }, ian)
  concede(shop)
  doTheWork(shop, second)
  const of = { workOrderId: second.id }
  const photo = addFacePhoto(store, freshPhoto(shop, of), tess)
  addFlatnessReading(store, freshWholeFace(shop, photo), tess)
  const wrong = addFlatnessReading(store, freshReading(shop, 'stationary-seat', of), tess)
  const reading = { ...of, replacesId: wrong.id, reason: 'counted the wrong band' }
  addFlatnessReading(store, freshReading(shop, 'stationary-seat', reading), tess)
  const leak = addStaticTest(store, freshTest(shop, of), tess)
  addStaticTest(
    store,
    freshTest(shop, { ...of, replacesId: leak.id, reason: 'gauge misread' }),
    tess,
  )
  const lapped = addLapCycle(store, freshCycle(shop, { ...of, stockUm: 9 }), tess)
  const stock = {
    stockUm: 12,
    heightBeforeMm: 2.9,
    heightAfterMm: 2.888,
    plateForm: 'flat',
  } as const
  const lap = { ...of, ...stock, replacesId: lapped.id, reason: 'heights read again' }
  addLapCycle(store, freshCycle(shop, lap), tess)
  const dial = addInCalibration(store, { kind: 'dial-indicator', number: 'D-01' })
  survey(shop, second, dial)
  strip(shop, second)
  const misread = addMeasuredValue(store, freshValue(shop, dial, of), tess)
  const value = { ...of, replacesId: misread.id, reason: 'needle turned twice' }
  addMeasuredValue(store, freshValue(shop, dial, value), tess)
  stripAndAssemble(shop, of)
  const run = addDynamicRun(store, freshRun(shop, of), [{ timeS: 0, massG: 1 }], tess)
  const newer = { ...of, replacesId: run.id, reason: 'the cup leaked' }
  addDynamicRun(store, freshRun(shop, newer), [{ timeS: 0, massG: 2 }], tess)
  doubtAndKeep(shop, dial)
  askAndAnswer(shop, second)
  addHandOver(store, { workOrderId: second.id, note: 'second time' }, tess)
  const limits = newLimitSet().limits.map((one) => {
    return one.characteristic === 'static-drop' ? { ...one, startAtLeastKPaGauge: 170 } : one
  })
  const old = approved(store, addLimitSet(store, newLimitSet({ name: 'Old' }), operator), cast.ian)
  const retired = { step: 'retired', effectiveOn: '2026-11-25', reason: 'a new standard' } as const
  addLimitSetStep(store, { ...retired, limitSetId: old.id, by: cast.ian }, ian)
  addLimitSet(store, newLimitSet({ version: 2, datedOn: '2026-06-01', limits }), operator)
  const stated = { rule: 'guard-u95', probability: 0.95, reference: 'Contract 12' } as const
  // Of the other customer: orders of this one are received by the operator, who agrees on nothing.
  agreeCustomerRule(store, { customerId: cast.olga.customerId ?? 0, stated }, ian)
  return shop
}
