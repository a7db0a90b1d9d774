import { describe, expect, test } from 'vitest'
import type { Instrument } from '../../../src/domain/instrument.ts'
import type { UseFault } from '../../../src/domain/use-exception.ts'
import { addUseException } from '../../../src/store/add-use-exception.ts'
import { answerUseException } from '../../../src/store/answer-use-exception.ts'
import { withdrawInstrument } from '../../../src/store/withdraw-instrument.ts'
import { addInCalibration, buildShop } from '../../support/build-shop.ts'
import { actorOf, operator } from '../../support/cast.ts'
import { anotherOrder } from '../../support/shop-steps.ts'
import { testApp } from '../../support/test-app.ts'

type Json = Record<string, unknown>

const withinKPa = { unit: 'kPa', rangeFrom: 0, rangeTo: 160 } as const

function setUp() {
  const shop = buildShop()
  const web = testApp(shop.store)
  const post = async (path: string, body: Json, number = shop.workOrder.number) => {
    const answer = await web.postJson(`/api/v1/work-orders/${number}/${path}`, body, 'tess')
    return { status: answer.status, body: (await answer.json()) as Json }
  }
  /** From 170 kPa above standard air. */
  const leakTest = (gauge: Instrument, more: Json = {}) => ({
    volumeL: 2,
    start: { timeS: 0, pressureKPaAbs: 271.325, temperatureC: 20 },
    end: { timeS: 300, pressureKPaAbs: 271.025, temperatureC: 20 },
    gaugeInstrumentId: gauge.id,
    ...more,
  })
  const allow = ({ id: instrumentId }: Instrument, fault: UseFault) => {
    const { store, cast, workOrder } = shop
    const of = { workOrderId: workOrder.id, instrumentId, fault, by: cast.tess }
    const asked = { ...of, reason: 'the other one is away' }
    const { id } = addUseException(store, asked, actorOf(cast.tess))
    const said = { answer: 'allowed', validUntil: '2026-11-25', reason: 'compared today' } as const
    answerUseException(store, { ...said, useExceptionId: id, by: cast.ian }, actorOf(cast.ian))
  }
  return { shop, web, post, leakTest, allow }
}

describe('a record that a program sends', () => {
  test('is refused at the gauge beyond its range, until an inspector allowed that', async () => {
    const { shop, post, leakTest, allow } = setUp()
    const gauge = addInCalibration(shop.store, {
      kind: 'pressure-gauge',
      number: 'G-02',
      ...withinKPa,
    })
    const refused = await post('static-tests', leakTest(gauge))
    expect(refused.status).toBe(422)
    expect(JSON.stringify(refused.body)).toContain('gaugeInstrumentId')
    expect(JSON.stringify(refused.body)).toContain('G-02 reads from 0 to 160 kPa')
    allow(gauge, 'out-of-range')
    const recorded = await post('static-tests', leakTest(gauge))
    expect(recorded.status).toBe(201)
    expect(recorded.body.gauge).toMatchObject({
      status: 'in-calibration',
      exception: { fault: 'out-of-range', allowedByName: 'Ian Ives', reason: 'compared today' },
    })
    // It was allowed for that order, and for no other.
    const other = anotherOrder(shop).number
    expect((await post('static-tests', leakTest(gauge), other)).status).toBe(422)
  })

  test('is taken where the gauge’s range holds the pressure one way or the other', async () => {
    const { shop, post, leakTest } = setUp()
    for (const rangeTo of [250, 400]) {
      const number = `G-${rangeTo}`
      const range = { ...withinKPa, rangeTo }
      const gauge = addInCalibration(shop.store, { kind: 'pressure-gauge', number, ...range })
      const recorded = await post('static-tests', leakTest(gauge))
      expect(recorded.status).toBe(201)
      expect(recorded.body.gauge).not.toHaveProperty('exception')
    }
  })

  test('is refused at the thermometer below its range', async () => {
    const { shop, post, leakTest } = setUp()
    const range = { unit: 'C', rangeFrom: 21, rangeTo: 60 } as const
    const cold = addInCalibration(shop.store, { kind: 'thermometer', number: 'T-02', ...range })
    const refused = await post(
      'static-tests',
      leakTest(shop.gauge, { thermometerInstrumentId: cold.id }),
    )
    expect(refused.status).toBe(422)
    expect(JSON.stringify(refused.body)).toContain('T-02 reads from 21 to 60 °C')
  })

  test('is refused at the indicator whose needle can’t have moved so far', async () => {
    const { shop, post } = setUp()
    const range = { unit: 'mm', rangeFrom: 0, rangeTo: 0.2, resolutionStep: 0.002 } as const
    const lever = addInCalibration(shop.store, {
      kind: 'lever-indicator',
      number: 'E-01',
      ...range,
    })
    const value = (typed: string) => ({
      characteristic: 'shaft-run-out',
      condition: 'as-left',
      instrumentId: lever.id,
      unit: 'mm',
      readings: [{ value: '0.1' }, { value: typed }],
    })
    expect((await post('measured-values', value('0.2'))).status).toBe(201)
    const refused = await post('measured-values', value('0.21'))
    expect(refused.status).toBe(422)
    expect(JSON.stringify(refused.body)).toContain('E-01 reads from 0 to 0.2 mm')
  })

  test('is refused at a withdrawn gauge, unless the exception is from that', async () => {
    const { shop, post, leakTest, allow } = setUp()
    const { store, gauge } = shop
    const gone = { instrumentId: gauge.id, on: '2026-11-25', reason: 'dropped' }
    withdrawInstrument(store, gone, operator)
    const now = { startedAt: '2026-11-25T09:50:00Z' }
    const refused = await post('static-tests', leakTest(gauge, now))
    expect(refused.status).toBe(422)
    expect(JSON.stringify(refused.body)).toContain('G-01 is withdrawn')
    allow(gauge, 'overdue')
    expect((await post('static-tests', leakTest(gauge, now))).status).toBe(422)
    allow(gauge, 'withdrawn')
    expect((await post('static-tests', leakTest(gauge, now))).status).toBe(201)
  })
})

test('the form of a test says what to do, keeps what was typed, and leads to the request', async () => {
  const { shop, web, allow } = setUp()
  const order = `/work-orders/${shop.workOrder.number}`
  const narrow = { kind: 'pressure-gauge', number: 'G-02', ...withinKPa } as const
  const gauge = addInCalibration(shop.store, narrow)
  const form = {
    section: 'whole',
    startPressure: '1,7',
    endPressure: '1.69',
    pressureUnit: 'bar',
    pressureReference: 'gauge',
    startTemperatureC: '20',
    endTemperatureC: '20',
    durationMin: '5',
    volumeL: '2',
    gaugeInstrumentId: String(gauge.id),
  }
  const record = (formKey: string) =>
    web.post(`${order}/static-tests`, { ...form, formKey }, 'tess')
  const refused = await record('t1')
  expect(refused.status).toBe(422)
  const html = await refused.text()
  expect(html).toContain('G-02 reads from 0 to 160 kPa')
  expect(html).toContain('ask an inspector for an exception')
  expect(html).toContain('value="1,7"')
  expect(html).toContain(`href="${order}/exceptions/new?instrument=${gauge.id}"`)
  allow(gauge, 'out-of-range')
  expect((await record('t2')).status).toBe(303)
})
