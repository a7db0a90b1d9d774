import { describe, expect, it } from 'vitest'
import { doubtWindow } from '../../src/domain/doubt-window.ts'
import type { ResultSubject } from '../../src/domain/result-subject.ts'
import { addCalibration } from '../../src/store/add-calibration.ts'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { addMeasuredValue } from '../../src/store/add-measured-value.ts'
import { addStaticTest } from '../../src/store/add-static-test.ts'
import { answerDoubts, type FreshDoubtAnswer } from '../../src/store/answer-doubts.ts'
import { listDoubts } from '../../src/store/list-doubts.ts'
import { listTouched } from '../../src/store/list-touched.ts'
import { newestDoubtAnswerId } from '../../src/store/newest-doubt-answer-id.ts'
import { readEvidence } from '../../src/store/read-evidence.ts'
import { requireInstrument } from '../../src/store/require-instrument.ts'
import { verifyRecords } from '../../src/store/verify-records.ts'
import { newCalibration } from '../support/build-instrument.ts'
import { addInCalibration, buildShop, type Shop } from '../support/build-shop.ts'
import { actorOf, operator } from '../support/cast.ts'
import {
  anotherOrder,
  doTheWork,
  freshReading,
  freshTest,
  freshValue,
  workAndRelease,
} from '../support/shop-steps.ts'

/** A calibration of 2026-12-01 that finds an instrument of the shop beyond its tolerance. */
function findBeyond({ store }: Shop, instrumentId: number, calibratedOn = '2026-12-01'): number {
  const dates = { calibratedOn, dueOn: '2028-01-01' }
  const fresh = newCalibration({ instrumentId, ...dates, asFound: 'beyond', asLeft: 'within' })
  return addCalibration(store, fresh, operator).id
}

function touchedBy({ store }: Shop, instrumentId: number, calibrationId: number) {
  const instrument = requireInstrument(store, instrumentId)
  const found = instrument.calibrations.find((one) => one.id === calibrationId)!
  return listTouched(store, { instrument, found, window: doubtWindow([found], found)! })
}

const answered = (shop: Shop, of: { instrumentId: number; calibrationId: number }) => ({
  ...of,
  answer: 'stands' as const,
  reason: 'the error was at the upper end only',
  seenAnswerId: 0,
  by: shop.cast.ian,
})

describe('the records that an instrument out of tolerance touched', () => {
  it('are found by each part that an instrument plays in them', () => {
    const shop = buildShop()
    const { store, cast, lamp, flat, gauge, thermometer, workOrder } = shop
    const tess = actorOf(cast.tess)
    const dial = addInCalibration(store, { kind: 'dial-indicator', number: 'D-01' })
    const volume = addInCalibration(store, { kind: 'volume', number: 'V-01' })
    const reading = addFlatnessReading(store, freshReading(shop), tess)
    const volumeInstrumentId = volume.id
    const startedAt = '2026-11-24T08:00:00.000Z'
    const leak = addStaticTest(store, freshTest(shop, { volumeInstrumentId, startedAt }), tess)
    const value = addMeasuredValue(store, freshValue(shop, dial), tess)
    const expected: readonly (readonly [number, ResultSubject])[] = [
      [lamp.id, { subjectKind: 'flatness-reading', subjectId: reading.id }],
      [flat.id, { subjectKind: 'flatness-reading', subjectId: reading.id }],
      [gauge.id, { subjectKind: 'static-test', subjectId: leak.id }],
      [thermometer.id, { subjectKind: 'static-test', subjectId: leak.id }],
      [volume.id, { subjectKind: 'static-test', subjectId: leak.id }],
      [dial.id, { subjectKind: 'measured-value', subjectId: value.id }],
    ]
    for (const [instrumentId, subject] of expected) {
      const calibrationId = findBeyond(shop, instrumentId)
      const touched = touchedBy(shop, instrumentId, calibrationId)
      expect(touched).toHaveLength(1)
      expect(touched[0]).toMatchObject({
        ...subject,
        workOrderNumber: workOrder.number,
        customerName: shop.customer.name,
        answer: null,
        certificateNumbers: [],
      })
    }
    // Each of the six is a doubt of its own about the three records of the order.
    expect(listDoubts(store, workOrder.id)).toHaveLength(6)
  })

  it('are those of the window alone, a static test by the day on which it began', () => {
    const shop = buildShop()
    const { store, cast, gauge, workOrder } = shop
    const begun = (startedAt: string) =>
      addStaticTest(store, freshTest(shop, { startedAt }), actorOf(cast.tess)).id
    begun('2026-01-14T23:59:00.000Z')
    const first = begun('2026-01-15T00:00:00.000Z')
    const last = begun('2026-05-01T23:59:00.000Z')
    begun('2026-05-02T00:00:00.000Z')
    findBeyond(shop, gauge.id, '2026-05-01')
    expect(listDoubts(store, workOrder.id).map((one) => one.subjectId)).toEqual([first, last])
  })

  it('go on after a calibration that left it beyond, until one leaves it good', () => {
    const shop = buildShop()
    const { store, cast, gauge, workOrder } = shop
    const begun = (startedAt: string) =>
      addStaticTest(store, freshTest(shop, { startedAt }), actorOf(cast.tess)).id
    const left = { calibratedOn: '2026-05-01', dueOn: '2028-01-01', asLeft: 'beyond' } as const
    const instrumentId = gauge.id
    // It does not say how it was found: what was used before is in doubt with what came after.
    addCalibration(store, newCalibration({ instrumentId, ...left }), operator)
    const before = begun('2026-04-30T08:00:00.000Z')
    const after = begun('2026-07-01T08:00:00.000Z')
    const mended = begun('2026-09-01T08:00:00.000Z')
    const ids = () => listDoubts(store, workOrder.id).map((one) => one.subjectId)
    expect(ids()).toEqual([before, after, mended])
    const good = { calibratedOn: '2026-08-01', dueOn: '2028-01-01', asLeft: 'within' } as const
    addCalibration(store, newCalibration({ instrumentId, ...good }), operator)
    expect(ids()).toEqual([before, after])
  })

  it('are none where no calibration found anything beyond', () => {
    const shop = buildShop()
    doTheWork(shop)
    expect(listDoubts(shop.store, shop.workOrder.id)).toEqual([])
    findBeyond(shop, shop.lamp.id)
    expect(listDoubts(shop.store, anotherOrder(shop).id)).toEqual([])
  })

  it('name the certificates that were issued while they stood', () => {
    const shop = buildShop()
    const { certificate } = workAndRelease(shop)
    const calibrationId = findBeyond(shop, shop.gauge.id)
    const [touched] = touchedBy(shop, shop.gauge.id, calibrationId)
    expect(touched?.certificateNumbers).toEqual([certificate.number])
    expect(touched?.isReplaced).toBe(false)
  })

  it('name no certificate of what was replaced before it was issued', () => {
    const shop = buildShop()
    const { store, cast } = shop
    const wrong = addStaticTest(store, freshTest(shop), actorOf(cast.tess))
    const again = { replacesId: wrong.id, reason: 'gauge misread' }
    addStaticTest(store, freshTest(shop, again), actorOf(cast.tess))
    const { certificate } = workAndRelease(shop)
    const calibrationId = findBeyond(shop, shop.gauge.id)
    const touched = touchedBy(shop, shop.gauge.id, calibrationId)
    expect(touched.find((one) => one.subjectId === wrong.id)).toMatchObject({
      isReplaced: true,
      certificateNumbers: [],
    })
    expect(touched.at(-1)?.certificateNumbers).toEqual([certificate.number])
  })
})

