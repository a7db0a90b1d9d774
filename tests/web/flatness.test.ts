import { beforeEach, describe, expect, it } from 'vitest'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { addInstrument } from '../../src/store/add-instrument.ts'
import { listFlatnessReadings } from '../../src/store/list-flatness-readings.ts'
import { withdrawInstrument } from '../../src/store/withdraw-instrument.ts'
import { buildInstrument } from '../support/build-instrument.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { actorOf, operator } from '../support/cast.ts'
import {
  anotherOrder,
  doTheWork,
  freshReading,
  workAndHandOver,
  workAndRelease,
} from '../support/shop-steps.ts'
import { type TestApp, testApp, testNow } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
beforeEach(() => {
  shop = buildShop()
  app = testApp(shop.store)
})

const order = '/work-orders/W-2026-0001'
const faceId = (kind = 'rotating-face') =>
  String(shop.seal.components.find((one) => one.kind === kind)!.id)
const readings = () => listFlatnessReadings(shop.store, shop.workOrder.id)

/** What the form sends when two bands and one are entered. */
const filled = (changes: Record<string, string> = {}): Record<string, string> => ({
  formKey: 'a-key',
  faceId: faceId(),
  condition: 'as-left',
  pattern: 'convex',
  ringCentre: '',
  'readings[0].directionDeg': '0',
  'readings[0].bands': '2',
  'readings[0].bowMm': '',
  'readings[0].spacingMm': '',
  'readings[1].directionDeg': '90',
  'readings[1].bands': '1',
  'readings[1].bowMm': '',
  'readings[1].spacingMm': '',
  lampInstrumentId: String(shop.lamp.id),
  opticalFlatInstrumentId: String(shop.flat.id),
  viewingAngleDeg: '0',
  soakMin: '',
  temperatureC: '',
  note: '',
  ...changes,
})
const without = (name: string) => {
  const { [name]: _, ...rest } = filled()
  return rest
}
const record = (form: Record<string, string>, path = order) =>
  app.post(`${path}/flatness`, form, 'tess')
const preview = async (form: Record<string, string>) => {
  const answer = await app.post(`${order}/flatness/preview`, form, 'tess')
  expect(answer.status).toBe(200)
  return answer.text()
}
const open = async (query = '') => (await app.get(`${order}/flatness/new${query}`, 'tess')).text()

describe('the form of a light-band reading', () => {
  it('chooses no face and no pattern beforehand, and as left', async () => {
    const page = await open()
    const checked = [...page.matchAll(/<input[^>]*checked[^>]*>/g)].map(String)
    const chosen = checked.filter((one) => !one.includes('name="view"')).join('\n')
    expect(chosen).toContain('value="as-left"')
    expect(chosen).not.toMatch(/name="(faceId|pattern)"/)
    // Every pattern is offered with its picture: ten radios, ten drawings.
    expect(page.match(/name="pattern"/g)).toHaveLength(10)
    expect(page.match(/class="choice-picture"/g)).toHaveLength(10)
  })

  it('remembers lamp and flat of the last reading, and soak of the same day', async () => {
    const read = freshReading(shop, 'rotating-face', { soakMin: 45, temperatureC: 20.5 })
    addFlatnessReading(shop.store, read, actorOf(shop.cast.tess))
    const page = await open()
    expect(page).toMatch(/Lamp: <span class="strong">L-01/)
    expect(page).toMatch(new RegExp(`<option value="${shop.flat.id}" selected`))
    expect(page).toMatch(/name="soakMin"[^>]*value="45"/)
    app.setNow('2026-11-26T10:00:00.000Z')
    expect(await open()).toMatch(/name="soakMin"[^>]*value=""/)
  })

  it('opens with the face that a link names', async () => {
    const page = await open(`?face=${faceId('stationary-seat')}`)
    expect(page).toMatch(new RegExp(`name="faceId" value="${faceId('stationary-seat')}" checked`))
  })

  it('says how an instrument stands, and offers no withdrawn one', async () => {
    const {
      id: _,
      calibrations: _none,
      withdrawnOn: _kept,
      ...row
    } = buildInstrument('optical-flat', { flatToleranceUm: 0.1 })
    const late = { ...row, number: 'F-07', name: 'Small flat' }
    const gone = addInstrument(shop.store, { ...late, number: 'F-08' }, operator)
    addInstrument(shop.store, late, operator)
    const on = { instrumentId: gone.id, on: '2026-11-01', reason: 'chipped' }
    withdrawInstrument(shop.store, on, operator)
    const page = await open()
    expect(page).toContain('F-07 Small flat · No calibration on record')
    expect(page).toContain('Withdrawn, not to be used: F-08.')
    expect(page).not.toContain(`<option value="${gone.id}"`)
    const used = await record(filled({ opticalFlatInstrumentId: String(gone.id) }))
    expect(used.status).toBe(422)
    expect(await used.text()).toContain(
      'F-08 is withdrawn. Choose another, or ask an inspector for an exception.',
    )
  })

  it('is refused once the order is handed over or released, and unknown for no order', async () => {
    workAndHandOver(shop)
    expect((await app.get(`${order}/flatness/new`, 'tess')).status).toBe(409)
    expect((await record(filled())).status).toBe(409)
    const second = anotherOrder(shop)
    workAndRelease(shop, second)
    const count = listFlatnessReadings(shop.store, second.id).length
    expect((await record(filled(), `/work-orders/${second.number}`)).status).toBe(409)
    expect(listFlatnessReadings(shop.store, second.id)).toHaveLength(count)
    expect((await app.get('/work-orders/W-2026-9999/flatness/new', 'tess')).status).toBe(404)
  })
})

