import { describe, expect, it } from 'vitest'
import { addCalibration } from '../../src/store/add-calibration.ts'
import { listDoubts } from '../../src/store/list-doubts.ts'
import { newCalibration } from '../support/build-instrument.ts'
import { buildShop } from '../support/build-shop.ts'
import { operator } from '../support/cast.ts'
import { formOf } from '../support/form-of.ts'
import { workAndRelease } from '../support/shop-steps.ts'
import { testApp } from '../support/test-app.ts'

/** A released order whose lamp was found beyond its tolerance today. */
function shopInDoubt() {
  const shop = buildShop()
  const { certificate } = workAndRelease(shop)
  const dates = { calibratedOn: '2026-11-25', dueOn: '2027-11-25' }
  const of = { instrumentId: shop.lamp.id, asFound: 'beyond', asLeft: 'within' } as const
  const { id } = addCalibration(shop.store, newCalibration({ ...of, ...dates }), operator)
  const path = `/instruments/${shop.lamp.id}/touched`
  const answer = {
    calibration: String(id),
    records: 'flatness-reading 1',
    answer: 'stands',
    reason: 'the wavelength was never in doubt',
    formKey: 'k',
  }
  return { shop, certificate, calibrationId: id, path, answer, ...testApp(shop.store) }
}

describe('the page of records in doubt', () => {
  it('shows each with its order, customer, result and certificate', async () => {
    const { get, path, calibrationId, shop, certificate } = shopInDoubt()
    const page = await get(`${path}?calibration=${calibrationId}`, 'ian')
    expect(page.status).toBe(200)
    const text = await page.text()
    for (const part of [
      shop.workOrder.number,
      shop.customer.name,
      certificate.number,
      'Flatness reading 1',
      'µm',
      'Not answered yet',
    ]) {
      expect(text).toContain(part)
    }
    // Without a calibration named it is the newest that found it beyond.
    expect((await get(path, 'tess')).status).toBe(200)
  })

  it('says until when use is in doubt where the calibration left the instrument beyond', async () => {
    const { get, shop } = shopInDoubt()
    const path = `/instruments/${shop.gauge.id}/touched`
    const add = (changes: Parameters<typeof newCalibration>[0]) =>
      addCalibration(
        shop.store,
        newCalibration({ instrumentId: shop.gauge.id, dueOn: '2027-11-25', ...changes }),
        operator,
      )
    const left = { asFound: 'beyond', asLeft: 'beyond', asLeftError: 0.7 } as const
    add({ calibratedOn: '2026-11-20', ...left })
    const open = await (await get(path, 'ian')).text()
    expect(open).toContain('From 2026-01-15, when it was last known to be good, up to now')
    expect(open).toContain('Error left')
    expect(open).toContain('Static test 1')
    add({ calibratedOn: '2026-11-24', asFound: 'within', asLeft: 'within' })
    const closed = await (await get(path, 'ian')).text()
    expect(closed).toContain('up to 2026-11-24, when a calibration left it good')
  })

  it('lets staff look and an inspector answer', async () => {
    const { get, post, path, answer } = shopInDoubt()
    expect(await (await get(path, 'tess')).text()).not.toContain('<textarea')
    expect(await (await get(path, 'ian')).text()).toContain('<textarea')
    expect((await post(path, answer, 'tess')).status).toBe(403)
    expect((await get(path, 'cora')).status).toBe(403)
  })

  it('is not there for an instrument that nothing was found of', async () => {
    const { get, path, shop } = shopInDoubt()
    expect((await get(`/instruments/${shop.flat.id}/touched`, 'ian')).status).toBe(404)
    expect((await get(`${path}?calibration=1`, 'ian')).status).toBe(404)
    expect((await get(`${path}?calibration=x`, 'ian')).status).toBe(404)
  })
})

describe('an answer about records in doubt', () => {
  it('is recorded once and shown with who gave it', async () => {
    const { get, post, path, answer, store, shop } = shopInDoubt()
    expect((await post(path, answer, 'ian')).status).toBe(303)
    expect((await post(path, answer, 'ian')).status).toBe(303)
    expect(store.raw.prepare('SELECT count(*) AS n FROM doubt_answer').get()).toEqual({ n: 1 })
    expect(listDoubts(store, shop.workOrder.id).map((one) => one.answer)).toEqual(['stands', null])
    const text = await (await get(path, 'mo')).text()
    expect(text).toContain('the wavelength was never in doubt')
    expect(text).toContain('Ian Ives')
  })

  it('takes several records at once', async () => {
    const { app, cookieOf, path, answer, store, shop } = shopInDoubt()
    const body = new URLSearchParams({ ...answer, records: 'flatness-reading 1' })
    body.append('records', 'flatness-reading 2')
    const sent = await app.request(`http://127.0.0.1:3000${path}`, {
      method: 'POST',
      body,
      headers: { cookie: cookieOf('ian'), origin: 'http://127.0.0.1:3000' },
    })
    expect(sent.status).toBe(303)
    const answers = listDoubts(store, shop.workOrder.id).map((one) => one.answer)
    expect(answers).toEqual(['stands', 'stands'])
  })

  it('comes back with what was typed where another inspector was first, to be seen', async () => {
    const { get, post, path, answer, store, shop } = shopInDoubt()
    const drawn = formOf(await (await get(path, 'ian')).text())
    const first = { ...answer, answer: 'repeat', reason: 'the lamp was changed', formKey: 'i' }
    expect((await post(path, first, 'ina')).status).toBe(303)
    const own = { ...answer, formKey: drawn.formKey!, seenAnswerId: drawn.seenAnswerId! }
    const refused = await post(path, own, 'ian')
    expect(refused.status).toBe(422)
    const text = await refused.text()
    expect(text).toContain('Another inspector answered about one of these meanwhile.')
    expect(text).toContain('the lamp was changed')
    expect(text).toContain(answer.reason)
    expect(listDoubts(store, shop.workOrder.id).map((one) => one.answer)).toEqual(['repeat', null])
    // The form as it stands now has seen the other answer.
    const { seenAnswerId } = formOf(text)
    expect((await post(path, { ...own, seenAnswerId: seenAnswerId! }, 'ian')).status).toBe(303)
    expect(listDoubts(store, shop.workOrder.id).map((one) => one.answer)).toEqual(['stands', null])
  })

  it('comes back with what was typed where something is missing', async () => {
    const { post, path, answer } = shopInDoubt()
    const sent = await post(path, { ...answer, answer: '', reason: '<b>' }, 'ian')
    expect(sent.status).toBe(422)
    const text = await sent.text()
    expect(text).toContain('Choose one answer.')
    expect(text).toContain('Enter at least 10 characters.')
    expect(text).toContain('&lt;b&gt;')
    expect(text).toMatch(/value="flatness-reading 1"[^>]*checked/)
    expect(text).toContain('value="k"')
    const none = await post(path, { ...answer, records: '' }, 'ian')
    expect(await none.text()).toContain('Tick the records that your answer is about.')
  })
})
