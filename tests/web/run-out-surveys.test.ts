import { beforeEach, describe, expect, test } from 'vitest'
import type { Instrument } from '../../src/domain/instrument.ts'
import { instrumentsUsed } from '../../src/domain/instruments-used.ts'
import { moveWorkOrder } from '../../src/store/move-work-order.ts'
import { readEvidence } from '../../src/store/read-evidence.ts'
import { usedRecords } from '../../src/store/used-records.ts'
import { verifyStore } from '../../src/store/verify-store.ts'
import { addInCalibration, buildShop, type Shop } from '../support/build-shop.ts'
import { eightReadingsUm } from '../support/build-survey.ts'
import { actorOf } from '../support/cast.ts'
import { anotherOrder, workAndHandOver } from '../support/shop-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let web: TestApp
let dial: Instrument
let second: Instrument
let base = ''

beforeEach(() => {
  shop = buildShop()
  const kind = 'dial-indicator'
  const known = { unit: 'mm', resolutionStep: 0.01, rangeFrom: 0, rangeTo: 10 } as const
  dial = addInCalibration(shop.store, { kind, number: 'D-01', ...known })
  second = addInCalibration(shop.store, { kind, number: 'D-02', ...known })
  web = testApp(shop.store)
  base = `/work-orders/${shop.workOrder.number}/run-out-surveys`
})

const setUp = (more: Record<string, string> = {}) => ({
  formKey: 'k',
  characteristic: 'shaft-run-out',
  condition: 'as-left',
  place: 'machine',
  turned: 'part',
  direction: 'clockwise',
  lockOutReference: 'LO-17',
  positionCount: '8',
  turnsCount: '1',
  instrumentId: String(dial.id),
  unit: 'mm',
  ...more,
})
const begin = (more: Record<string, string> = {}, as = 'tess') => web.post(base, setUp(more), as)
const spot = (positionIndex: number, value: string, more: Record<string, string> = {}) => ({
  formKey: `r-${positionIndex}-${value}-${Object.values(more).join('-')}`,
  planeIndex: '0',
  turnIndex: '0',
  positionIndex: String(positionIndex),
  indicator: 'first',
  value,
  ...more,
})
const read = (positionIndex: number, value: string, more: Record<string, string> = {}) =>
  web.post(`${base}/1/readings`, spot(positionIndex, value, more), 'tess')
const surveys = () => readEvidence(shop.store, shop.workOrder.id).dialSurveys
const pageOf = async (as = 'tess', query = '') =>
  (await (await web.get(`${base}/1${query}`, as)).text()).replaceAll(/\s+/g, ' ')
const mm = eightReadingsUm.map((um) => String(um / 1000))

