import { beforeEach, describe, expect, it } from 'vitest'
import type { WorkOrder } from '../../src/domain/work-order.ts'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { addMeasuredValue } from '../../src/store/add-measured-value.ts'
import { addStaticTest } from '../../src/store/add-static-test.ts'
import { readEvidence } from '../../src/store/read-evidence.ts'
import { stateDecontamination } from '../../src/store/state-decontamination.ts'
import { addDial } from '../support/add-survey.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { actorOf } from '../support/cast.ts'
import { anotherOrder, freshReading, freshTest, freshValue } from '../support/shop-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
/** Nobody has said yet that its seal is clean. */
let closed: WorkOrder
let at = ''
beforeEach(() => {
  shop = buildShop()
  app = testApp(shop.store)
  closed = anotherOrder(shop, { decontamination: 'not-stated' })
  at = `/work-orders/${closed.number}`
})

const faceId = () => shop.seal.components.find((one) => one.kind === 'rotating-face')!.id
const page = async (as = 'tess', path = at) => (await app.get(path, as)).text()
const evidence = () => readEvidence(shop.store, closed.id)
const state = (decontamination: 'not-stated' | 'not-needed', workOrderId = closed.id) =>
  stateDecontamination(
    shop.store,
    { workOrderId, decontamination, lastFluid: '' },
    actorOf(shop.cast.tess),
  )

/** Everything that is done upon an open seal: its form, and where a plain form is sent. */
const openedForms = [
  ['flatness/new', 'flatness'],
  ['flatness/new?pattern=unreadable', 'flatness'],
  ['face-photos/new', null],
  ['static-tests/new', 'static-tests'],
  ['lap-cycles/new', 'lap-cycles'],
  ['measured-values/new?characteristic=roughness', 'measured-values'],
  ['measured-values/new?characteristic=face-height', 'measured-values'],
  ['wear-tracks/new', null],
  ['spring-checks/new', null],
  ['assembly/new', null],
] as const

