import { describe, expect, test } from 'vitest'
import { judgedValues } from '../../../src/domain/judged-evidence.ts'
import { addLimitSet } from '../../../src/store/add-limit-set.ts'
import { readEvidence } from '../../../src/store/read-evidence.ts'
import { verifyStore } from '../../../src/store/verify-store.ts'
import { buildLimit } from '../../support/build-limit-set.ts'
import { addInCalibration, approved, buildShop, newLimitSet } from '../../support/build-shop.ts'
import { eightReadingsUm } from '../../support/build-survey.ts'
import { operator } from '../../support/cast.ts'
import { anotherOrder } from '../../support/shop-steps.ts'
import { testApp } from '../../support/test-app.ts'

type Json = Record<string, unknown>

function setUp() {
  const shop = buildShop()
  const dial = addInCalibration(shop.store, {
    kind: 'dial-indicator',
    number: 'D-01',
    unit: 'mm',
    resolutionStep: 0.001,
    rangeFrom: 0,
    rangeTo: 1,
  })
  const web = testApp(shop.store)
  const order = `/api/v1/work-orders/${shop.workOrder.number}`
  const post = async (body: unknown, as = 'tess', key?: string) => {
    const headers = key === undefined ? {} : { 'idempotency-key': key }
    const response = await web.postJson(`${order}/run-out-surveys`, body, as, headers)
    return { status: response.status, body: (await response.json()) as Json }
  }
  const faults = async (body: unknown) =>
    ((await post(body)).body.errors as { field: string }[] | undefined)?.map((one) => one.field)
  const readings = eightReadingsUm.map((valueUm, i) => ({ angleDeg: 45 * i, valueUm }))
  const body = (more: Json = {}) => ({ readings, kind: 'radial', instrumentId: dial.id, ...more })
  const evidence = () => readEvidence(shop.store, shop.workOrder.id)
  return { shop, web, order, dial, post, faults, body, readings, evidence }
}