describe('the answer while the count is entered', () => {
  it('shows microns, microinches, verdict, limit and its source', async () => {
    const text = await preview(filled({ 'readings[0].bands': '2' }))
    // 2 helium bands: 2 × 587.5618 / 2 nm = 0.5876 µm = 23.1 µin (1 µin = 0.0254 µm).
    expect(text).toContain('>0.588<')
    expect(text).toContain('23.1 µin')
    expect(text).toContain('Limit ≤ 0.881 µm (34.7 µin)')
    expect(text).toContain('>Pass<')
    expect(text).toContain('3 helium light bands. House rule: test')
    expect(readings()).toHaveLength(0)
  })

  it('fails beyond the limit and adds both directions of a saddle', async () => {
    const text = await preview(filled({ pattern: 'saddle', 'readings[1].bands': '1,25' }))
    // 3.25 bands × 0.293781 µm = 0.955 µm, beyond 0.8814 µm.
    expect(text).toContain('>0.955<')
    expect(text).toContain('>Fail<')
  })

  it('asks for what is missing instead of scolding', async () => {
    expect(await preview(filled({ pattern: '' }))).toContain('Choose what the bands look like.')
    expect(await preview(without('pattern'))).toContain('Choose what the bands look like.')
    expect(await preview(filled({ lampInstrumentId: '' }))).toContain('Choose the lamp below')
    const noCount = filled({ 'readings[0].bands': '', 'readings[1].bands': '' })
    expect(await preview(noCount)).toContain('Enter the count to see the flatness.')
    const half = filled({ pattern: 'saddle', 'readings[1].bands': '' })
    expect(await preview(half)).toContain('A saddle needs both directions.')
    const noFace = await preview(filled({ faceId: '' }))
    expect(noFace).toContain('Choose the face to see the verdict.')
    expect(noFace).not.toContain('>Pass<')
  })

  it('says what is wrong with a count that is no number', async () => {
    expect(await preview(filled({ 'readings[0].bands': '2..5' }))).toContain('Enter a plain number')
    const bent = await preview(filled({ pattern: 'straight', 'readings[0].bands': '1' }))
    expect(bent).toContain('Straight bands count as 0.')
  })

  it('shows an unreadable face as a fail with advice, whatever was counted', async () => {
    const text = await preview(filled({ pattern: 'unreadable', 'readings[0].bands': '' }))
    expect(text).toContain('>Fail<')
    expect(text).toContain('let both come to one temperature')
  })

  it('says that a lamp is out of calibration', async () => {
    app.setNow('2027-02-01T10:00:00.000Z')
    expect(await preview(filled())).toContain('L-01: Calibration overdue.')
  })
})