describe('an order in quarantine', () => {
  it.each(['stripped', 'lapping', 'testing'])('is not moved to %s by hand', async (to) => {
    for (const as of ['tess', 'mo']) {
      const answer = await app.post(`${at}/stage`, { formKey: `${as} ${to}`, to }, as)
      expect(answer.status, as).toBe(409)
      expect(await answer.text()).toContain('is not stripped, lapped or tested')
    }
    expect(evidence().workOrder.stage).toBe('received')
  })

  it('offers no act upon an open seal, and says why', async () => {
    const html = await page()
    for (const [form] of openedForms) expect(html, form).not.toContain(`${at}/${form}`)
    expect(html).not.toContain(`${at}/flatness`)
    for (const to of ['stripped', 'lapping', 'testing']) {
      expect(html, to).not.toContain(`name="to" value="${to}"`)
    }
    expect(html).toContain('In quarantine: the seal is not opened')
    expect(html).toContain('href="#decontamination"')
    expect(html).toContain('id="decontamination"')
    // What is read at the machine needs no open seal.
    expect(html).toContain(`href="${at}/run-out-surveys/new"`)
    expect(html).toContain(`href="${at}/measured-values/new"`)
  })

  it('offers them all once somebody has called it clean', async () => {
    state('not-needed')
    const html = await page()
    expect(html).not.toContain('In quarantine')
    for (const form of ['flatness/new?face=', 'static-tests/new', 'lap-cycles/new', 'strip']) {
      expect(html, form).toContain(`href="${at}/${form}`)
    }
    expect(html).toContain('name="to" value="lapping"')
  })

  it('offers no correction of what was read on the open seal', async () => {
    const of = { workOrderId: closed.id }
    const by = actorOf(shop.cast.tess)
    addFlatnessReading(shop.store, freshReading(shop, 'rotating-face', of), by)
    addStaticTest(shop.store, freshTest(shop, of), by)
    addMeasuredValue(shop.store, freshValue(shop, addDial(shop), of), by)
    const html = await page()
    expect(html).not.toContain('flatness/new?replaces')
    expect(html).not.toContain('static-tests/new?replaces')
    expect(html).toContain('measured-values/new?replaces=1')
  })

  it.each(openedForms)('%s: gives way to the caution and its link', async (form, target) => {
    const opened = await app.get(`${at}/${form}`, 'tess')
    expect(opened.status).toBe(409)
    const html = await opened.text()
    expect(html).toContain('a seal in quarantine')
    expect(html).toContain(`href="${at}#decontamination"`)
    expect(html).not.toContain('name="formKey"')
    if (target === null) return
    // As typed into a form that was open before the statement was taken back.
    const characteristic = /characteristic=(.+)/.exec(form)?.[1] ?? ''
    const sent = await app.post(`${at}/${target}`, { formKey: form, characteristic }, 'tess')
    expect(sent.status).toBe(409)
    expect(await sent.text()).toContain('a seal in quarantine')
  })

  it('keeps no photograph of a face', async () => {
    const form = new FormData()
    form.append('formKey', 'photo')
    form.append('faceId', String(faceId()))
    form.append('file', new File(['a photograph'], 'IMG_1.jpg'))
    const answer = await app.upload(`${at}/face-photos`, form, 'tess')
    expect(answer.status).toBe(409)
    expect(await answer.text()).toContain('a seal in quarantine')
  })

  it('takes a survey and a run-out at the machine, and stays where it stands', async () => {
    const dial = addDial(shop)
    const runOut = {
      formKey: 'run-out',
      characteristic: 'shaft-run-out',
      condition: 'as-found',
      'readings[0].value': '0.04',
      unit: 'mm',
      instrumentId: String(dial.id),
    }
    expect((await app.get(`${at}/measured-values/new`, 'tess')).status).toBe(200)
    expect((await app.get(`${at}/run-out-surveys/new`, 'tess')).status).toBe(200)
    expect((await app.post(`${at}/measured-values`, runOut, 'tess')).status).toBe(303)
    expect(evidence().measuredValues).toHaveLength(1)
    expect(evidence().workOrder.stage).toBe('received')
  })
})

describe('what a program sends of an order in quarantine', () => {
  const send = (place: string, body: unknown) => app.postJson(`/api/v1${at}/${place}`, body, 'tess')

  it('is kept where rigs report it: light bands and static tests', async () => {
    const bands = await send('flatness-readings', {
      faceId: faceId(),
      condition: 'as-found',
      lampInstrumentId: shop.lamp.id,
      opticalFlatInstrumentId: shop.flat.id,
      pattern: 'convex',
      readings: [{ directionDeg: 0, bands: 2 }],
    })
    expect(bands.status, await bands.text()).toBe(201)
    const test = await send('static-tests', {
      volumeL: 2,
      start: { timeS: 0, pressureKPaAbs: 273.3, temperatureC: 20 },
      end: { timeS: 300, pressureKPaAbs: 273.0, temperatureC: 20 },
      gaugeInstrumentId: shop.gauge.id,
    })
    expect(test.status, await test.text()).toBe(201)
    const { missing } = (await (await app.get(`/api/v1${at}`, 'mo')).json()) as {
      missing: { kind: string }[]
    }
    expect(missing[0]).toEqual({ kind: 'decontamination' })
  })

  it('is refused where it says that the seal was open: lap cycles, finishes, heights', async () => {
    const lap = await send('lap-cycles', { componentId: faceId(), plate: 'Plate 2' })
    expect(lap.status).toBe(409)
    expect(((await lap.json()) as { detail: string }).detail).toContain('in quarantine')
    expect(evidence().lapCycles).toEqual([])
    const characteristic = 'face-height' as const
    const of = { workOrderId: closed.id, componentId: faceId(), characteristic }
    const height = freshValue(shop, addDial(shop), of)
    expect(() => addMeasuredValue(shop.store, height, actorOf(shop.cast.tess))).toThrow(
      'conflict: in-quarantine',
    )
  })
})