describe('a survey on its pages', () => {
  test('is begun, read position by position, and recorded as a result', async () => {
    const begun = await begin()
    expect(begun.status).toBe(303)
    expect(begun.headers.get('location')).toBe(`${base}/1`)
    expect(await pageOf()).toContain('Position 1, 0°')
    for (const [i, value] of mm.entries()) {
      const kept = await read(i, value)
      expect(kept.status, value).toBe(303)
    }
    const whole = await pageOf()
    expect(whole).toContain('Every position is read.')
    expect(whole).toContain('42.6')
    expect(whole).toContain('169.8°')
    const ended = await web.post(`${base}/1/end`, { formKey: 'e', outcome: 'recorded' }, 'tess')
    expect(ended.status).toBe(303)
    const [survey] = surveys()
    expect(survey?.end).toMatchObject({ outcome: 'recorded', measuredValueId: 1 })
    const { measuredValues } = readEvidence(shop.store, shop.workOrder.id)
    expect(measuredValues[0]?.valueUm).toBeCloseTo(40, 9) // mm to um in binary
    expect(measuredValues[0]?.readings[0]?.typed).toBe('0.04')
    const order = `/work-orders/${shop.workOrder.number}`
    const result = await (await web.get(`${order}/results/measured-value/1`, 'ian')).text()
    expect(result).toContain('How it was set up')
    expect(result).toContain('LO-17')
    expect(verifyStore(shop.store)).toEqual([])
  })

  test('is left half-way, taken up again, and read again where it was misread', async () => {
    await begin()
    await read(0, '0')
    await read(1, '0,07')
    expect(await pageOf()).toContain('Position 3, 90°')
    const order = await (await web.get(`/work-orders/${shop.workOrder.number}`, 'tess')).text()
    expect(order).toContain('2 of 8 read')
    expect(await pageOf('tess', '?spot=0-0-1-first')).toContain('Position 2, 45°')
    await read(1, '0.007')
    expect(await pageOf()).toContain('overtaken')
    const [survey] = surveys()
    expect(survey?.readings.map((one) => one.typed)).toEqual(['0', '0,07', '0.007'])
    expect(survey?.readings[1]?.um).toBeCloseTo(70, 9)
  })

  test('keeps a reading that is sent twice once', async () => {
    await begin()
    await read(0, '0.01')
    await read(0, '0.01')
    expect(surveys()[0]?.readings).toHaveLength(1)
  })

  test('records a reading under the name of who typed it, or not at all', async () => {
    await begin()
    const readerId = /name="readerId" value="(\d+)"/.exec(await pageOf())?.[1] ?? ''
    expect(readerId).not.toBe('')
    const other = await read(0, '0.01', { readerId: String(Number(readerId) + 1) })
    expect(other.status).toBe(409)
    expect(await other.text()).toContain('Somebody else has signed in here since this was typed.')
    expect(surveys()[0]?.readings).toEqual([])
    expect((await read(0, '0.01', { readerId })).status).toBe(303)
    expect(surveys()[0]?.readings).toHaveLength(1)
  })

  test('takes a register for a bore until somebody says that it is a spigot', async () => {
    const page = (await (await web.get(`${base}/new`, 'tess')).text()).replaceAll(/\s+/g, ' ')
    const [side = ''] = page.match(/<select[^>]*name="surface".*?<\/select>/) ?? []
    expect(side.match(/<option[^>]*>/)?.[0]).toContain('value="inside"')
    expect(side).not.toContain('value="face"')
  })

  test('names its buttons of graduations for who can’t see', async () => {
    await begin()
    const page = await pageOf()
    for (const name of ['−10 graduations', '−1 graduation', '+1 graduation', '+10 graduations']) {
      expect(page).toContain(`aria-label="${name}"`)
    }
    expect(page).toContain('aria-label="0, back to zero graduations"')
  })

  test('reads a dial of half thousandths of an inch in its graduations', async () => {
    const inch = addInCalibration(shop.store, {
      kind: 'dial-indicator',
      number: 'D-09',
      unit: 'in',
      resolutionStep: 0.0005,
      rangeFrom: 0,
      rangeTo: 0.25,
    })
    await begin({ instrumentId: String(inch.id), unit: 'graduations' })
    await read(0, '-3')
    expect(surveys()[0]?.readings[0]).toMatchObject({ typed: '-3' })
    expect(surveys()[0]?.readings[0]?.um).toBeCloseTo(-38.1, 9) // 0.0015 in
  })

  test('points out a needle that did not come back', async () => {
    await begin({ closing: 'yes' })
    for (const [i, value] of mm.entries()) await read(i, value)
    expect(await pageOf()).toContain('Closing reading at the first position')
    await read(8, '0.06')
    const open = await pageOf()
    expect(open).toContain('The closing reading differs from the first by more than this indicator')
    expect(open).toContain('Look at stand, bracket and float, and read again.')
    await web.post(`${base}/1/end`, { formKey: 'e', outcome: 'recorded' }, 'tess')
    const at = `/work-orders/${shop.workOrder.number}`
    for (const path of [`${base}/1`, `${at}/results/measured-value/1`, `${at}/alignment`]) {
      const told = await (await web.get(path, 'ian')).text()
      expect(told, path).toContain('The closing reading differs from the first by more')
      // It is over: what would mend it is told while it is read.
      expect(told, path).not.toContain('and read again.')
    }
  })

  test.each([
    [{ characteristic: 'shaft-run-out' }, [false, false]],
    [{ characteristic: 'radial-lift' }, [true, false]],
    [
      { characteristic: 'shaft-run-out', place: 'between-centres', lockOutReference: '' },
      [false, true],
    ],
    [{ characteristic: 'radial-lift', place: 'vee-blocks', lockOutReference: '' }, [true, true]],
  ])('warns of weight and bars where they apply: %j', async (more, [isLifted, isHeavy]) => {
    await begin(more as Record<string, string>)
    const page = await pageOf()
    expect(page).toContain('checked that nothing moves?')
    expect(page.includes('Lifting the shaft: rest the bar')).toBe(isLifted)
    expect(page.includes('a shaft is heavy')).toBe(isHeavy)
    expect(page.indexOf('class="caution"')).toBeLessThan(page.indexOf('name="value"'))
  })

  test('warns of both while it is still chosen what is surveyed and where', async () => {
    const page = await (await web.get(`${base}/new`, 'tess')).text()
    expect(page).toContain('Lifting the shaft: rest the bar')
    expect(page).toContain('a shaft is heavy')
  })

  test('separates the float from a face with two indicators', async () => {
    await begin({
      characteristic: 'chamber-face-squareness',
      secondInstrumentId: String(second.id),
      sweptDiameterMm: '140',
      positionCount: '4',
    })
    const tilt = [0.04, 0, -0.04, 0]
    const float = [0, 0.1, 0.03, -0.02]
    for (const [i, at] of tilt.entries()) {
      const both = [at + (float[i] ?? 0), -at + (float[i] ?? 0)]
      await read(i, (both[0] ?? 0).toFixed(3))
      await read(i, (both[1] ?? 0).toFixed(3), { indicator: 'second' })
    }
    await web.post(`${base}/1/end`, { formKey: 'e', outcome: 'recorded' }, 'tess')
    const result = surveys()[0]?.end?.result
    expect(result?.totalsUm[0]).toBeCloseTo(80, 9)
    expect(result?.planes[0]?.floatRangeUm).toBeCloseTo(120, 9)
    expect(result?.tilt?.tiltMrad).toBeCloseTo(0.5714, 4) // E15
    const evidence = readEvidence(shop.store, shop.workOrder.id)
    expect(instrumentsUsed(evidence).map((one) => one.number)).toEqual(['D-01', 'D-02'])
    const page = await (await web.get(`/work-orders/${shop.workOrder.number}`, 'tess')).text()
    expect(page).toContain('D-02')
    const window = { from: null, to: null }
    for (const { id } of [dial, second]) {
      const touched = usedRecords(shop.store, { instrumentId: id, window })
      expect(touched).toMatchObject([{ subjectKind: 'measured-value', subjectId: 1 }])
    }
    expect(verifyStore(shop.store)).toEqual([])
  })

  test('reads play between two ends as often as asked, and straightness at planes', async () => {
    await begin({ characteristic: 'end-play', turnsCount: '2' })
    for (const [turn, moved] of [
      ['0', '0.05'],
      ['1', '0.07'],
    ] as const) {
      await read(0, '0', { turnIndex: turn })
      await read(1, moved, { turnIndex: turn })
    }
    await web.post(`${base}/1/end`, { formKey: 'e', outcome: 'recorded' }, 'tess')
    const [value] = readEvidence(shop.store, shop.workOrder.id).measuredValues
    expect(value?.valueUm).toBeCloseTo(60, 9)
    await begin({
      formKey: 'p',
      characteristic: 'shaft-straightness',
      place: 'vee-blocks',
      lockOutReference: '',
      planesMm: '0 100 200',
      anglesDeg: '0 120 240',
      positionCount: '',
    })
    for (const [plane, e] of [0, 0.02, 0].entries()) {
      for (const [i, share] of [1, -0.5, -0.5].entries()) {
        const form = spot(i, (e * share).toFixed(3), { planeIndex: String(plane) })
        await web.post(`${base}/2/readings`, form, 'tess')
      }
    }
    await web.post(`${base}/2/end`, { formKey: 'e2', outcome: 'recorded' }, 'tess')
    const straight = surveys()[1]?.end?.result
    expect(straight?.straightness?.bow).toMatchObject({ positionMm: 100 })
    expect(straight?.straightness?.bow.departureUm).toBeCloseTo(20, 9)
    expect(straight?.cautions).toContain('vee-blocks')
  })

  test('is not recorded while positions are missing, and given up with a reason', async () => {
    await begin()
    await read(0, '0')
    const early = await web.post(`${base}/1/end`, { formKey: 'e', outcome: 'recorded' }, 'tess')
    expect(early.status).toBe(409)
    const end = { formKey: 'g', outcome: 'given-up' }
    const blank = await web.post(`${base}/1/end`, { ...end, reason: ' ' }, 'tess')
    expect(blank.status).toBe(422)
    expect(await blank.text()).toContain('Say why it is given up.')
    const given = await web.post(`${base}/1/end`, { ...end, reason: 'stand slipped' }, 'tess')
    expect(given.status).toBe(303)
    expect(surveys()[0]?.end).toMatchObject({ outcome: 'given-up', reason: 'stand slipped' })
    expect((await read(1, '0.1')).status).toBe(409)
    expect(await pageOf('ian')).toContain('stand slipped')
  })
})

