import { createHash } from 'node:crypto'
import { describe, expect, test, vi } from 'vitest'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { addHandOver } from '../../src/store/add-hand-over.ts'
import { addLimitSet } from '../../src/store/add-limit-set.ts'
import { addStaticTest } from '../../src/store/add-static-test.ts'
import { listCertificates } from '../../src/store/list-certificates.ts'
import { listDecisions } from '../../src/store/list-decisions.ts'
import { readEvidence } from '../../src/store/read-evidence.ts'
import { buildInstrumentUse } from '../support/build-instrument.ts'
import { approved, buildShop, newLimitSet } from '../support/build-shop.ts'
import { actorOf, operator } from '../support/cast.ts'
import { decisionForm } from '../support/decision-form.ts'
import { fillShop } from '../support/fill-shop.ts'
import { anotherOrder, freshReading, freshTest, workAndHandOver } from '../support/shop-steps.ts'
import { testApp } from '../support/test-app.ts'

// Each release draws its document, 0.2 s alone and ten times that on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

function handedOver() {
  const shop = buildShop()
  const handOver = workAndHandOver(shop)
  const app = testApp(shop.store)
  const { number, id } = shop.workOrder
  return {
    ...shop,
    shop,
    handOver,
    app,
    number,
    page: `/work-orders/${number}/inspection`,
    path: `/work-orders/${number}/decision`,
    decisions: () => listDecisions(shop.store, id),
    certificates: () => listCertificates(shop.store, { workOrderId: id }),
    stage: () => readEvidence(shop.store, id).workOrder.stage,
    form: (as: 'ian' | 'ina', changes: Record<string, string> = {}) =>
      decisionForm(app, number, as, changes),
  }
}

describe('the list of what waits', () => {
  test('shows what is handed over, by whom, and how it stands', async () => {
    const { app, number } = handedOver()
    const page = await (await app.get('/inspection', 'ian')).text()
    expect(page).toContain(number)
    expect(page).toContain('Handed over by Tess Turner')
    expect(page).toContain('Pass')
  })

  test('says so when nothing waits', async () => {
    const { app } = { app: testApp(buildShop().store) }
    expect(await (await app.get('/inspection', 'mo')).text()).toContain('Nothing waits')
  })

  test('shows what was refused and what was released', async () => {
    const shop = fillShop()
    const app = testApp(shop.store)
    const page = await (await app.get('/inspection', 'ian')).text()
    expect(page).toContain('Released recently')
    expect(page).toContain(shop.workOrder.number)
  })
})

