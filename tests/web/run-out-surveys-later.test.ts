import { beforeEach, describe, expect, test } from 'vitest'
import type { Instrument } from '../../src/domain/instrument.ts'
import { addSurveyReading } from '../../src/store/add-survey-reading.ts'
import { readEvidence } from '../../src/store/read-evidence.ts'
import { startDialSurvey } from '../../src/store/start-dial-survey.ts'
import { withdrawInstrument } from '../../src/store/withdraw-instrument.ts'
import { addDial } from '../support/add-survey.ts'
import { addInCalibration, buildShop, type Shop } from '../support/build-shop.ts'
import { buildSetUp, freshSurvey } from '../support/build-survey.ts'
import { actorOf, operator } from '../support/cast.ts'
import { anotherOrder, doTheWork } from '../support/shop-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let web: TestApp
let dial: Instrument
let order = ''
let base = ''
beforeEach(() => {
  shop = buildShop()
  dial = addDial(shop)
  web = testApp(shop.store)
  order = `/work-orders/${shop.workOrder.number}`
  base = `${order}/run-out-surveys`
})

/** After the calibration of every instrument of the shop fell due, on 15 January 2027. */
const later = '2027-01-16T10:00:00.000Z'
const evidence = () => readEvidence(shop.store, shop.workOrder.id)
const spot = (positionIndex: number, value: string, more: Record<string, string> = {}) => ({
  formKey: `r-${positionIndex}-${value}`,
  planeIndex: '0',
  turnIndex: '0',
  positionIndex: String(positionIndex),
  indicator: 'first',
  value,
  ...more,
})
const read = (form: Record<string, string>) => web.post(`${base}/1/readings`, form, 'tess')
const record = () => web.post(`${base}/1/end`, { formKey: 'end', outcome: 'recorded' }, 'tess')

/** A survey by Tess with so many of its eight readings. */
function begun(count: number): void {
  const workOrderId = shop.workOrder.id
  const { survey, readings } = freshSurvey(dial, { workOrderId })
  const by = actorOf(shop.cast.tess)
  const { id: surveyId } = startDialSurvey(shop.store, survey, by)
  for (const one of readings.slice(0, count)) {
    addSurveyReading(shop.store, { workOrderId, surveyId }, one, by)
  }
}

async function allow(instrument: Instrument, fault: string): Promise<void> {
  const asked = {
    formKey: 'ask',
    instrumentId: String(instrument.id),
    fault,
    reason: 'D-02 is at the laboratory',
  }
  expect((await web.post(`${order}/exceptions`, asked, 'tess')).status).toBe(303)
  const answer = { answer: 'allowed', validUntil: '2027-01-20', reason: 'checked on gauge blocks' }
  const said = await web.post('/exceptions/1/answer', { ...answer, formKey: 'say' }, 'ian')
  expect(said.status).toBe(303)
}

