import { describe, expect, it } from 'vitest'
import { addCalibration } from '../../src/store/add-calibration.ts'
import { listFlatnessReadings } from '../../src/store/list-flatness-readings.ts'
import { listOpenUseExceptions } from '../../src/store/list-open-use-exceptions.ts'
import { listUseExceptions } from '../../src/store/list-use-exceptions.ts'
import { newCalibration } from '../support/build-instrument.ts'
import { buildShop } from '../support/build-shop.ts'
import { operator } from '../support/cast.ts'
import { testApp } from '../support/test-app.ts'

/** The lamp is over its date: it was due on 15 January 2027, and today is later. */
function setUp() {
  const shop = buildShop()
  const app = testApp(shop.store)
  app.setNow('2027-01-16T10:00:00.000Z')
  const order = `/work-orders/${shop.workOrder.number}`
  const lampId = String(shop.lamp.id)
  const wanted = { instrumentId: lampId, fault: 'overdue', reason: 'L-02 is at the laboratory' }
  const ask = (more: Record<string, string> = {}, as = 'tess') =>
    app.post(`${order}/exceptions`, { ...wanted, formKey: 'e', ...more }, as)
  const allow = (more: Record<string, string> = {}, as = 'ian', id = 1) => {
    const said = { answer: 'allowed', validUntil: '2027-01-20', reason: 'its line is what it was' }
    const formKey = `${as}-exception-${id}`
    return app.post(`/exceptions/${id}/answer`, { ...said, formKey, ...more }, as)
  }
  return { shop, ...app, order, lampId, ask, allow }
}

describe('asking for an exception', () => {
  it('begins at the instrument that was refused, with what stands against it', async () => {
    const { get, order, lampId } = setUp()
    const page = await (await get(`${order}/exceptions/new?instrument=${lampId}`, 'tess')).text()
    expect(page).toMatch(new RegExp(`<option value="${lampId}" selected`))
    expect(page).toMatch(/value="overdue" checked/)
    expect(page).toContain('An exception does not make a reading right')
    expect(page).toMatch(/no instrument is taken beyond what it is built for.*site rules/)
    expect((await get(`${order}/exceptions/new?instrument=99`, 'tess')).status).toBe(200)
    expect((await get('/work-orders/W-1999-0001/exceptions/new', 'tess')).status).toBe(404)
  })

  it('is recorded once and stands with the order and before the inspector', async () => {
    const { shop, get, order, ask } = setUp()
    expect((await ask()).status).toBe(303)
    expect((await ask()).headers.get('location')).toContain(`${order}?recorded=exception`)
    expect(listUseExceptions(shop.store, shop.workOrder.id)).toHaveLength(1)
    const traveller = await (await get(order, 'tess')).text()
    expect(traveller).toContain('Exceptions for instruments')
    expect(traveller).toContain('Not answered yet')
    const inspection = await (await get('/inspection', 'ian')).text()
    expect(inspection).toContain('L-02 is at the laboratory')
    expect(inspection).toContain('action="/exceptions/1/answer"')
    // A manager sees what waits, and has no form.
    const managers = await (await get('/inspection', 'mo')).text()
    expect(managers).toContain('L-02 is at the laboratory')
    expect(managers).not.toContain('/exceptions/1/answer')
  })

  it('comes back with what was typed and what is wrong with it', async () => {
    const { shop, ask } = setUp()
    const answer = await ask({ fault: 'withdrawn', reason: '<i>' })
    expect(answer.status).toBe(422)
    const text = await answer.text()
    expect(text).toContain('&lt;i&gt;')
    expect(text).not.toContain('<i>')
    expect(text).toContain('That is not so for L-01')
    expect(text).toContain('value="e"')
    expect(listOpenUseExceptions(shop.store)).toEqual([])
    expect(await (await ask({ instrumentId: '' })).text()).toContain('Choose the instrument.')
  })

  it('is refused a second time while the first waits', async () => {
    const { ask } = setUp()
    await ask()
    const again = await ask({ formKey: 'other' })
    expect(again.status).toBe(409)
    expect(await again.text()).toContain('asked for already')
  })
})