describe('the page of the evidence', () => {
  test('shows each result beside its limit, with source, instrument, hand and day', async () => {
    const { app, page } = handedOver()
    const html = await (await app.get(page, 'ian')).text()
    const text = html.replaceAll(/<[^>]*>/g, ' ').replaceAll(/\s+/g, ' ')
    // 2 helium bands: 2 × 587.5618 nm / 2 = 0.588 µm, the limit 3 bands = 0.881 µm.
    for (const part of [
      'Rotating face, flatness as left',
      'Stationary seat, flatness as left',
      '0.59 ± 0.10 µm',
      '≤ 0.881 µm',
      '3 helium light bands',
      'House rule',
      'L-01',
      'In calibration to 2027-01-15',
      'Tess Turner',
      'Static test, whole seal',
      '2 psi in 5 min',
    ]) {
      expect(text).toContain(part)
    }
  })

  test('says why a drop is not judged: the hold began below the pressure of the limit', async () => {
    const shop = buildShop()
    const limits = newLimitSet().limits.map((one) => {
      return one.characteristic === 'static-drop' ? { ...one, startAtLeastKPaGauge: 200 } : one
    })
    const draft = addLimitSet(shop.store, newLimitSet({ version: 2, limits }), operator)
    const { id } = approved(shop.store, draft, shop.cast.ian)
    const order = anotherOrder(shop, { limitSetId: id })
    workAndHandOver(shop, order)
    const app = testApp(shop.store)
    const html = await (await app.get(`/work-orders/${order.number}/inspection`, 'ian')).text()
    expect(html).toContain('The hold started below the pressure the limit is written for')
    expect(html).toContain('started at 200.0 kPa gauge or above')
  })

  test('shows what was corrected, both values and why', async () => {
    const shop = fillShop()
    const app = testApp(shop.store)
    const text = await (await app.get('/work-orders/W-2026-0002/inspection', 'ian')).text()
    expect(text).toContain('counted the wrong band')
    expect(text).toContain('gauge misread')
  })

  test('names an instrument that was overdue on the day of use, and asks for a sentence', async () => {
    const { app, page, number } = overdueLamp()
    const text = await (await app.get(page, 'ian')).text()
    expect(text).toContain('Calibration overdue')
    expect(text).toContain('was due 2026-10-01')
    expect(text).toContain('L-01. To release all the same')
    expect(number).toMatch(/^W-/)
  })

  test('lets a manager look and not decide', async () => {
    const { app, page, path } = handedOver()
    const text = await (await app.get(page, 'mo')).text()
    expect(text).toContain('An inspector decides')
    expect(text).not.toContain('name="password"')
    const form = { outcome: 'refuse', reason: 'x', password: 'mo at the quay' }
    expect((await app.post(path, form, 'mo')).status).toBe(403)
  })

  test('is not found for an order that does not exist', async () => {
    const { app } = handedOver()
    expect((await app.get('/work-orders/W-2026-9999/inspection', 'ian')).status).toBe(404)
    const form = { outcome: 'refuse', reason: 'x', password: 'p' }
    expect((await app.post('/work-orders/W-2026-9999/decision', form, 'ian')).status).toBe(404)
  })

  test('escapes what people wrote', async () => {
    const shop = buildShop()
    const note = '<script>alert(1)</script>'
    addFlatnessReading(
      shop.store,
      freshReading(shop, 'rotating-face', { note }),
      actorOf(shop.cast.tess),
    )
    const app = testApp(shop.store)
    const path = `/work-orders/${shop.workOrder.number}/inspection`
    const text = await (await app.get(path, 'ian')).text()
    expect(text).toContain('&lt;script&gt;alert(1)')
    expect(text).not.toContain(note)
  })
})