describe('a survey that is taken up again when its indicator may not be used any more', () => {
  test('takes no reading, keeps what was typed, and says whom to ask', async () => {
    begun(2)
    web.setNow(later)
    const opened = await (await web.get(`${base}/1`, 'tess')).text()
    expect(opened).toContain('Nothing more is read or recorded with this indicator')
    expect(opened).toContain('D-01 was due for calibration on 2027-01-15')
    const refused = await read(spot(2, '24.5'))
    expect(refused.status).toBe(422)
    const text = await refused.text()
    expect(text).toContain('D-01 was due for calibration on 2027-01-15')
    expect(text).toMatch(/<input[^>]*name="value"[^>]*value="24.5"/)
    expect(text).toContain(`href="${order}/exceptions/new?instrument=${dial.id}"`)
    expect(evidence().dialSurveys[0]?.readings).toHaveLength(2)
  })

  test('is not recorded either, and stays open with its readings', async () => {
    begun(8)
    web.setNow(later)
    const refused = await record()
    expect(refused.status).toBe(422)
    const text = await refused.text()
    expect(text).toContain('D-01 was due for calibration on 2027-01-15')
    expect(text).toContain(`href="${order}/exceptions/new?instrument=${dial.id}"`)
    expect(evidence().measuredValues).toEqual([])
    expect(evidence().dialSurveys[0]?.end).toBeNull()
    expect(evidence().dialSurveys[0]?.readings).toHaveLength(8)
  })

  test('goes on under an exception, which the result names', async () => {
    begun(7)
    web.setNow(later)
    await allow(dial, 'overdue')
    expect((await read(spot(7, '2'))).status).toBe(303)
    const recorded = await record()
    expect(recorded.status).toBe(303)
    expect(evidence().measuredValues[0]?.instrument.exception).toMatchObject({
      fault: 'overdue',
      allowedByName: 'Ian Ives',
    })
    // Sent again after the exception ran out, it gets its first answer.
    web.setNow('2027-02-01T10:00:00.000Z')
    expect((await record()).headers.get('location')).toBe(recorded.headers.get('location'))
  })

  test('can still be given up', async () => {
    begun(8)
    web.setNow(later)
    const end = { formKey: 'up', outcome: 'given-up', reason: 'the indicator is overdue' }
    expect((await web.post(`${base}/1/end`, end, 'tess')).status).toBe(303)
  })

  test('asks the second indicator too: at its readings, and both at the end', async () => {
    const second = addInCalibration(shop.store, {
      kind: 'dial-indicator',
      number: 'D-02',
      unit: 'mm',
      resolutionStep: 0.001,
      rangeFrom: 0,
      rangeTo: 1,
    })
    const setUp = buildSetUp({
      instrumentId: dial.id,
      secondInstrumentId: second.id,
      surface: 'face',
      turned: 'indicator',
      sweptDiameterMm: 140,
      anglesDeg: [0, 90, 180, 270],
    })
    const of = { workOrderId: shop.workOrder.id }
    const characteristic = 'chamber-face-squareness'
    const by = actorOf(shop.cast.tess)
    const survey = { ...freshSurvey(dial, of).survey, characteristic, setUp } as const
    startDialSurvey(shop.store, survey, by)
    for (const [position, um] of ['40', '0', '-40', '0'].entries()) {
      expect((await read(spot(position, um))).status).toBe(303)
      if (position === 3) break
      const other = spot(position, um, { indicator: 'second', formKey: `s-${position}` })
      expect((await read(other)).status).toBe(303)
    }
    const withdrawn = { instrumentId: second.id, on: '2026-11-25', reason: 'dropped' }
    withdrawInstrument(shop.store, withdrawn, operator)
    const last = spot(3, '0', { indicator: 'second', formKey: 's-3' })
    const refused = await read(last)
    expect(refused.status).toBe(422)
    expect(await refused.text()).toContain('D-02 is withdrawn')
    // What the first one reads is not touched by it; the record of both is.
    expect((await read(spot(3, '1', { formKey: 'again' }))).status).toBe(303)
    addSurveyReading(
      shop.store,
      { ...of, surveyId: 1 },
      { planeIndex: 0, turnIndex: 0, positionIndex: 3, indicator: 'second', um: 0, typed: '0' },
      by,
    )
    const end = await record()
    expect(end.status).toBe(422)
    const text = await end.text()
    expect(text).toContain('D-02 is withdrawn')
    expect(text).not.toContain('D-01 is')
    expect(evidence().measuredValues).toEqual([])
  })
})

describe('the number of the lock-out', () => {
  const field = async (as = 'tess', query = '') => {
    const page = await (await web.get(`${base}/new${query}`, as)).text()
    return /<input[^>]*name="lockOutReference"[^>]*>/.exec(page)?.[0] ?? ''
  }

  test('is filled in for who locked this machine out on the same day, and for nobody else', async () => {
    expect(await field()).toContain('value=""')
    begun(8)
    expect(await field()).toContain('value="LO-17"')
    expect(await field('tom')).toContain('value=""')
    const { id, number } = anotherOrder(shop)
    expect(id).not.toBe(shop.workOrder.id)
    const other = await (await web.get(`/work-orders/${number}/run-out-surveys/new`, 'tess')).text()
    expect(other).not.toContain('LO-17')
    web.setNow('2026-11-26T07:00:00.000Z')
    expect(await field()).toContain('value=""')
  })

  test('is asked anew where a survey is corrected on a later day, with the rest filled in', async () => {
    begun(8)
    expect((await record()).status).toBe(303)
    expect(await field('tess', '?replaces=1')).toContain('value="LO-17"')
    expect(await field('tom', '?replaces=1')).toContain('value=""')
    web.setNow('2026-11-26T07:00:00.000Z')
    expect(await field('tess', '?replaces=1')).toContain('value=""')
    const page = await (await web.get(`${base}/new?replaces=1`, 'tess')).text()
    expect(page).toMatch(/name="place" value="machine" checked/)
    expect(page).not.toContain('LO-17')
  })
})