describe('recording a reading', () => {
  it('records two directions with their text as typed', async () => {
    const answer = await record(filled({ 'readings[0].bands': '2,25', soakMin: '30' }))
    expect(answer.status).toBe(303)
    expect(answer.headers.get('location')).toBe(`${order}?recorded=flatness`)
    const [reading] = readings()
    expect(reading?.directions).toEqual([
      { directionDeg: 0, bands: 2.25, bandsTyped: '2,25' },
      { directionDeg: 90, bands: 1, bandsTyped: '1' },
    ])
    expect(reading).toMatchObject({ form: 'convex', soakMin: 30, recordedAt: testNow })
  })

  it('leads on to the other face when asked', async () => {
    const answer = await record(filled({ after: 'other-face' }))
    const next = `${order}/flatness/new?face=${faceId('stationary-seat')}&recorded=flatness`
    expect(answer.headers.get('location')).toBe(next)
  })

  it('takes an empty second direction as not read', async () => {
    await record(filled({ 'readings[1].bands': '' }))
    expect(readings()[0]?.directions).toHaveLength(1)
  })

  it('takes straight without a count as straight both ways, and with one as that one', async () => {
    const none = { 'readings[0].bands': '', 'readings[1].bands': '' }
    await record(filled({ pattern: 'straight', ...none }))
    expect(readings()[0]).toMatchObject({ bands: 0, form: 'flat' })
    expect(readings()[0]?.directions).toHaveLength(2)
    const one = { formKey: 'b', pattern: 'straight', 'readings[0].bands': '0' }
    await record(filled({ ...one, 'readings[1].bands': '' }))
    expect(readings()[1]?.directions).toHaveLength(1)
  })

  it('records a bow over a spacing', async () => {
    const bow = { 'readings[0].bowMm': '4.5', 'readings[0].spacingMm': '6.0' }
    await record(filled({ ...bow, 'readings[0].bands': '', 'readings[1].bands': '' }))
    // 4.5 / 6.0 = 0.75 bands, exactly.
    expect(readings()[0]).toMatchObject({ bands: 0.75 })
    const both = await record(filled({ ...bow, formKey: 'b' }))
    expect(both.status).toBe(422)
  })

  it('records which way the middle of rings stands', async () => {
    await record(filled({ pattern: 'rings', ringCentre: 'low' }))
    expect(readings()[0]).toMatchObject({ ringCentre: 'low', form: 'concave' })
    await record(filled({ formKey: 'b', pattern: 'rings', ringCentre: '' }))
    expect(readings()[1]).toMatchObject({ ringCentre: null, form: 'undetermined' })
  })

  it('records an unreadable face without a count', async () => {
    const none = { 'readings[0].bands': '', 'readings[1].bands': '' }
    await record(filled({ pattern: 'unreadable', ...none }))
    expect(readings()[0]).toMatchObject({ flatnessUm: null, form: 'unreadable' })
    expect(readings()[0]).toMatchObject({ unreadableCause: null })
  })

  it('keeps why a face could not be read', async () => {
    const none = { 'readings[0].bands': '', 'readings[1].bands': '' }
    await record(filled({ pattern: 'unreadable', unreadableCause: 'wet', ...none }))
    expect(readings()[0]).toMatchObject({ flatnessUm: null, unreadableCause: 'wet' })
  })

  it('records a form that is sent twice once', async () => {
    const first = await record(filled())
    const second = await record(filled())
    expect(second.status).toBe(303)
    expect(second.headers.get('location')).toBe(first.headers.get('location'))
    expect(readings()).toHaveLength(1)
  })

  it.each([
    ['faceId', '', 'Choose the face.'],
    ['faceId', '99999', 'This is not in the records.'],
    ['condition', '', 'Choose as found or as left.'],
    ['pattern', '', 'Choose what the bands look like.'],
    ['pattern', 'wavy', 'Choose one of:'],
    ['readings[0].bands', '', 'Enter the count, such as 1.25'],
    ['readings[0].bands', 'two', 'Enter a plain number'],
    ['readings[0].bands', '-0.25', 'A count is 0 or more.'],
    ['readings[0].bands', '100', 'Enter a value from 0 to 99.75.'],
    ['readings[1].bands', '1e1', 'Enter a plain number'],
    ['lampInstrumentId', '', 'Choose the lamp.'],
    ['opticalFlatInstrumentId', '', 'Choose the optical flat.'],
    ['viewingAngleDeg', '81', 'Enter a value from 0 to 80.'],
    ['viewingAngleDeg', '-1', 'Enter a value from 0 to 80.'],
    ['soakMin', '-1', 'Enter a value from 0 to 2880.'],
    [
      'temperatureC',
      '451',
      'This is outside the usual range of the trade, -200 to 450 (common practice',
    ],
    ['temperatureC', '-274', 'Enter a value from -273.15 to 3000.'],
    ['note', 'x'.repeat(1001), 'Enter at most 1000 characters.'],
  ])('refuses %s "%s" beside the field and keeps what was typed', async (name, value, says) => {
    // With both counts empty the first one is asked for; else the second would stand alone.
    const more = name === 'readings[0].bands' && value === '' ? { 'readings[1].bands': '' } : {}
    const answer = await record(filled({ ...more, [name]: value, note: value || 'kept' }))
    expect(answer.status).toBe(422)
    const page = await answer.text()
    expect(page).toContain(says)
    expect(page).toContain('What you typed is still here')
    expect(page).toContain('value="a-key"')
    expect(readings()).toHaveLength(0)
  })

  it('gives back what was typed, escaped', async () => {
    const page = await (
      await record(filled({ 'readings[0].bands': '"><b>', note: '</textarea><b>' }))
    ).text()
    expect(page).toContain('value="&quot;&gt;&lt;b&gt;"')
    expect(page).toContain('&lt;/textarea&gt;&lt;b&gt;')
  })

  it('refuses the lamp where the flat is asked', async () => {
    const answer = await record(filled({ opticalFlatInstrumentId: String(shop.lamp.id) }))
    expect(await answer.text()).toContain('Choose an instrument of the right kind.')
  })
})