describe('a decision', () => {
  test('releases, issues the certificate and leads to it', async () => {
    const { app, path, form, decisions, certificates, stage } = handedOver()
    const answer = await app.post(path, await form('ian'), 'ian')
    expect(answer.status).toBe(303)
    const [certificate] = certificates()
    expect(certificate?.number).toMatch(/^C-2026-0001-[2-9A-HJ-NP-Z]{6}$/)
    expect(answer.headers.get('location')).toBe(`/certificates/${certificate?.number}`)
    expect(decisions()).toMatchObject([{ outcome: 'released', byName: 'Ian Ives' }])
    expect(stage()).toBe('released')
  })

  test('shows afterwards who decided, with the certificate and without a form', async () => {
    const { app, path, page, form, certificates } = handedOver()
    await app.post(path, await form('ian'), 'ian')
    const text = await (await app.get(page, 'ina')).text()
    expect(text).toContain('Released by Ian Ives')
    expect(text).toContain(certificates()[0]!.number)
    expect(text).not.toContain('name="password"')
  })

  test('records a double click once, and leads both to the same certificate', async () => {
    const { app, path, form, decisions, certificates } = handedOver()
    const sent = await form('ian')
    const answers = await Promise.all([app.post(path, sent, 'ian'), app.post(path, sent, 'ian')])
    expect(answers.map((one) => one.status)).toEqual([303, 303])
    expect(new Set(answers.map((one) => one.headers.get('location'))).size).toBe(1)
    expect(decisions()).toHaveLength(1)
    expect(certificates()).toHaveLength(1)
  })

  test('answers a form resent later with the same certificate', async () => {
    const { app, path, form, certificates } = handedOver()
    const sent = await form('ian')
    const first = await app.post(path, sent, 'ian')
    const second = await app.post(path, sent, 'ian')
    expect(second.status).toBe(303)
    expect(second.headers.get('location')).toBe(first.headers.get('location'))
    expect(certificates()).toHaveLength(1)
  })

  test('of two inspectors who press together, one releases and the other learns who', async () => {
    const { app, path, form, decisions, certificates } = handedOver()
    const [ians, inas] = [await form('ian'), await form('ina')]
    const answers = await Promise.all([app.post(path, ians, 'ian'), app.post(path, inas, 'ina')])
    expect(answers.map((one) => one.status).sort()).toEqual([303, 409])
    const loser = answers.find((one) => one.status === 409)!
    const winner = decisions()[0]!.byName
    expect(await loser.text()).toContain(`decided already, by ${winner}`)
    expect(decisions()).toHaveLength(1)
    expect(certificates()).toHaveLength(1)
  })

  test('of two orders released together gives each its own number', async () => {
    const { shop, app, path, form, certificates } = handedOver()
    const second = anotherOrder(shop)
    workAndHandOver(shop, second)
    const other = await decisionForm(app, second.number, 'ina')
    const answers = await Promise.all([
      app.post(path, await form('ian'), 'ian'),
      app.post(`/work-orders/${second.number}/decision`, other, 'ina'),
    ])
    expect(answers.map((one) => one.status)).toEqual([303, 303])
    const others = listCertificates(shop.store, { workOrderId: second.id })
    const numbers = [...certificates(), ...others].map((one) => one.number.slice(0, 11))
    expect(numbers.sort()).toEqual(['C-2026-0001', 'C-2026-0002'])
  })

  test('of a release and a refusal together, one stands', async () => {
    const { app, path, form, decisions, certificates, stage } = handedOver()
    const ians = await form('ian')
    const inas = await form('ina', { outcome: 'refuse', reason: 'seat scratched' })
    const answers = await Promise.all([app.post(path, ians, 'ian'), app.post(path, inas, 'ina')])
    expect(answers.map((one) => one.status).sort()).toEqual([303, 409])
    expect(decisions()).toHaveLength(1)
    expect(certificates()).toHaveLength(decisions()[0]!.outcome === 'released' ? 1 : 0)
    expect(stage()).toBe(decisions()[0]!.outcome)
  })

  test('goes refused, back to the bench, handed over again, released', async () => {
    const { shop, app, path, form, decisions, certificates, stage, store, cast } = handedOver()
    const reason = 'scratch at "4 o’clock" <on the seat>'
    const refused = await app.post(path, await form('ian', { outcome: 'refuse', reason }), 'ian')
    expect(refused.status).toBe(303)
    expect(stage()).toBe('refused')
    expect(certificates()).toHaveLength(0)

    const tess = actorOf(cast.tess)
    addFlatnessReading(store, freshReading(shop, 'stationary-seat'), tess)
    addHandOver(store, { workOrderId: shop.workOrder.id, note: 'lapped again' }, tess)
    const page = await (await app.get(path.replace('decision', 'inspection'), 'ina')).text()
    expect(page).toContain('scratch at &quot;4 o’clock&quot; &lt;on the seat&gt;')
    expect(page).toContain('lapped again')
    expect(page).toContain('read again later')

    expect((await app.post(path, await form('ina'), 'ina')).status).toBe(303)
    expect(decisions().map((one) => one.outcome)).toEqual(['refused', 'released'])
    expect(certificates()).toHaveLength(1)
  })

  test('on a page that is no longer so is not recorded', async () => {
    const { shop, app, path, form, decisions, store, cast } = handedOver()
    const old = await form('ina', { reason: 'looked at everything' })
    await app.post(path, await form('ian', { outcome: 'refuse', reason: 'scratch' }), 'ian')
    const tess = actorOf(cast.tess)
    addFlatnessReading(store, freshReading(shop, 'stationary-seat'), tess)
    addHandOver(store, { workOrderId: shop.workOrder.id, note: '' }, tess)
    const answer = await app.post(path, old, 'ina')
    expect(answer.status).toBe(409)
    const text = await answer.text()
    expect(text).toContain('The record changed while you were deciding')
    expect(text).toContain('looked at everything')
    expect(decisions()).toHaveLength(1)
  })

  test('without the page’s fingerprint is not recorded', async () => {
    const { app, path, form, decisions } = handedOver()
    for (const outcome of ['release', 'refuse']) {
      const sent = { ...(await form('ian')), outcome, reason: 'a reason', fingerprint: '' }
      expect((await app.post(path, sent, 'ian')).status).toBe(409)
    }
    expect(decisions()).toHaveLength(0)
  })

  test('is not taken while nothing is handed over', async () => {
    const shop = buildShop()
    const app = testApp(shop.store)
    const path = `/work-orders/${shop.workOrder.number}/decision`
    for (const outcome of ['release', 'refuse']) {
      const form = { outcome, reason: 'a reason', password: 'ian at the quay', fingerprint: 'x' }
      expect((await app.post(path, form, 'ian')).status).toBe(409)
    }
  })
})