describe('the answer about records in doubt', () => {
  it('counts as it was said last, and is kept beside the earlier ones', () => {
    const shop = buildShop()
    const { store, cast, lamp, workOrder } = shop
    doTheWork(shop)
    const calibrationId = findBeyond(shop, lamp.id)
    const subjects = listDoubts(store, workOrder.id)
    expect(subjects).toHaveLength(2)
    const of = answered(shop, { instrumentId: lamp.id, calibrationId })
    answerDoubts(store, { ...of, subjects: subjects.slice(0, 1) }, actorOf(cast.ian))
    expect(listDoubts(store, workOrder.id).map((one) => one.answer)).toEqual(['stands', null])
    const seenAnswerId = newestDoubtAnswerId(store, calibrationId)
    const later = { ...of, subjects, seenAnswerId, answer: 'repeat' as const }
    answerDoubts(store, later, actorOf(cast.ian))
    const { doubts } = readEvidence(store, workOrder.id)
    expect(doubts.map((one) => one.answer)).toEqual(['repeat', 'repeat'])
    expect(doubts[0]).toMatchObject({ byName: cast.ian.displayName, foundOn: '2026-12-01' })
    expect(store.raw.prepare('SELECT count(*) AS n FROM doubt_answer').get()).toEqual({ n: 3 })
    expect(verifyRecords(store)).toEqual([])
  })

  it('does not go over one that was given since the list was looked at', () => {
    const shop = buildShop()
    const { store, cast, lamp, workOrder } = shop
    doTheWork(shop)
    const calibrationId = findBeyond(shop, lamp.id)
    const [first, second] = listDoubts(store, workOrder.id)
    const of = answered(shop, { instrumentId: lamp.id, calibrationId })
    const by = cast.ina
    const repeat = { ...of, subjects: [first!], answer: 'repeat' as const, by }
    answerDoubts(store, repeat, actorOf(by))
    const both = { ...of, subjects: [second!, first!] }
    const refused = () => answerDoubts(store, both, actorOf(cast.ian))
    expect(refused).toThrow('conflict: answered-meanwhile')
    expect(listDoubts(store, workOrder.id).map((one) => one.answer)).toEqual(['repeat', null])
    // What nobody else answered meanwhile is not held up, nor who has seen the other answer.
    answerDoubts(store, { ...of, subjects: [second!] }, actorOf(cast.ian))
    const seenAnswerId = newestDoubtAnswerId(store, calibrationId)
    answerDoubts(store, { ...both, seenAnswerId }, actorOf(cast.ian))
    expect(listDoubts(store, workOrder.id).map((one) => one.answer)).toEqual(['stands', 'stands'])
  })

  it('is an inspector’s, about another’s record, and about what is in doubt', () => {
    const shop = buildShop()
    const { store, cast, lamp, gauge, workOrder } = shop
    doTheWork(shop)
    const calibrationId = findBeyond(shop, lamp.id)
    const subjects = listDoubts(store, workOrder.id)
    const of = { ...answered(shop, { instrumentId: lamp.id, calibrationId }), subjects }
    const ian = actorOf(cast.ian)
    const tryWith = (change: Partial<FreshDoubtAnswer>) => () =>
      answerDoubts(store, { ...of, ...change }, ian)
    expect(tryWith({ by: cast.mo })).toThrow('not-inspector')
    expect(tryWith({ by: { ...cast.tess, role: 'inspector' } })).toThrow('own-record')
    expect(tryWith({ instrumentId: gauge.id })).toThrow('no-doubt')
    expect(tryWith({ calibrationId: lamp.calibrations[0]!.id })).toThrow('no-doubt')
    const strange = { subjectKind: 'static-test', subjectId: 1 } as const
    expect(tryWith({ subjects: [...subjects, strange] })).toThrow('not-in-doubt')
    expect(listDoubts(store, workOrder.id).map((one) => one.answer)).toEqual([null, null])
  })
})
