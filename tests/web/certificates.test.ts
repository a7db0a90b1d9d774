import { createHash } from 'node:crypto'
import { describe, expect, test, vi } from 'vitest'
import { addLimitSet } from '../../src/store/add-limit-set.ts'
import { addMeasuredValue } from '../../src/store/add-measured-value.ts'
import { buildLimit } from '../support/build-limit-set.ts'
import { approved, buildShop, newLimitSet, type Shop } from '../support/build-shop.ts'
import { actorOf, operator } from '../support/cast.ts'
import { decisionForm } from '../support/decision-form.ts'
import { addMeasuringInstruments } from '../support/measuring-instruments.ts'
import { anotherOrder, freshValue, workAndHandOver, workAndRelease } from '../support/shop-steps.ts'
import { testApp } from '../support/test-app.ts'

// Each release draws its document, 0.2 s alone and ten times that on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

function issued() {
  const shop = buildShop()
  const { certificate } = workAndRelease(shop)
  return { shop, certificate, number: certificate.number, app: testApp(shop.store) }
}

/** Released through the page, so that the document is the real one. */
async function issuedByHand() {
  const shop = buildShop()
  workAndHandOver(shop)
  const app = testApp(shop.store)
  const { number } = shop.workOrder
  const answer = await app.post(
    `/work-orders/${number}/decision`,
    await decisionForm(app, number, 'ian'),
    'ian',
  )
  return { app, page: answer.headers.get('location') ?? '' }
}

describe('the list of certificates', () => {
  test.each(['tess', 'ian', 'mo', 'cora'])('shows %s the certificate', async (who) => {
    const { app, number } = issued()
    const answer = await app.get('/certificates', who)
    expect(answer.status).toBe(200)
    expect(await answer.text()).toContain(number)
  })

  test('shows another customer nothing', async () => {
    const { app, number } = issued()
    const text = await (await app.get('/certificates', 'olga')).text()
    expect(text).not.toContain(number)
    expect(text).toContain('No certificate yet')
  })
})

describe('the page of a certificate', () => {
  test('says what it certifies and leads to document and check', async () => {
    const { app, number, certificate } = issued()
    const text = await (await app.get(`/certificates/${number}`, 'cora')).text()
    expect(text).toContain('S-1')
    expect(text).toContain('Ian Ives, Inspection')
    expect(text).toContain(certificate.sha256)
    expect(text).toContain(`/certificates/${number}/document.pdf`)
    expect(text).toContain(`/verify/${number}`)
  })

  test('leads a customer to no page that is the staff’s', async () => {
    const { app, number } = issued()
    const text = await (await app.get(`/certificates/${number}`, 'cora')).text()
    expect(text).not.toContain('href="/work-orders/')
  })

  test.each(['', '/document.pdf'])('is not found for another customer (%s)', async (end) => {
    const { app, number } = issued()
    const stranger = await app.get(`/certificates/${number}${end}`, 'olga')
    const nobody = await app.get(`/certificates/C-2026-0099-AAAAAA${end}`, 'olga')
    expect(stranger.status).toBe(404)
    expect(nobody.status).toBe(404)
    const plain = async (answer: Response) => (await answer.text()).replaceAll(/nonce="[^"]*"/g, '')
    const hide = (text: string, it: string) => text.replaceAll(it, 'IT')
    expect(hide(await plain(stranger), number)).toBe(
      hide(await plain(nobody), 'C-2026-0099-AAAAAA'),
    )
  })
})

test('the page of a certificate says why a result was not judged', async () => {
  const shop = buildShop()
  const limits = newLimitSet().limits.map((one) => {
    return one.characteristic === 'static-drop' ? { ...one, startAtLeastKPaGauge: 200 } : one
  })
  const draft = addLimitSet(shop.store, newLimitSet({ version: 2, limits }), operator)
  const { id } = approved(shop.store, draft, shop.cast.ian)
  const { number } = workAndRelease(shop, anotherOrder(shop, { limitSetId: id })).certificate
  const text = await (await testApp(shop.store).get(`/certificates/${number}`, 'cora')).text()
  expect(text).toContain('Not judged in full')
  expect(text).toContain('The hold started below the pressure the limit is written for')
})

/** An order of a set that limits run-out to 0.125 mm: read before and after the work, released. */
function releaseWithRunOut(shop: Shop) {
  const {
    id: _,
    limitSetId: __,
    ...runOut
  } = buildLimit({
    characteristic: 'shaft-run-out',
    upper: 125,
  })
  const limits = [...newLimitSet().limits, runOut]
  const draft = addLimitSet(shop.store, newLimitSet({ version: 2, limits }), operator)
  const order = anotherOrder(shop, { limitSetId: approved(shop.store, draft, shop.cast.ian).id })
  const { dial } = addMeasuringInstruments(shop)
  const of = { workOrderId: order.id }
  const worn = { ...of, condition: 'as-found', readings: [{ um: 150, typed: '0.15' }] } as const
  for (const one of [worn, of]) {
    addMeasuredValue(shop.store, freshValue(shop, dial, one), actorOf(shop.cast.tess))
  }
  return workAndRelease(shop, order)
}

test('the page of a certificate tells what was read with an instrument, before and after', async () => {
  const shop = buildShop()
  const { number } = releaseWithRunOut(shop).certificate
  for (const path of [`/certificates/${number}`, `/seals/${shop.seal.id}`]) {
    const text = await (await testApp(shop.store).get(path, 'cora')).text()
    expect(text).toContain('Shaft run-out')
    expect(text).toContain('As found: 0.150 ± 0.023 mm (U, k = 2)')
    expect(text).toContain('As left: 0.040 ± 0.023 mm (U, k = 2)')
    expect(text).toContain('limit ≤ 0.125 mm')
  }
})

