import { beforeEach, describe, expect, it } from 'vitest'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { addStaticTest } from '../../src/store/add-static-test.ts'
import { listFlatnessReadings } from '../../src/store/list-flatness-readings.ts'
import { listStageChanges } from '../../src/store/list-stage-changes.ts'
import { refuse } from '../../src/store/refuse.ts'
import { requireWorkOrder } from '../../src/store/require-work-order.ts'
import { stateDecontamination } from '../../src/store/state-decontamination.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { actorOf } from '../support/cast.ts'
import {
  anotherOrder,
  doTheWork,
  freshReading,
  freshTest,
  workAndHandOver,
  workAndRelease,
} from '../support/shop-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
beforeEach(() => {
  shop = buildShop()
  app = testApp(shop.store)
})

const order = '/work-orders/W-2026-0001'
const read = async (path: string, as = 'tess') => (await app.get(path, as)).text()
const stage = () => requireWorkOrder(shop.store, 'W-2026-0001', shop.cast.mo).stage
const stepCount = () => listStageChanges(shop.store, shop.workOrder.id).length

describe('the list of work orders', () => {
  it('shows the newest first and filters by stage, customer and text', async () => {
    anotherOrder(shop, { customerOrder: 'PO 0815' })
    doTheWork(shop)
    const all = await read('/work-orders')
    expect(all.indexOf('W-2026-0002')).toBeLessThan(all.indexOf('W-2026-0001'))
    expect(await read('/work-orders?stage=testing')).not.toContain('W-2026-0002')
    expect(await read('/work-orders?q=0815')).not.toContain('W-2026-0001')
    const other = shop.cast.olga.customerId
    expect(await read(`/work-orders?customer=${other}`)).toContain('No work order matches this')
  })

  it('turns pages by cursor and keeps the filter', async () => {
    for (let count = 0; count < 51; count++) anotherOrder(shop)
    const first = await read('/work-orders?q=S-1')
    const next = first.match(/href="(\/work-orders\?[^"]+)" rel="next"/)?.[1]?.replace('&amp;', '&')
    expect(next).toContain('q=S-1&cursor=')
    const second = await read(next ?? '')
    expect(second).toContain('W-2026-0002')
    expect(second).toContain('2 orders shown')
    expect(second).toContain('rel="prev"')
  })

  it('takes a filter that names nothing for none, and escapes what was typed', async () => {
    expect(await read('/work-orders?stage=nowhere&customer=x')).toContain('W-2026-0001')
    expect(await read('/work-orders?q=%22%3E%3Cb%3E')).toContain('value="&quot;&gt;&lt;b&gt;"')
  })
})