describe('what is refused', () => {
  test.each([
    [{ characteristic: '' }, 'Choose what is surveyed.'],
    [{ condition: '' }, 'as it came in or as it leaves'],
    [{ instrumentId: '' }, 'Choose the indicator.'],
    [{ lockOutReference: ' ' }, 'number of the lock-out'],
    [{ positionCount: '2' }, 'from 3 to 72'],
    [{ turnsCount: '0' }, 'from 1 to 12'],
    [{ anglesDeg: '0 90 north' }, 'plain numbers, separated by spaces'],
    [{ anglesDeg: '0 90' }, 'at least 3'],
    [{ anglesDeg: '0 90 90' }, 'stands here twice'],
    [{ characteristic: 'seat-face-squareness' }, 'diameter that the tip runs on'],
    [{ characteristic: 'shaft-straightness' }, 'three planes or more'],
    [{ leverAngleDeg: '89' }, 'from 0 to 60'],
    [{ sagUm: 'much' }, 'plain number'],
    [{ colour: 'red' }, 'colour'],
  ])('%j, with a sentence and what was typed', async (more, sentence) => {
    const answer = await begin({ note: '<b>careful</b>', ...more } as Record<string, string>)
    const text = await answer.text()
    expect(answer.status, text.slice(0, 300)).toBe(422)
    expect(text).toContain(sentence)
    expect(text).toContain('&lt;b&gt;careful&lt;/b&gt;')
    expect(surveys()).toEqual([])
  })

  test('a reading that is none, and a spot that nobody asked for', async () => {
    await begin()
    for (const [form, sentence] of [
      [spot(0, 'north'), 'plain number'],
      [spot(0, ''), 'Enter the reading.'],
      [spot(0, '900'), 'from'],
      [spot(9, '0.1'), 'asks for no reading there'],
    ] as const) {
      const answer = await web.post(`${base}/1/readings`, form, 'tess')
      expect(answer.status).toBe(422)
      expect(await answer.text()).toContain(sentence)
    }
    expect(surveys()[0]?.readings).toEqual([])
  })

  test('everybody but technicians reads nothing; a stranger finds nothing', async () => {
    await begin()
    for (const who of ['ian', 'mo', 'cora']) {
      expect((await begin({}, who)).status, who).toBe(403)
      const answer = await web.post(`${base}/1/readings`, spot(0, '0'), who)
      expect(answer.status, who).toBe(403)
    }
    expect((await web.get(`${base}/1`, 'olga')).status).toBe(403)
    expect((await web.get(`${base}/9`, 'tess')).status).toBe(404)
    expect((await web.get(`${base}/x`, 'tess')).status).toBe(404)
    expect((await web.get('/work-orders/W-2026-9999/run-out-surveys/1', 'tess')).status).toBe(404)
    expect(await pageOf('ian')).not.toContain('Keep and go on')
  })

  test('a survey of an order that was handed over, and a reading of one that was withdrawn', async () => {
    workAndHandOver(shop)
    expect((await begin()).status).toBe(409)
    const { id: workOrderId, number } = anotherOrder(shop)
    base = `/work-orders/${number}/run-out-surveys`
    expect((await begin({ formKey: 'z' })).status).toBe(303)
    const withdrawal = { workOrderId, to: 'withdrawn', reason: 'scrapped' } as const
    moveWorkOrder(shop.store, withdrawal, actorOf(shop.cast.tess))
    expect((await read(0, '0')).status).toBe(409)
    expect((await begin({ formKey: 'y' })).status).toBe(409)
  })
})