describe('the signature', () => {
  test('with a wrong password records nothing and keeps what was typed', async () => {
    const { app, path, form, decisions } = handedOver()
    const reason = 'Compared with <another> gauge & found good.'
    const sent = await form('ian', { reason, password: 'wrong-one' })
    const answer = await app.post(path, sent, 'ian')
    expect(answer.status).toBe(422)
    const text = await answer.text()
    expect(text).toContain('The password is not right.')
    expect(text).toContain('Compared with &lt;another&gt; gauge &amp; found good.')
    expect(text).toContain(`name="formKey" value="${sent.formKey}"`)
    expect(text).toMatch(/value="release"[^>]*checked/)
    expect(text).not.toContain('wrong-one')
    expect(decisions()).toHaveLength(0)
  })

  test('then with the right one is recorded', async () => {
    const { app, path, form, decisions } = handedOver()
    const sent = await form('ian')
    await app.post(path, { ...sent, password: 'wrong' }, 'ian')
    expect((await app.post(path, sent, 'ian')).status).toBe(303)
    expect(decisions()).toHaveLength(1)
  })

  test('is slowed like signing in, and counts with it', async () => {
    const { app, path, form, decisions } = handedOver()
    const sent = await form('ian', { reason: 'what was typed' })
    for (let i = 0; i < 5; i++) await app.post(path, { ...sent, password: `guess ${i}` }, 'ian')
    const answer = await app.post(path, sent, 'ian')
    expect(answer.status).toBe(429)
    expect(Number(answer.headers.get('retry-after'))).toBeGreaterThan(0)
    const text = await answer.text()
    expect(text).toContain('Too many failed tries')
    expect(text).toContain('what was typed')
    const door = { name: 'ian', password: 'ian at the quay', next: '' }
    expect((await app.post('/sign-in', door)).status).toBe(429)
    expect(decisions()).toHaveLength(0)
    app.setNow('2026-11-25T10:02:00.000Z')
    expect((await app.post(path, sent, 'ian')).status).toBe(303)
  })

  test('leaves no trace of the password in the store, not even in a digest', async () => {
    const { app, path, form, store } = handedOver()
    const { password, ...rest } = await form('ian')
    await app.post(path, { ...rest, password: password ?? '' }, 'ian')
    const kept = store.raw.prepare('SELECT request_hash AS hash FROM kept_answer').all()
    const request = JSON.stringify(['POST', path, rest])
    expect(kept).toEqual([{ hash: createHash('sha256').update(request).digest('hex') }])
    const audit = JSON.stringify(store.raw.prepare('SELECT * FROM audit').all())
    expect(audit).not.toContain(password)
  })

  test.each([
    ['no choice', { outcome: '' }, 'Choose release or refuse.'],
    ['no password', { password: '' }, 'Enter a value.'],
    ['a refusal without reason', { outcome: 'refuse', reason: ' ' }, 'Enter a value.'],
    ['too many words', { reason: 'x'.repeat(401) }, 'Enter at most 400 characters.'],
  ])('asks again for %s', async (_, changes, sentence) => {
    const { app, path, form, decisions } = handedOver()
    const answer = await app.post(path, await form('ian', changes), 'ian')
    expect(answer.status).toBe(422)
    expect(await answer.text()).toContain(sentence)
    expect(decisions()).toHaveLength(0)
  })
})