describe('the page of an order', () => {
  it('shows the way, what is missing, and the next acts', async () => {
    const html = await read(order)
    expect(html).toContain('A reading of the rotating face as left.')
    expect(html).toContain('A static test.')
    expect(html).toMatch(/href="\/work-orders\/W-2026-0001\/flatness\/new\?face=\d+"/)
    expect(html).toContain('href="/work-orders/W-2026-0001/static-tests/new"')
    expect(html).toContain('aria-current="step"')
    expect(html).toContain('<title id="section-title">')
    expect(html).toContain('Caution: opening the seal')
    expect(html).toContain('href="/account"')
  })

  it('shows readings and tests beside limits and verdicts', async () => {
    doTheWork(shop)
    const html = await read(order)
    // Convex, 2 helium bands: 2 × 587.5618 / 2 nm = 0.588 µm, within 0.881 µm. U is 2 x 0.0513 µm:
    // a quarter band and a flat of 0.05 µm, both rectangular.
    expect(html).toContain('0.59 ± 0.10 µm')
    expect(html).toContain('≤ 0.881 µm (34.7 µin)')
    expect(html).toContain('Pass')
    expect(html).toMatch(/href="\/work-orders\/W-2026-0001\/results\/flatness-reading\/\d+"/)
    expect(html).toMatch(/href="\/work-orders\/W-2026-0001\/results\/static-test-leak\/\d+"/)
    expect(html).toContain('Everything required is recorded.')
  })

  it('keeps a corrected reading, struck, with what replaced it and why', async () => {
    doTheWork(shop)
    const [first] = listFlatnessReadings(shop.store, shop.workOrder.id)
    const correction = { replacesId: first!.id, reason: 'wrong <i>lamp</i> chosen' }
    const fresh = freshReading(shop, 'rotating-face', correction)
    addFlatnessReading(shop.store, fresh, actorOf(shop.cast.tom))
    const html = await read(order)
    expect(html).toContain('<s>0.59 ± 0.10 µm</s>')
    expect(html).toMatch(/Replaced by Tom Tiller on 2026-11-25 09:00 UTC: wrong &lt;i&gt;lamp/)
    expect(html).not.toContain(`flatness/new?replaces=${first!.id}"`)
  })

  it('keeps a corrected test the same way', async () => {
    doTheWork(shop)
    const fresh = freshTest(shop, { replacesId: 1, reason: 'gauge misread' })
    addStaticTest(shop.store, fresh, actorOf(shop.cast.tom))
    expect(await read(order)).toContain('2026-11-25 09:00 UTC: gauge misread')
  })

  it('offers the acts of the technician to nobody else', async () => {
    for (const name of ['ian', 'mo']) {
      const html = await read(order, name)
      expect(html).not.toContain('/flatness/new')
      expect(html).not.toContain('/hand-over"')
      expect(html).toContain('/work-orders/W-2026-0001/inspection')
    }
  })

  it('leads to the certificate once the order is released', async () => {
    const { certificate } = workAndRelease(shop)
    const html = await read(order)
    expect(html).toContain(`href="/certificates/${certificate.number}"`)
    expect(html).toContain('The seal is dispatched')
    expect(html).not.toContain('/flatness/new')
  })

  it.each(['W-2026-9999', 'W-2026-1', 'x', '%00'])('knows no order "%s"', async (number) => {
    expect((await app.get(`/work-orders/${number}`, 'tess')).status).toBe(404)
  })
})

describe('moving an order', () => {
  const move = (form: Record<string, string>, as = 'tess') =>
    app.post(`${order}/stage`, { formKey: 'k1', ...form }, as)

  it('records a step once, also when the form is sent twice', async () => {
    expect((await move({ to: 'stripped' })).headers.get('location')).toBe(`${order}?recorded=stage`)
    expect((await move({ to: 'stripped' })).status).toBe(303)
    expect(stage()).toBe('stripped')
    expect(stepCount()).toBe(2)
  })

  it('refuses to strip a seal in quarantine', async () => {
    const quarantine = { workOrderId: shop.workOrder.id, lastFluid: '' }
    stateDecontamination(
      shop.store,
      { ...quarantine, decontamination: 'not-stated' },
      actorOf(shop.cast.tess),
    )
    expect(await read(order)).toContain('residues in a returned seal')
    const answer = await move({ to: 'stripped' })
    expect(answer.status).toBe(409)
    expect(await answer.text()).toContain('a seal in quarantine is not stripped, lapped or tested')
  })

  it('withdraws with a reason, and asks for one', async () => {
    const asked = await move({ to: 'withdrawn', reason: '  ' })
    expect(asked.status).toBe(422)
    const html = await asked.text()
    expect(html).toContain('href="#reason">Withdraw this order: Say why the order is withdrawn.')
    expect(html).toContain('value="k1-withdrawn"')
    expect((await move({ to: 'withdrawn', reason: 'scrapped by the customer' })).status).toBe(303)
    expect(stage()).toBe('withdrawn')
    expect(await read(order)).toContain('scrapped by the customer')
  })

  it('gives a reason that is too long back, escaped', async () => {
    const answer = await move({ to: 'withdrawn', reason: `<b>${'x'.repeat(400)}` })
    expect(answer.status).toBe(422)
    const html = await answer.text()
    expect(html).toContain('Enter at most 400 characters.')
    expect(html).toContain('&lt;b&gt;xxx')
  })

  it('lets no inspector withdraw or move the work', async () => {
    expect((await move({ to: 'withdrawn', reason: 'because' }, 'ian')).status).toBe(403)
    expect((await move({ to: 'lapping' }, 'ian')).status).toBe(403)
    expect(stepCount()).toBe(1)
  })

  it('dispatches after release and not before', async () => {
    expect((await move({ to: 'dispatched' })).status).toBe(409)
    workAndRelease(shop)
    expect((await move({ to: 'dispatched', formKey: 'k2' }, 'ian')).status).toBe(303)
    expect(stage()).toBe('dispatched')
    expect((await move({ to: 'withdrawn', reason: 'late', formKey: 'k3' })).status).toBe(409)
  })

  it.each(['released', 'handed-over', 'refused', '', 'x'])('knows no move to "%s"', async (to) => {
    expect((await move({ to })).status).toBe(422)
    expect(stepCount()).toBe(1)
  })
})