describe('correcting a reading', () => {
  it('opens filled with the earlier reading and records what it replaces and why', async () => {
    await record(filled({ 'readings[0].bands': '2,25', note: 'by the window' }))
    const id = readings()[0]!.id
    const page = await open(`?replaces=${id}`)
    expect(page).toMatch(/name="readings\[0\]\.bands"[^>]*value="2,25"/)
    expect(page).toContain('by the window')
    expect(page).toContain(`name="replacesId" value="${id}"`)
    const correction = filled({ formKey: 'b', replacesId: String(id), reason: '' })
    const refused = await record(correction)
    expect(refused.status).toBe(422)
    expect(await refused.text()).toContain('Say why the earlier record is replaced.')
    await record({ ...correction, reason: 'counted the wrong band' })
    expect(readings()[1]).toMatchObject({ replacesId: id, reason: 'counted the wrong band' })
    expect((await app.get(`${order}/flatness/new?replaces=${id}`, 'tess')).status).toBe(409)
  })

  it('fills a bow over a spacing back into its two fields', async () => {
    const bow = { 'readings[0].bowMm': '4.5', 'readings[0].spacingMm': '6.0' }
    await record(filled({ ...bow, 'readings[0].bands': '' }))
    const page = await open(`?replaces=${readings()[0]!.id}`)
    expect(page).toMatch(/name="readings\[0\]\.bowMm"[^>]*value="4\.5"/)
    expect(page).toMatch(/name="readings\[0\]\.bands"[^>]*value=""/)
  })

  it('knows no reading of another order', async () => {
    const second = anotherOrder(shop)
    doTheWork(shop, second)
    const stranger = listFlatnessReadings(shop.store, second.id)[0]!.id
    for (const id of [stranger, 'x', 99_999]) {
      const answer = await app.get(`${order}/flatness/new?replaces=${id}`, 'tess')
      expect(answer.status).toBe(404)
    }
    const form = filled({ replacesId: String(stranger), reason: 'wrong' })
    expect((await record(form)).status).toBe(409)
    expect(readings()).toHaveLength(0)
  })
})
