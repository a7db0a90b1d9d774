import { describe, expect, it } from 'vitest'
import { addInstrument } from '../../src/store/add-instrument.ts'
import { listAudit } from '../../src/store/list-audit.ts'
import { listInstruments } from '../../src/store/list-instruments.ts'
import { requireInstrument } from '../../src/store/require-instrument.ts'
import { newInstrument } from '../support/build-instrument.ts'
import { buildShop } from '../support/build-shop.ts'
import { operator } from '../support/cast.ts'
import { testApp } from '../support/test-app.ts'

const lamp = { kind: 'lamp', number: 'L-09', name: 'Sodium lamp', lampId: 'sodium', formKey: 'k' }
const calibration = {
  calibratedOn: '2026-11-20',
  dueOn: '2026-12-10',
  certificateNumber: 'K-99',
  formKey: 'k-calibration',
}

function shopApp() {
  const shop = buildShop()
  return { shop, ...testApp(shop.store) }
}

describe('amending the numbers of an instrument', () => {
  const form = {
    range: '0 to 400 kPa',
    unit: 'kPa',
    rangeFrom: '0',
    rangeTo: '400',
    resolutionStep: '0,2',
    largestError: '1',
    amendReason: 'From its data sheet',
    seenAmendment: '0',
    formKey: 'k-numbers',
  }

  it('records them once, shows what they were, and refuses an older page', async () => {
    const { get, post, shop } = shopApp()
    const at = `/instruments/${shop.gauge.id}`
    const first = await post(`${at}/numbers`, form, 'ian')
    expect(first.status).toBe(303)
    expect((await post(`${at}/numbers`, form, 'ian')).headers.get('location')).toBe(
      first.headers.get('location'),
    )
    expect(requireInstrument(shop.store, shop.gauge.id)).toMatchObject({ resolutionStep: 0.2 })
    const page = await (await get(at, 'ian')).text()
    expect(page).toContain('Amended numbers')
    expect(page).toContain('Range from: not stated became 0 kPa')
    expect(page).toContain('became 0.2 kPa')
    const other = { ...form, largestError: '2', formKey: 'j-numbers' }
    const late = await post(`${at}/numbers`, other, 'ian')
    expect(late.status).toBe(422)
    const answer = await late.text()
    expect(answer).toContain('Somebody amended it meanwhile')
    expect(answer).toContain('value="2"')
    const same = { ...form, seenAmendment: '1', formKey: 'i-numbers' }
    const unchanged = await post(`${at}/numbers`, same, 'ian')
    expect(unchanged.status).toBe(422)
    expect(await unchanged.text()).toContain('Nothing is different from what stands')
  })

  it('gives back what was typed, with a sentence beside the field', async () => {
    const { post, shop } = shopApp()
    const faulty = { ...form, rangeTo: '<b>', amendReason: 'short' }
    const answer = await post(`/instruments/${shop.gauge.id}/numbers`, faulty, 'ian')
    expect(answer.status).toBe(422)
    const page = await answer.text()
    expect(page).toContain('value="&lt;b&gt;"')
    expect(page).toContain('Enter at least 10 characters.')
  })

  it('asks to look again at a calibration that was typed beside the unit before it', async () => {
    const { get, post, shop } = shopApp()
    const at = `/instruments/${shop.gauge.id}`
    await post(`${at}/numbers`, form, 'ian')
    expect(await (await get(at, 'mo')).text()).toContain('name="seenUnit" value="kPa"')
    const inBar = { ...form, unit: 'bar', rangeTo: '4', largestError: '0.01', resolutionStep: '' }
    const second = { ...inBar, seenAmendment: '1', formKey: 'j-numbers' }
    expect((await post(`${at}/numbers`, second, 'ian')).status).toBe(303)
    const stated = { ...calibration, expandedUncertainty: '0.4', seenUnit: 'kPa' }
    const answer = await post(`${at}/calibrations`, stated, 'mo')
    expect(answer.status).toBe(422)
    const page = await answer.text()
    expect(page).toContain('Somebody amended it meanwhile')
    expect(page).toContain('name="seenUnit" value="bar"')
    expect(page).toContain('Range from: 0 kPa became 0 bar')
    const looked = { ...stated, expandedUncertainty: '0.004', seenUnit: 'bar' }
    expect((await post(`${at}/calibrations`, looked, 'mo')).status).toBe(303)
  })

  it('is not offered to a technician', async () => {
    const { get, post, shop } = shopApp()
    const at = `/instruments/${shop.gauge.id}`
    expect(await (await get(at, 'tess')).text()).not.toContain('name="amendReason"')
    expect((await post(`${at}/numbers`, form, 'tess')).status).toBe(403)
  })
})