describe('the rules of release', () => {
  test('keep out who lapped or tested, and name the rule', async () => {
    const { app, path, form, store, cast, decisions } = handedOver()
    // Ian recorded a reading in his days as a technician: same person, other role.
    store.raw.exec('DROP TRIGGER flatness_reading_no_update')
    store.raw.exec(`UPDATE flatness_reading SET recorded_by_id = ${cast.ian.id} WHERE id = 1`)
    const page = await (await app.get(path.replace('decision', 'inspection'), 'ian')).text()
    expect(page).toContain('EN 10204:2004, type 3.1')
    expect(page).not.toContain('value="release"')
    const fresh = await form('ian')
    const answer = await app.post(path, fresh, 'ian')
    expect(answer.status).toBe(403)
    expect(await answer.text()).toContain('EN 10204:2004, type 3.1')
    expect(decisions()).toHaveLength(0)
    expect((await app.post(path, await form('ina'), 'ina')).status).toBe(303)
  })

  test('keep back what fails, and name the result', async () => {
    const shop = buildShop()
    const directions = [
      { directionDeg: 0, bands: 4, bandsTyped: '4' },
      { directionDeg: 90, bands: 1, bandsTyped: '1' },
    ]
    const tess = actorOf(shop.cast.tess)
    addFlatnessReading(shop.store, freshReading(shop, 'rotating-face', { directions }), tess)
    workAndHandOverRest(shop)
    const app = testApp(shop.store)
    const { number } = shop.workOrder
    const form = { ...(await decisionForm(app, number, 'ian')), outcome: 'release' }
    const answer = await app.post(`/work-orders/${number}/decision`, form, 'ian')
    expect(answer.status).toBe(422)
    const text = await answer.text()
    expect(text).toContain('Rotating face, flatness as left: the result fails')
    expect(text).not.toContain('value="release"')
  })

  test('ask for a sentence where an instrument was overdue, and print it', async () => {
    const { app, path, form, decisions, certificates } = overdueLamp()
    const first = await app.post(path, await form('ian'), 'ian')
    expect(first.status).toBe(422)
    expect(await first.text()).toContain('Say in at least 10 characters why the results stand')
    const reason = 'L-01 compared with L-02 the same day: no difference.'
    expect((await app.post(path, await form('ian', { reason }), 'ian')).status).toBe(303)
    expect(decisions()[0]?.reason).toBe(reason)
    expect(certificates()[0]?.record.release.acknowledgement).toBe(reason)
  })
})

/** Everything but the rotating face, then the hand-over. */
function workAndHandOverRest(shop: ReturnType<typeof buildShop>) {
  const tess = actorOf(shop.cast.tess)
  addFlatnessReading(shop.store, freshReading(shop, 'stationary-seat'), tess)
  addStaticTest(shop.store, freshTest(shop), tess)
  addHandOver(shop.store, { workOrderId: shop.workOrder.id, note: '' }, tess)
}

function overdueLamp() {
  const shop = buildShop()
  const lamp = buildInstrumentUse('lamp', { status: 'overdue', dueOn: '2026-10-01' })
  const tess = actorOf(shop.cast.tess)
  addFlatnessReading(shop.store, freshReading(shop, 'rotating-face', { lamp }), tess)
  workAndHandOverRest(shop)
  const app = testApp(shop.store)
  const { number, id } = shop.workOrder
  return {
    app,
    number,
    page: `/work-orders/${number}/inspection`,
    path: `/work-orders/${number}/decision`,
    form: (as: 'ian' | 'ina', changes: Record<string, string> = {}) =>
      decisionForm(app, number, as, changes),
    decisions: () => listDecisions(shop.store, id),
    certificates: () => listCertificates(shop.store, { workOrderId: id }),
  }
}