describe('a survey of a program', () => {
  test('becomes a measured value with all that its readings say', async () => {
    const { post, body, evidence, shop } = setUp()
    const answer = await post(body())
    expect(answer.status, JSON.stringify(answer.body)).toBe(201)
    expect(answer.body).toMatchObject({
      characteristic: 'shaft-run-out',
      condition: 'as-left',
      totalIndicatorReadingUm: 40,
      tiltMrad: null,
      method: 'run-out/survey 1',
    })
    expect(answer.body.eccentricityUm).toBeCloseTo(21.296, 3) // E13
    const { measuredValues, dialSurveys } = evidence()
    expect(measuredValues).toMatchObject([
      {
        id: answer.body.measuredValueId,
        valueUm: 40,
        characteristic: 'shaft-run-out',
        method: 'run-out/survey 1',
      },
    ])
    expect(dialSurveys).toMatchObject([
      { id: answer.body.id, end: { outcome: 'recorded', measuredValueId: 1 } },
    ])
    expect(dialSurveys[0]?.readings).toHaveLength(8)
    expect(dialSurveys[0]?.end?.result?.planes[0]?.figures.totalUm).toBe(40)
    expect(verifyStore(shop.store)).toEqual([])
  })

  test('is judged like any other value', async () => {
    const { shop, web, dial, body } = setUp()
    const verdicts = async (upperUm: number) => {
      const { id: _, limitSetId: __, ...row } = buildLimit({ upper: upperUm })
      const limits = [{ ...row, characteristic: 'shaft-run-out' as const }]
      const fresh = newLimitSet({ name: `Up to ${upperUm}`, limits })
      const set = approved(shop.store, addLimitSet(shop.store, fresh, operator), shop.cast.ian)
      const { id, number } = anotherOrder(shop, { limitSetId: set.id })
      const at = `/api/v1/work-orders/${number}`
      expect((await web.postJson(`${at}/run-out-surveys`, body(), 'tess')).status).toBe(201)
      const figure = {
        characteristic: 'shaft-run-out',
        condition: 'as-left',
        readings: [{ value: 40 }],
        unit: 'um',
        instrumentId: dial.id,
      }
      expect((await web.postJson(`${at}/measured-values`, figure, 'tess')).status).toBe(201)
      const judged = judgedValues(readEvidence(shop.store, id)).map((one) => one.judged)
      expect(judged.map((one) => one.upper)).toEqual([upperUm, upperUm])
      return judged.map((one) => one.verdict)
    }
    // 40 um in all, by a dial that is known to about 1 um.
    expect(await verdicts(50)).toEqual(['pass', 'pass'])
    expect(await verdicts(30)).toEqual(['fail', 'fail'])
  })

  test('takes several turns, a closing reading and a face', async () => {
    const { post, body, readings, evidence } = setUp()
    const twice = [...readings, ...readings.map((one) => ({ ...one, valueUm: one.valueUm + 5 }))]
    const turns = await post(body({ readings: twice }))
    expect(turns.body).toMatchObject({ totalIndicatorReadingUm: 40 })
    const closed = [...readings, { angleDeg: 360, valueUm: 9 }]
    const drifted = await post(body({ readings: closed, characteristic: 'sleeve-run-out' }))
    expect(drifted.body).toMatchObject({ cautions: ['drift'], totalIndicatorReadingUm: 40 })
    const face = await post(
      body({
        kind: 'face',
        characteristic: 'seat-face-squareness',
        sweptDiameterMm: 140,
        sealMeanDiameterMm: 55,
        condition: 'as-found',
      }),
    )
    expect(face.status, JSON.stringify(face.body)).toBe(201)
    expect(face.body.tiltMrad).toBeCloseTo(42.592 / 140, 4)
    expect(face.body.movementAtSealUm).toBeCloseTo((42.592 * 55) / 140, 2)
    const { dialSurveys } = evidence()
    expect(dialSurveys.map((one) => one.setUp.turnsCount)).toEqual([2, 1, 1])
    expect(dialSurveys.map((one) => one.setUp.isClosed)).toEqual([false, true, false])
  })

  test('holds every closing reading of several turns against the first of its turn', async () => {
    const { post, body, readings, evidence } = setUp()
    const on = (turn: number) =>
      readings.map(({ angleDeg, valueUm }) => ({ angleDeg: angleDeg + 360 * turn, valueUm }))
    // The needle goes on without a stop, and ends 90 um away.
    const going = [...on(0), ...on(1), { angleDeg: 720, valueUm: 90 }]
    expect((await post(body({ readings: going }))).body).toMatchObject({ cautions: ['drift'] })
    // Each turn is closed for itself, the first 80 um away.
    const closing = (valueUm: number) => ({ angleDeg: 360, valueUm })
    const each = [...readings, closing(80), ...readings, closing(0)]
    expect((await post(body({ readings: each }))).body).toMatchObject({ cautions: ['drift'] })
    const drifts = evidence().dialSurveys.map((one) =>
      one.end?.result?.planes[0]?.turns.map((turn) => turn.closingDriftUm),
    )
    expect(drifts).toEqual([
      [0, 90],
      [80, 0],
    ])
  })

  test('takes the uncertainty that is stated of a reading into that of the value', async () => {
    const { post, body, evidence } = setUp()
    const papers = evidence
    await post(body())
    await post(body({ readingStandardUncertaintyUm: 50 }))
    await post(body({ readingStandardUncertaintyUm: 0.001 }))
    const stated = papers().measuredValues.map((one) => one.uncertainty.standardUncertainty)
    expect(stated[0]).toBeCloseTo(Math.SQRT2 / Math.sqrt(12), 9) // a step of 1 um
    expect(stated[1]).toBeCloseTo(50 * Math.SQRT2, 9)
    expect(stated[2]).toBe(stated[0])
  })

  test('says nothing of the place that nobody stated', async () => {
    const { post, body, evidence, web, shop } = setUp()
    await post(body())
    expect(evidence().dialSurveys[0]?.setUp.place).toBeNull()
    const page = await web.get(`/work-orders/${shop.workOrder.number}/alignment`, 'tess')
    expect(page.status).toBe(200)
    expect(await page.text()).toContain('not stated')
    const at = `/work-orders/${shop.workOrder.number}/run-out-surveys`
    expect((await web.get(`${at}/1`, 'tess')).status).toBe(200)
    expect((await web.get(`${at}/new?replaces=1`, 'tess')).status).toBe(200)
    const there = body({ place: 'machine', lockOutReference: 'LO-3' })
    expect((await post(there)).status).toBe(201)
    expect(evidence().dialSurveys[1]?.setUp.place).toBe('machine')
  })

  test('is recorded once for one key, and refused with another body', async () => {
    const { post, body, evidence } = setUp()
    const first = await post(body(), 'tess', 'k1')
    const again = await post(body(), 'tess', 'k1')
    expect(again).toEqual(first)
    expect((await post(body({ note: 'x' }), 'tess', 'k1')).status).toBe(409)
    expect(evidence().dialSurveys).toHaveLength(1)
  })

  test('replaces an earlier value with a reason', async () => {
    const { post, body, evidence, faults } = setUp()
    const { measuredValueId } = (await post(body())).body
    expect(await faults(body({ replacesId: measuredValueId }))).toEqual(['reason'])
    const correction = { replacesId: measuredValueId, reason: 'read at the wrong place' }
    expect((await post(body(correction))).status).toBe(201)
    expect((await post(body(correction))).status).toBe(409)
    expect(evidence().measuredValues.map((one) => one.replacedById)).toEqual([2, null])
  })

  test('is for technicians, and for nobody else', async () => {
    const { post, body } = setUp()
    for (const [who, status] of [
      ['ian', 403],
      ['cora', 403],
      ['mo', 403],
    ] as const) {
      expect((await post(body(), who)).status, who).toBe(status)
    }
  })

  test('is refused beside the field, and nothing is kept', async () => {
    const { faults, body, readings, evidence, dial } = setUp()
    const cases: readonly [Json, readonly string[]][] = [
      [{ readings: [] }, ['readings']],
      [{ readings: readings.slice(0, 2) }, ['readings']],
      [{ readings: [...readings, readings[3]] }, ['readings']],
      [{ kind: 'axial' }, ['kind']],
      [{ kind: 'face' }, ['sweptDiameterMm']],
      [{ characteristic: 'chamber-face-squareness' }, ['characteristic', 'sweptDiameterMm']],
      [{ characteristic: 'end-play' }, ['characteristic']],
      [{ instrumentId: 999 }, ['instrumentId']],
      [{ instrumentId: '' }, ['instrumentId']],
      [{ place: 'garage' }, ['place']],
      [{ place: 'machine' }, ['lockOutReference']],
      [{ sagUm: -20 }, ['sagUm']],
      [{ leverAngleDeg: 60 }, ['leverAngleDeg']],
      [{ surface: 'inside' }, ['surface']],
      [{ characteristic: 'register-concentricity', surface: 'face' }, ['surface']],
      [{ readings: [0, 1e-5, 2e-5].map((angleDeg) => ({ angleDeg, valueUm: 1 })) }, ['readings']],
      [
        { readings: [0, 1, 2, 3, 4, 5, 6, 7].map((angleDeg) => ({ angleDeg, valueUm: angleDeg })) },
        ['readings'],
      ],
      [{ readings: 'x' }, ['readings']],
      [{ colour: 'red' }, ['colour']],
      [
        { readings: readings.map((one) => ({ ...one, valueUm: one.valueUm * 100 })) },
        ['instrumentId'],
      ],
      [
        { readings: readings.map((one) => ({ ...one, valueUm: 'high' })) },
        readings.map((_, i) => `readings[${i}].valueUm`),
      ],
    ]
    expect(dial.rangeTo).toBe(1)
    for (const [more, fields] of cases) expect(await faults(body(more))).toEqual(fields)
    expect(evidence().dialSurveys).toEqual([])
    expect(evidence().measuredValues).toEqual([])
  })
})