describe('stating decontamination', () => {
  const state = (form: Record<string, string>) =>
    app.post(`${order}/decontamination`, { formKey: 'k1', ...form }, 'tess')

  it('records what is stated', async () => {
    const answer = await state({ decontamination: 'not-needed', lastFluid: 'water' })
    expect(answer.headers.get('location')).toBe(`${order}?recorded=decontamination`)
    const stated = requireWorkOrder(shop.store, 'W-2026-0001', shop.cast.mo)
    expect(stated).toMatchObject({ decontamination: 'not-needed', lastFluid: 'water' })
  })

  it('asks again where nothing was chosen, keeping what was typed', async () => {
    const answer = await state({ lastFluid: '<lye>' })
    expect(answer.status).toBe(422)
    expect(await answer.text()).toContain('value="&lt;lye&gt;"')
    expect((await state({ decontamination: 'perhaps' })).status).toBe(422)
    const long = { decontamination: 'not-needed', lastFluid: 'x'.repeat(121) }
    expect((await state(long)).status).toBe(422)
  })

  it('is refused once the order is released', async () => {
    workAndRelease(shop)
    expect((await state({ decontamination: 'not-needed' })).status).toBe(409)
  })
})

describe('handing over', () => {
  const handOver = (form: Record<string, string> = {}, as = 'tess') =>
    app.post(`${order}/hand-over`, { formKey: 'k1', ...form }, as)

  it('is refused with the list of what is missing, on the same page', async () => {
    const answer = await handOver({ note: 'all <well>' })
    expect(answer.status).toBe(422)
    const html = await answer.text()
    expect(html).toContain('Not handed over. Still missing:')
    expect(html).toMatch(/href="#readings">A reading of the rotating face as left\./)
    expect(html).toMatch(/href="#tests">A static test\./)
    expect(html).toContain('all &lt;well&gt;')
    expect(stage()).toBe('received')
  })

  it('hands over once, also when the form is sent twice', async () => {
    doTheWork(shop)
    for (const _ of [1, 2]) {
      const answer = await handOver({ note: 'spring is new' })
      expect(answer.headers.get('location')).toBe(`${order}?recorded=hand-over`)
    }
    expect(stage()).toBe('handed-over')
    const html = await read(`${order}?recorded=hand-over`)
    expect(html).toContain('Handed over. The inspector has it now.')
    expect(html).toContain('spring is new')
  })

  it('refuses a second one, and one after release', async () => {
    workAndRelease(shop)
    expect((await handOver()).status).toBe(409)
  })

  it('gives a note that is too long back', async () => {
    doTheWork(shop)
    const answer = await handOver({ note: 'x'.repeat(5000) })
    expect(answer.status).toBe(422)
    expect(await answer.text()).toContain('characters.')
    expect(stage()).toBe('testing')
  })

  it('shows the refusal of the inspector and takes the order again after rework', async () => {
    const handed = workAndHandOver(shop)
    const { ian } = shop.cast
    refuse(shop.store, { handOverId: handed.id, reason: 'seat is cracked', by: ian }, actorOf(ian))
    expect(await read(order)).toMatch(/Refused by Ian Ives on .*seat is cracked/s)
    expect((await handOver({ formKey: 'k9' })).status).toBe(303)
    expect(stage()).toBe('handed-over')
  })

  it('is the technician’s alone', async () => {
    doTheWork(shop)
    for (const name of ['ian', 'mo', 'cora']) expect((await handOver({}, name)).status).toBe(403)
  })
})