describe('answering it', () => {
  it('lets the instrument be used for that order, and the record says by whom', async () => {
    const { shop, get, post, order, ask, allow } = setUp()
    const face = shop.seal.components.find((one) => one.kind === 'rotating-face')
    const reading = {
      faceId: String(face?.id),
      condition: 'as-left',
      pattern: 'convex',
      'readings[0].directionDeg': '0',
      'readings[0].bands': '1',
      lampInstrumentId: String(shop.lamp.id),
      opticalFlatInstrumentId: String(shop.flat.id),
    }
    const record = (formKey: string) => post(`${order}/flatness`, { ...reading, formKey }, 'tess')
    const refused = await record('r1')
    expect(refused.status).toBe(422)
    const text = await refused.text()
    expect(text).toContain('L-01 was due for calibration on 2027-01-15. Choose another, or ask')
    expect(text).toContain(`href="${order}/exceptions/new?instrument=${shop.lamp.id}"`)
    for (const { id, instrumentId } of [shop.flat, shop.lamp].map(({ id }) => ({
      id,
      instrumentId: String(id),
    }))) {
      await ask({ instrumentId, formKey: `ask-${id}` })
    }
    expect((await allow({}, 'ian', 1)).status).toBe(303)
    // Of the two that are over their date only one is allowed so far.
    expect(await (await record('r2')).text()).not.toContain('F-01 was due for calibration')
    expect((await allow({}, 'ina', 2)).status).toBe(303)
    expect((await record('r3')).status).toBe(303)
    const [kept] = listFlatnessReadings(shop.store, shop.workOrder.id)
    expect(kept?.lamp).toMatchObject({
      status: 'overdue',
      exception: { allowedByName: 'Ina Irwin', reason: 'its line is what it was' },
    })
    const page = await (await get(order, 'ian')).text()
    expect(page).toContain('until 2027-01-20')
    expect(page).toContain('its line is what it was')
  })

  it('is needed for an instrument that its calibration left beyond its tolerance', async () => {
    const { shop, get, post, order } = setUp()
    const { store, workOrder, gauge } = shop
    const states = { asFound: 'beyond', asLeft: 'beyond' } as const
    const days = { calibratedOn: '2027-01-10', dueOn: '2028-01-10' }
    const instrumentId = gauge.id
    addCalibration(store, newCalibration({ instrumentId, ...days, ...states }), operator)
    const list = await (await get('/instruments?state=left-beyond', 'tess')).text()
    expect(list).toContain('Left beyond its tolerance by its calibration')
    const form = await (await get(`${order}/static-tests/new`, 'tess')).text()
    expect(form).toContain('· Left beyond its tolerance by its calibration')
    const typed = { gaugeInstrumentId: String(gauge.id), formKey: 's1' }
    const refused = await (await post(`${order}/static-tests`, typed, 'tess')).text()
    expect(refused).toContain('The last calibration of G-01 left it beyond its tolerance.')
    expect(refused).toContain(`href="${order}/exceptions/new?instrument=${gauge.id}"`)
    const asking = await get(`${order}/exceptions/new?instrument=${gauge.id}`, 'tess')
    expect(await asking.text()).toMatch(/value="left-beyond" checked/)
    const wanted = { instrumentId: String(gauge.id), fault: 'left-beyond', formKey: 'e1' }
    const reason = 'no other gauge goes that far'
    expect((await post(`${order}/exceptions`, { ...wanted, reason }, 'tess')).status).toBe(303)
    expect(listUseExceptions(store, workOrder.id)[0]?.fault).toBe('left-beyond')
  })

  it('comes back beside the request, with what was typed', async () => {
    const { shop, ask, allow } = setUp()
    await ask()
    const answer = await allow({ validUntil: '2027-02-16', reason: '<u>' })
    expect(answer.status).toBe(422)
    const text = await answer.text()
    expect(text).toContain('href="#validUntil-1"')
    expect(text).toContain('30 days from now at the latest')
    expect(text).toContain('&lt;u&gt;')
    expect(text).toContain('value="ian-exception-1"')
    expect(text).toMatch(/value="allowed" checked/)
    expect(await (await allow({ answer: '' })).text()).toContain('Choose: allow or decline.')
    expect(listOpenUseExceptions(shop.store)).toHaveLength(1)
  })

  it('is given once, and declined leaves the instrument refused', async () => {
    const { shop, get, order, ask, allow } = setUp()
    await ask()
    expect((await allow({ answer: 'declined', validUntil: '' })).status).toBe(303)
    expect((await allow({ answer: 'declined', validUntil: '' })).status).toBe(303)
    expect((await allow({}, 'ina')).status).toBe(409)
    expect(listUseExceptions(shop.store, shop.workOrder.id)[0]?.answer?.answer).toBe('declined')
    expect(await (await get(order, 'tess')).text()).toContain('Declined')
    expect((await allow({ formKey: 'x' }, 'ian', 99)).status).toBe(404)
  })
})