describe('a survey that was left half-way', () => {
  const handOver = () => web.post(`${order}/hand-over`, { formKey: 'over', note: 'dry' }, 'tess')
  const giveUp = () => {
    const form = { formKey: 'up', outcome: 'given-up', reason: 'the pump is needed' }
    return web.post(`${base}/1/end`, form, 'tess')
  }

  test('is told before the hand-over as missing, with the way to it', async () => {
    doTheWork(shop)
    begun(3)
    const page = await (await web.get(order, 'tess')).text()
    expect(page).toContain('Still missing before hand-over')
    expect(page).toContain(
      'a survey that was left half-way: Shaft run-out. Record it or give it up.',
    )
    expect(page).toContain(`href="${base}/1">To the survey: Shaft run-out`)
    const refused = await handOver()
    expect(refused.status).toBe(422)
    const text = await refused.text()
    expect(text).toMatch(/href="#open-surveys">The end of a survey that was left half-way/)
    expect(text).toContain('id="open-surveys"')
    expect(text).toContain('dry</textarea>')
    expect(evidence().workOrder.stage).toBe('testing')
    expect((await giveUp()).status).toBe(303)
    expect((await handOver()).status).toBe(303)
    expect(evidence().workOrder.stage).toBe('handed-over')
  })

  test('is no way round for a program, which is told which one', async () => {
    doTheWork(shop)
    begun(3)
    const early = await web.postJson(`/api/v1${order}/hand-over`, {}, 'tess')
    expect(early.status).toBe(409)
    expect(((await early.json()) as { missing: unknown }).missing).toEqual([
      { kind: 'open-survey', survey: { id: 1, characteristic: 'shaft-run-out' } },
    ])
    expect((await giveUp()).status).toBe(303)
    expect((await web.postJson(`/api/v1${order}/hand-over`, {}, 'tess')).status).toBe(201)
  })
})

describe('a position that is read again', () => {
  const struck = /<s>12\.5 µm<\/s>[^|]*?overtaken/

  test('keeps both readings, the earlier one struck, each with who and when', async () => {
    begun(8)
    const { tom } = shop.cast
    const again = { planeIndex: 0, turnIndex: 0, positionIndex: 1, indicator: 'first' } as const
    const of = { workOrderId: shop.workOrder.id, surveyId: 1 }
    const addAgain = (typed: string, at: string) =>
      addSurveyReading(shop.store, of, { ...again, um: Number(typed), typed }, actorOf(tom, at))
    addAgain('12.5', '2026-11-25T09:30:00.000Z')
    addAgain('7', '2026-11-25T09:45:00.000Z')
    const open = await (await web.get(`${base}/1`, 'tess')).text()
    expect(open).toMatch(struck)
    expect(open).toContain('Tom Tiller, 2026-11-25 09:30 UTC')
    expect(open).toContain('Tom Tiller, 2026-11-25 09:45 UTC')
    expect(open).toContain('A position can be read again while the survey is open')
    expect((await record()).status).toBe(303)
    for (const path of [`${base}/1`, `${order}/results/measured-value/1`]) {
      const recorded = await (await web.get(path, 'ian')).text()
      expect(recorded, path).toMatch(struck)
      expect(recorded, path).toContain('Tom Tiller, 2026-11-25 09:30 UTC')
      expect(recorded, path).toContain('corrected by another one, with a reason')
    }
    expect(evidence().measuredValues[0]?.valueUm).toBe(40)
  })

  test('is none of a recorded survey, which only another one with a reason corrects', async () => {
    begun(8)
    expect((await record()).status).toBe(303)
    expect((await read(spot(1, '9'))).status).toBe(409)
    expect(evidence().dialSurveys[0]?.readings).toHaveLength(8)
    const set = {
      formKey: 'correct',
      characteristic: 'shaft-run-out',
      condition: 'as-left',
      place: 'machine',
      turned: 'part',
      direction: 'clockwise',
      lockOutReference: 'LO-18',
      positionCount: '8',
      turnsCount: '1',
      instrumentId: String(dial.id),
      unit: 'um',
      replacesId: '1',
    }
    const without = await web.post(base, set, 'tess')
    expect(without.status).toBe(422)
    expect(await without.text()).toContain('id="reason-error"')
    const corrected = await web.post(base, { ...set, reason: 'the mark had slipped' }, 'tess')
    expect(corrected.status).toBe(303)
    expect(evidence().dialSurveys[1]).toMatchObject({
      replacesId: 1,
      reason: 'the mark had slipped',
    })
  })
})