test('what was only found is told as found, and is no gap', async () => {
  const shop = buildShop()
  const { dial } = addMeasuringInstruments(shop)
  const found = freshValue(shop, dial, { condition: 'as-found' })
  addMeasuredValue(shop.store, found, actorOf(shop.cast.tess))
  const { number } = workAndRelease(shop).certificate
  const text = await (await testApp(shop.store).get(`/certificates/${number}`, 'cora')).text()
  const [, line = ''] = text.split('Shaft run-out')
  expect(line).toContain('As found: not judged')
  expect(line).toContain('As left: not measured')
  expect(line).toContain('The limit set has no limit for this.')
  expect(line).not.toContain('verdict-missing')
})

describe('the document', () => {
  test('comes as PDF, with its name and its digest as tag', async () => {
    const { app, number, certificate } = issued()
    const answer = await app.get(`/certificates/${number}/document.pdf`, 'cora')
    expect(answer.status).toBe(200)
    expect(answer.headers.get('content-type')).toBe('application/pdf')
    expect(answer.headers.get('content-disposition')).toBe(`inline; filename="${number}.pdf"`)
    expect(answer.headers.get('etag')).toBe(`"${certificate.sha256}"`)
    expect(answer.headers.get('cache-control')).toContain('private')
  })

  test('is the same byte for byte each time, and has the digest that the check page shows', async () => {
    const { app, page } = await issuedByHand()
    const bytes = async () =>
      Buffer.from(await (await app.get(`${page}/document.pdf`, 'cora')).arrayBuffer())
    const first = await bytes()
    app.setNow('2027-05-05T10:00:00.000Z')
    const second = await bytes()
    expect(first.subarray(0, 5).toString()).toBe('%PDF-')
    expect(first.equals(second)).toBe(true)
    const sha256 = createHash('sha256').update(first).digest('hex')
    const check = await app.get(page.replace('/certificates/', '/verify/'))
    expect(await check.text()).toContain(sha256)
  })

  test('is not sent again to who has it', async () => {
    const { app, number, certificate } = issued()
    const headers = { 'if-none-match': `W/"x", "${certificate.sha256}"` }
    const answer = await app.get(`/certificates/${number}/document.pdf`, 'cora', headers)
    expect(answer.status).toBe(304)
    expect(await answer.text()).toBe('')
  })
})

describe('the check page', () => {
  test('says to anyone what was certified', async () => {
    const { app, number, certificate } = issued()
    const answer = await app.get(`/verify/${number}`)
    expect(answer.status).toBe(200)
    const text = await answer.text()
    for (const part of [
      'Test Workshop',
      'S-1',
      'D-100 A',
      'Pass',
      '2026-11-25',
      'newest revision',
    ]) {
      expect(text).toContain(part)
    }
    expect(text).toContain(certificate.sha256)
  })

  test('tells nothing of the customer', async () => {
    const { app, number, shop } = issued()
    const text = await (await app.get(`/verify/${number}`)).text()
    for (const secret of [shop.customer.name, shop.customer.address, 'PO 4711', 'P-101', 'juice']) {
      expect(text.toLowerCase()).not.toContain(secret.toLowerCase())
    }
  })

  test('forgives capitals and spaces', async () => {
    const { app, number } = issued()
    const typed = ` ${number.toLowerCase().replaceAll('-', ' ')} `
    const answer = await app.get(`/verify?number=${encodeURIComponent(typed)}`)
    expect(answer.status).toBe(303)
    expect(answer.headers.get('location')).toBe(`/verify/${number}`)
    const direct = await app.get(`/verify/${encodeURIComponent(typed)}`)
    expect(direct.status).toBe(200)
    const path = encodeURIComponent(typed.trim())
    for (const asked of [`verify/${path}`, `certificates/${path}`]) {
      const answer = await app.get(`/api/v1/${asked}`, 'cora')
      expect(await answer.json()).toMatchObject({ number })
    }
    const file = await app.get(`/api/v1/certificates/${path}.pdf`, 'cora')
    expect(file.headers.get('content-disposition')).toBe(`inline; filename="${number}.pdf"`)
    expect((await app.get(`/api/v1/certificates/${path}.pdf`, 'olga')).status).toBe(404)
  })

  test.each(['C-2026-0001-AAAAAA', 'nonsense', '<b>', "' OR 1=1 --"])(
    'says calmly that %s was not issued here',
    async (typed) => {
      const { app } = issued()
      const answer = await app.get(`/verify/${encodeURIComponent(typed)}`)
      expect(answer.status).toBe(404)
      const text = await answer.text()
      expect(text).toContain('No certificate with this number was issued here')
      expect(text).not.toContain('<b>')
    },
  )

  test('leads on what was typed, whatever it is, to the same answer', async () => {
    const { app } = issued()
    const answer = await app.get(`/verify?number=${encodeURIComponent('//evil.example/x')}`)
    expect(answer.headers.get('location')).toBe('/verify/%2F%2Fevil.example%2Fx')
  })

  test('starts with a field, and asks again for an empty one', async () => {
    const { app } = issued()
    expect((await app.get('/verify')).status).toBe(200)
    const empty = await app.get('/verify?number=+')
    expect(empty.status).toBe(422)
    expect(await empty.text()).toContain('Type the number')
  })
})