describe('the list of instruments', () => {
  it('shows each with its status in words, and those of one kind', async () => {
    const { get } = shopApp()
    const all = await (await get('/instruments', 'tess')).text()
    for (const number of ['L-01', 'F-01', 'G-01', 'T-01']) expect(all).toContain(number)
    expect(all).toContain('In calibration')
    const lamps = await (await get('/instruments?kind=lamp', 'tess')).text()
    expect(lamps).toContain('L-01')
    expect(lamps).not.toContain('G-01')
    expect(await (await get('/instruments?kind=hammer', 'tess')).text()).toContain('G-01')
  })

  it('puts an overdue one first and says what runs out within thirty days', async () => {
    const { get, post, shop, setNow } = shopApp()
    await post(`/instruments/${shop.gauge.id}/calibrations`, calibration, 'ian')
    const soon = await (await get('/instruments', 'tess')).text()
    expect(soon).toContain('Due in 15 days')
    setNow('2026-12-11T08:00:00.000Z')
    const late = await (await get('/instruments', 'tess')).text()
    expect(late).toContain('Calibration overdue')
    expect(late.indexOf('>G-01<')).toBeLessThan(late.indexOf('>F-01<'))
  })

  it('puts the others below by kind, with who holds each', async () => {
    const { get, post, shop } = shopApp()
    await post(`/instruments/${shop.lamp.id}/holder`, { holder: 'Bench 2 & shelf' }, 'tess')
    const text = await (await get('/instruments', 'tess')).text()
    expect(text).not.toContain('Needs a look')
    expect(text.indexOf('<h2>Lamp</h2>')).toBeLessThan(text.indexOf('<h2>Pressure gauge</h2>'))
    expect(text).toContain('Bench 2 &amp; shelf')
    expect(text).not.toContain('<h2>Balance</h2>')
  })

  it('offers the ways in which they stand once there are many', async () => {
    const { get, store } = shopApp()
    expect(await (await get('/instruments', 'tess')).text()).not.toContain('state=')
    for (let n = 10; n < 18; n += 1) {
      addInstrument(store, newInstrument('thermometer', { number: `T-${n}` }), operator)
    }
    const all = await (await get('/instruments', 'tess')).text()
    expect(all).toContain('href="/instruments?state=never-calibrated"')
    expect(all).not.toContain('state=withdrawn')
    const never = await (await get('/instruments?state=never-calibrated', 'tess')).text()
    expect(never).toContain('>T-17<')
    expect(never).not.toContain('>G-01<')
    expect(never).toContain('href="/instruments?kind=lamp&amp;state=never-calibrated"')
    const none = await get('/instruments?kind=lamp&state=never-calibrated', 'tess')
    expect(await none.text()).toContain('No such instrument')
  })

  it('shows its form to inspector and manager only', async () => {
    const { get } = shopApp()
    expect(await (await get('/instruments', 'tess')).text()).not.toContain('Add an instrument')
    expect(await (await get('/instruments', 'mo')).text()).toContain('Add an instrument')
  })
})

describe('a new instrument', () => {
  it('is recorded once, however often its form is sent', async () => {
    const { post, store } = shopApp()
    const first = await post('/instruments', lamp, 'ian')
    expect(first.status).toBe(303)
    const again = await post('/instruments', lamp, 'ian')
    expect(again.headers.get('location')).toBe(first.headers.get('location'))
    expect(listInstruments(store, { kind: 'lamp' }).map((one) => one.number)).toEqual([
      'L-01',
      'L-09',
    ])
  })

  it('comes back with what was typed, escaped, and a sentence for each field', async () => {
    const { post, store } = shopApp()
    const name = '<b>"lamp"</b>'
    const form = { ...lamp, name, number: '', lampId: '', flatToleranceUm: '0.05' }
    const answer = await post('/instruments', form, 'ian')
    const text = await answer.text()
    expect(answer.status).toBe(422)
    expect(text).toContain('&lt;b&gt;&quot;lamp&quot;&lt;/b&gt;')
    expect(text).not.toContain(name)
    expect(text).toContain('Enter the number painted on it.')
    expect(text).toContain('Choose which lamp it is')
    expect(text).toContain('Only an optical flat has this.')
    expect(text).toContain('value="k"')
    expect(listInstruments(store)).toHaveLength(4)
  })

  it('is recorded with its range in numbers, and says what to do about one that says nothing', async () => {
    const { get, post } = shopApp()
    const gauge = { kind: 'pressure-gauge', number: 'G-09', name: 'Gauge', formKey: 'g' }
    const numbers = { rangeFrom: '0', rangeTo: '400', resolutionStep: '0,1', largestError: '0.4' }
    const answer = await post('/instruments', { ...gauge, ...numbers }, 'ian')
    expect(answer.status).toBe(422)
    const text = await answer.text()
    expect(text).toContain('Choose the unit of the numbers.')
    expect(text).toContain('value="0,1"')
    const added = await post('/instruments', { ...gauge, ...numbers, unit: 'kPa' }, 'ian')
    const page = await (await get(added.headers.get('location') ?? '', 'tess')).text()
    expect(page).toContain('0 to 400 kPa')
    expect(page).toContain('0.1 kPa')
    expect(page).toContain('0.4 kPa')
  })

  it('is refused under a number that is taken', async () => {
    const { post } = shopApp()
    const answer = await post('/instruments', { ...lamp, number: 'L-01' }, 'ian')
    expect(answer.status).toBe(422)
    expect(await answer.text()).toContain('There is an instrument with this number already.')
  })
})

describe('an instrument', () => {
  it('shows what it is, its calibrations, and no form to a technician', async () => {
    const { get, shop } = shopApp()
    const text = await (await get(`/instruments/${shop.lamp.id}`, 'tess')).text()
    expect(text).toContain('Helium, 587.5618 nm (published)')
    expect(text).not.toContain('Withdraw from use')
    expect(text).not.toContain('/audit')
    expect(await (await get(`/instruments/${shop.flat.id}`, 'ian')).text()).toContain('0.05 µm')
  })

  it('is not found under an id that there is not, or that is none', async () => {
    const { get, post } = shopApp()
    for (const id of ['999', '0', 'x', '1e3', '-1']) {
      expect((await get(`/instruments/${id}`, 'ian')).status, id).toBe(404)
    }
    expect((await post('/instruments/999/calibrations', calibration, 'ian')).status).toBe(404)
    expect((await post('/instruments/999/withdrawal', { reason: 'x' }, 'ian')).status).toBe(404)
  })

  it('gets a calibration once and keeps the earlier ones', async () => {
    const { post, store, shop } = shopApp()
    const path = `/instruments/${shop.gauge.id}/calibrations`
    const before = requireInstrument(store, shop.gauge.id).calibrations
    await post(path, calibration, 'mo')
    const again = await post(path, calibration, 'mo')
    expect(again.status).toBe(303)
    const after = requireInstrument(store, shop.gauge.id).calibrations
    expect(after.slice(0, -1)).toEqual(before)
    expect(after.at(-1)).toMatchObject({ dueOn: '2026-12-10', certificateNumber: 'K-99' })
  })

  it('refuses a calibration to come, due too early or without its certificate', async () => {
    const { post, store, shop } = shopApp()
    const path = `/instruments/${shop.gauge.id}/calibrations`
    const answer = async (change: Record<string, string>) => {
      const sent = await post(path, { ...calibration, ...change }, 'ian')
      expect(sent.status).toBe(422)
      return sent.text()
    }
    expect(await answer({ calibratedOn: '2026-11-26' })).toContain('This day is still to come.')
    expect(await answer({ dueOn: '2026-11-20' })).toContain('It falls due after the day')
    const typed = await answer({ certificateNumber: '', calibratedOn: '<i>' })
    expect(typed).toContain('Enter the number of the certificate.')
    expect(typed).toContain('value="&lt;i&gt;"')
    expect(typed).toContain('value="k-calibration"')
    expect(requireInstrument(store, shop.gauge.id).calibrations).toHaveLength(1)
  })

  it('says what a calibration found and left, and leads to what it puts in doubt', async () => {
    const { get, post, store, shop } = shopApp()
    const { id } = addInstrument(
      store,
      newInstrument('pressure-gauge', { number: 'G-08', unit: 'kPa', largestError: 0.5 }),
      operator,
    )
    const path = `/instruments/${id}/calibrations`
    const states = { asFound: 'within', asLeft: 'within', seenUnit: 'kPa' }
    const found = { ...calibration, ...states, asFoundError: '0,7' }
    const refused = await post(path, found, 'ian')
    expect(refused.status).toBe(422)
    const text = await refused.text()
    expect(text).toContain('This error is larger than the 0.5 that the instrument may have.')
    expect(text).toContain('href="#asFound-1"')
    expect(text).toContain('value="0,7"')
    const stated = { laboratory: 'Quay & Sons', expandedUncertainty: '0.2', note: 'adjusted' }
    expect((await post(path, { ...found, ...stated, asFound: 'beyond' }, 'ian')).status).toBe(303)
    const page = await (await get(`/instruments/${id}`, 'tess')).text()
    const [kept] = requireInstrument(store, id).calibrations
    expect(page).toContain(`href="/instruments/${id}/touched?calibration=${kept?.id}"`)
    for (const shown of [
      'Beyond',
      '0.7 kPa',
      'Quay &amp; Sons',
      'adjusted',
      'U = 0.2 kPa, k = 2',
    ]) {
      expect(page).toContain(shown)
    }
    const other = await (await get(`/instruments/${shop.gauge.id}`, 'tess')).text()
    expect(other).not.toContain('/touched')
  })

  it('refuses numbers where the instrument says no unit', async () => {
    const { post, shop } = shopApp()
    const path = `/instruments/${shop.gauge.id}/calibrations`
    const answer = await post(path, { ...calibration, expandedUncertainty: '0.2' }, 'ian')
    expect(answer.status).toBe(422)
    expect(await answer.text()).toContain('says no unit')
  })

  it('says who holds it, and who held it before', async () => {
    const { get, post, shop, setNow } = shopApp()
    const path = `/instruments/${shop.lamp.id}`
    expect(await (await get(path, 'tess')).text()).toContain('Nobody has recorded who holds it.')
    const first = { holder: '<b>Bench</b>', formKey: 'h-holder' }
    expect((await post(`${path}/holder`, first, 'tess')).status).toBe(303)
    expect((await post(`${path}/holder`, first, 'tess')).status).toBe(303)
    setNow('2026-11-26T10:00:00.000Z')
    await post(`${path}/holder`, { holder: 'Inspection room' }, 'mo')
    const text = await (await get(path, 'tess')).text()
    expect(text).toContain('<strong>Inspection room</strong>')
    expect(text.match(/&lt;b&gt;Bench&lt;\/b&gt;/g)).toHaveLength(1)
    expect(text).not.toContain('<b>Bench</b>')
    const empty = await post(`${path}/holder`, { holder: ' ' }, 'ian')
    expect(empty.status).toBe(422)
    expect(await empty.text()).toContain('Enter who or which place holds it.')
  })

  it('warns of what hurts, and only there', async () => {
    const { get, store, shop } = shopApp()
    const page = async (id: number) => (await get(`/instruments/${id}`, 'tess')).text()
    expect(await page(shop.lamp.id)).toContain('let it cool')
    expect(await page(shop.lamp.id)).not.toContain('mercury')
    const green = newInstrument('lamp', { number: 'L-08', lampId: 'mercury-green' })
    expect(await page(addInstrument(store, green, operator).id)).toContain('holds mercury')
    const laser = newInstrument('lamp', { number: 'L-07', lampId: 'helium-neon-red' })
    expect(await page(addInstrument(store, laser, operator).id)).toContain(
      'never look into the beam',
    )
    expect(await page(shop.gauge.id)).toContain('Vent and lock the line')
    const needle = newInstrument('profilometer', { number: 'P-01' })
    expect(await page(addInstrument(store, needle, operator).id)).not.toContain('role="note"')
  })

  it('is withdrawn once, with a reason that its page then tells', async () => {
    const { get, post, store, shop } = shopApp()
    const path = `/instruments/${shop.lamp.id}/withdrawal`
    const empty = await post(path, { reason: ' ', formKey: 'w-withdrawal' }, 'ian')
    expect(empty.status).toBe(422)
    expect(await empty.text()).toContain('Say why it is taken out of use.')
    const form = { reason: 'dropped & broken', formKey: 'w-withdrawal' }
    expect((await post(path, form, 'ian')).status).toBe(303)
    expect((await post(path, form, 'ian')).status).toBe(303)
    expect(requireInstrument(store, shop.lamp.id).withdrawnOn).toBe('2026-11-25')
    const acts = listAudit(store, { subject: 'instrument L-01', limit: 10 }).items
    expect(acts.filter((one) => one.act === 'withdraw-instrument')).toHaveLength(1)
    const text = await (await get(`/instruments/${shop.lamp.id}`, 'ian')).text()
    expect(text).toContain('dropped &amp; broken')
    expect(text).not.toContain('Add a calibration')
  })

  it('takes nothing more once it is withdrawn', async () => {
    const { post, shop } = shopApp()
    await post(`/instruments/${shop.lamp.id}/withdrawal`, { reason: 'broken' }, 'ian')
    const late = await post(`/instruments/${shop.lamp.id}/calibrations`, calibration, 'ian')
    expect(late.status).toBe(409)
    expect(await late.text()).toContain('The instrument L-01 is withdrawn from use.')
    const twice = await post(`/instruments/${shop.lamp.id}/withdrawal`, { reason: 'again' }, 'ian')
    expect(twice.status).toBe(409)
  })
})
