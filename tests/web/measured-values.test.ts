import { beforeEach, describe, expect, it } from 'vitest'
import { addLapCycle } from '../../src/store/add-lap-cycle.ts'
import { addLimitSet } from '../../src/store/add-limit-set.ts'
import { listMeasuredValues } from '../../src/store/list-measured-values.ts'
import { requireWorkOrder } from '../../src/store/require-work-order.ts'
import { buildLimitSet } from '../support/build-limit-set.ts'
import { approved, buildShop, newLimitSet, type Shop } from '../support/build-shop.ts'
import { actorOf, operator } from '../support/cast.ts'
import {
  addMeasuringInstruments,
  type MeasuringInstruments,
} from '../support/measuring-instruments.ts'
import { anotherOrder, freshCycle, workAndHandOver, workAndRelease } from '../support/shop-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
let bench: MeasuringInstruments
beforeEach(() => {
  shop = buildShop()
  bench = addMeasuringInstruments(shop)
  app = testApp(shop.store)
})

const order = '/work-orders/W-2026-0001'
const values = (id = shop.workOrder.id) => listMeasuredValues(shop.store, id)
const face = (kind = 'rotating-face') =>
  String(shop.seal.components.find((one) => one.kind === kind)!.id)

/** As the form of run-outs and fits sends it: six fields for readings, of which one is filled. */
const runOut = (changes: Record<string, string> = {}): Record<string, string> => ({
  formKey: 'a-key',
  characteristic: 'shaft-run-out',
  condition: 'as-left',
  'readings[0].value': '0.04',
  'readings[1].value': '',
  'readings[2].value': '',
  unit: 'mm',
  sizeMm: '',
  instrumentId: String(bench.dial.id),
  leverAngleDeg: '',
  note: '',
  ...changes,
})
const finish = (changes: Record<string, string> = {}): Record<string, string> => ({
  formKey: 'a-key',
  characteristic: 'roughness',
  componentId: face(),
  condition: 'as-left',
  'readings[0].value': '0.12',
  unit: 'um',
  instrumentId: String(bench.profilometer.id),
  cutOffMm: '',
  note: '',
  ...changes,
})
const record = (form: Record<string, string>, at = order, as = 'tess') =>
  app.post(`${at}/measured-values`, form, as)
const preview = async (form: Record<string, string>, at = order) =>
  (await app.post(`${at}/measured-values/preview`, form, 'tess')).text()
const open = async (query = '', at = order) =>
  (await app.get(`${at}/measured-values/new${query}`, 'tess')).text()

/** Judged by 0.125 mm for run-out, 0.4 µm for carbon, 0.5 µm per mm of bore for squareness. */
function limitedOrder(): string {
  const [blank] = buildLimitSet().limits.map(({ id: _, limitSetId: __, ...limit }) => limit)
  const limit = (characteristic: 'shaft-run-out' | 'roughness' | 'chamber-face-squareness') => ({
    ...blank!,
    characteristic,
    faceMaterial: null,
    asWritten: '0.125 mm',
    source: 'test',
  })
  const limits = [
    { ...limit('shaft-run-out'), upper: 125 },
    { ...limit('chamber-face-squareness'), upper: 0.5, perMmOf: 'bore' as const },
    { ...limit('roughness'), faceMaterial: 'carbon-graphite', upper: 0.4 },
  ]
  const draft = addLimitSet(shop.store, newLimitSet({ version: 2, limits }), operator)
  const { id } = approved(shop.store, draft, shop.cast.ian)
  return `/work-orders/${anotherOrder(shop, { limitSetId: id }).number}`
}

describe('the form of a measured value', () => {
  it('warns of a machine that can start before it asks a number', async () => {
    const page = await open()
    const warned = page.indexOf('Caution: a machine that can start')
    expect(warned).toBeGreaterThan(0)
    expect(warned).toBeLessThan(page.indexOf('name="readings[0].value"'))
    expect(page).toContain('Turn the shaft by hand only')
    expect(page).toContain('The site rules and local codes come first.')
    expect(page).toContain('value="register-concentricity"')
    expect(page).not.toContain('name="componentId"')
  })

  it('asks of a finish which face, and of nothing that belongs to a machine', async () => {
    const page = await open('?characteristic=roughness')
    expect(page).toContain('<input type="hidden" name="characteristic" value="roughness"/>')
    expect(page).toContain('name="componentId"')
    const traced = ['evaluationLengthMm', 'tipRadiusUm', 'traceDirection', 'faceState']
    for (const name of ['cutOffMm', ...traced]) expect(page).toContain(`name="${name}"`)
    for (const name of ['sizeMm', 'leverAngleDeg', 'temperatureHalfWidthK']) {
      expect(page).not.toContain(`name="${name}"`)
    }
    expect(page).not.toContain('a machine that can start')
    expect(page).toContain('>P-01 ')
    expect(page).not.toContain('>D-01 ')
  })

  it('asks of a height what it was set on and at which temperature', async () => {
    const page = await open('?characteristic=face-height')
    expect(page).toMatch(/value="face-height"[^>]*checked/)
    expect(page).toContain('name="settingStandardUncertaintyUm"')
    expect(page).toContain('name="temperatureHalfWidthK"')
    expect(page).toContain('>M-01 ')
  })

  it('remembers instrument and unit of the like, and no reading', async () => {
    await record(runOut({ unit: 'graduations', 'readings[0].value': '4' }))
    const page = await open()
    expect(page).toContain(`<option value="${bench.dial.id}" selected`)
    expect(page).toContain('<option value="graduations" selected')
    expect(page).toMatch(/name="readings\[0\].value"[^>]*value=""/)
    expect(await open('?characteristic=roughness')).toContain('<option value="um" selected')
  })

  it('shows the limits that can apply', async () => {
    const at = limitedOrder()
    expect(await open('', at)).toContain('0.125 mm')
    expect(await open('?characteristic=roughness', at)).toContain('Roughness Ra, rotating face')
    expect(await open()).toContain('The limit set has no limit for this.')
  })

  it('is refused once the order is handed over or released, and unknown for no order', async () => {
    workAndHandOver(shop)
    expect((await app.get(`${order}/measured-values/new`, 'tess')).status).toBe(409)
    expect((await record(runOut())).status).toBe(409)
    const other = anotherOrder(shop)
    workAndRelease(shop, other)
    expect((await record(runOut(), `/work-orders/${other.number}`)).status).toBe(409)
    expect(values()).toHaveLength(0)
    expect((await app.get('/work-orders/W-2026-9999/measured-values/new', 'tess')).status).toBe(404)
  })

  it('is the technician’s alone', async () => {
    for (const as of ['ian', 'mo', 'cora', 'olga']) {
      expect((await record(runOut(), order, as)).status, as).toBe(403)
      expect((await app.get(`${order}/measured-values/new`, as)).status, as).toBe(403)
    }
    expect(values()).toHaveLength(0)
  })
})

describe('the answer while a finish is entered', () => {
  it('tells the largest trace and the 16 % rule beside the mean, where there is a limit', async () => {
    const at = limitedOrder()
    const traces = { 'readings[1].value': '0.45', 'readings[2].value': '0.3' }
    const text = await preview(finish(traces), at)
    expect(text).toContain('Largest trace')
    expect(text).toContain('0.450 µm')
    expect(text).toContain('16 % rule (ISO 4288, from memory)')
    expect(text).toContain('decided with 6 traces, 1 of 3 above the limit')
    const alone = await preview(finish(), at)
    expect(alone).toContain('kept, none above the limit')
    expect(alone).not.toContain('Largest trace')
    expect(await preview(finish(traces))).not.toContain('16 % rule')
  })

  it('holds how the face is said to be against the lapping log', async () => {
    expect(await preview(finish())).not.toContain('Face by the lapping log')
    const { store, cast } = shop
    addLapCycle(store, freshCycle(shop, { purpose: 'polish' }), actorOf(cast.tess))
    expect(await preview(finish())).toMatch(/Face by the lapping log<\/dt><dd[^>]*>polished, 20/)
    expect(await preview(finish({ faceState: 'polished' }))).not.toContain('not as you say')
    expect(await preview(finish({ faceState: 'matted' }))).toContain('not as you say')
    const other = [{ condition: 'as-found' }, { componentId: face('stationary-seat') }]
    for (const one of other) {
      expect(await preview(finish(one))).not.toContain('Face by the lapping log')
    }
  })

  it('stands on the order with how it was traced, and on which face', async () => {
    const said = {
      cutOffMm: '0.25',
      evaluationLengthMm: '1.25',
      traceDirection: 'radial',
      tipRadiusUm: '2',
      faceState: 'polished',
    }
    expect((await record(finish(said))).status).toBe(303)
    const page = await (await app.get(order, 'tess')).text()
    expect(page).toContain(
      'cut-off 0.25 mm, evaluated over 1.25 mm, traced radially, stylus of 2 µm radius, read on the polished face',
    )
    const again = await open(`?replaces=${values()[0]?.id}`)
    expect(again).toMatch(/value="polished" selected/)
    expect(again).toMatch(/name="evaluationLengthMm"[^>]*value="1.25"/)
  })
})

describe('the answer while the value is entered', () => {
  it('asks for what is missing, and says what is wrong', async () => {
    expect(await preview(runOut({ characteristic: '' }))).toContain('Choose what was measured')
    expect(await preview(runOut({ 'readings[0].value': '' }))).toContain('Enter the reading to see')
    expect(await preview(runOut({ instrumentId: '' }))).toContain('Choose the instrument')
    expect(await preview(runOut({ 'readings[0].value': '4 mm' }))).toContain('Enter a plain number')
    expect(await preview(finish({ componentId: '' }))).toContain('its material decides')
    expect(values()).toHaveLength(0)
  })

  it('gives the verdict with its limit and source', async () => {
    const at = limitedOrder()
    const text = await preview(runOut({ 'readings[0].value': '0.25' }), at)
    expect(text).toContain('>Fail<')
    expect(text).toContain('0.125 mm. House rule: test')
    expect(await preview(runOut({ 'readings[0].value': '0.01' }), at)).toContain('>Pass<')
    expect(await preview(finish(), at)).toContain('>Pass<')
    // The seat is of another material, for which the set has none.
    expect(await preview(finish({ componentId: face('stationary-seat') }), at)).toContain(
      '>Not judged<',
    )
  })

  it('says where the instrument is too coarse, or the bore was not stated', async () => {
    const at = limitedOrder()
    // A dial good to 0.013 mm: U = 2 · √2 · √(0.013²/3 + 0.01²/12) = 0.0227 mm, a fifth of the
    // limit; on a limit of 0.05 mm it is nearly half, and the set allows a third.
    expect(await preview(runOut({ 'readings[0].value': '0.05' }), at)).toContain('0.050 ± 0.023')
    const square = runOut({ characteristic: 'chamber-face-squareness' })
    expect(await preview(square, at)).toContain('a size that was not stated')
    // 0.5 µm per mm of 140 mm.
    const stated = await preview({ ...square, sizeMm: '140', 'readings[0].value': '0.03' }, at)
    expect(stated).toContain('Limit ≤ 0.070 mm')
    expect(stated).toContain('>Pass<')
  })

  it('is the mean of all readings', async () => {
    const text = await preview(runOut({ 'readings[1].value': '0.05', 'readings[2].value': '0.06' }))
    expect(text).toMatch(/>0\.050\d* ± 0\.\d+</)
    expect(text).toContain('3 readings')
  })

  it('says that the instrument is out of calibration', async () => {
    app.setNow('2027-02-01T10:00:00.000Z')
    expect(await preview(runOut())).toContain('D-01: Calibration overdue.')
  })
})

describe('recording a measured value', () => {
  it('records it once, as typed, and leaves the stage of a check at the machine', async () => {
    const first = await record(runOut({ 'readings[0].value': '0,04' }))
    expect(first.status).toBe(303)
    expect(first.headers.get('location')).toBe(`${order}?recorded=measured-value`)
    const again = await record(runOut({ 'readings[0].value': '0,04' }))
    expect(again.headers.get('location')).toBe(first.headers.get('location'))
    expect(values()).toMatchObject([
      {
        characteristic: 'shaft-run-out',
        valueUm: 40,
        readings: [{ um: 40, typed: '0,04' }],
        method: 'dial/figure 2',
        instrument: { number: 'D-01', status: 'in-calibration' },
        recordedByName: 'Tess Turner',
      },
    ])
    const stage = () => requireWorkOrder(shop.store, 'W-2026-0001', shop.cast.tess).stage
    expect(stage()).toBe('received')
    await record(finish({ formKey: 'b-key' }))
    expect(stage()).toBe('lapping')
  })

  it('shows it on the page of the order, and on a page of its own', async () => {
    await record(finish())
    const page = await (await app.get(order, 'tess')).text()
    expect(page).toContain('Roughness Ra')
    expect(page).toMatch(/0\.120\d* ± 0\.\d+ µm/)
    expect(page).toContain('P-01')
    const id = values()[0]!.id
    expect(page).toContain(`href="${order}/measured-values/new?replaces=${id}"`)
    const result = await app.get(`${order}/results/measured-value/${id}`, 'tess')
    expect(result.status).toBe(200)
    expect(await result.text()).toContain('roughness/figure 2')
  })

  it('compacts readings with a gap, and keeps all', async () => {
    await record(runOut({ 'readings[2].value': '0.06' }))
    expect(values()[0]?.readings.map((one) => one.typed)).toEqual(['0.04', '0.06'])
  })

  it.each([
    ['characteristic', '', 'Choose what was measured.'],
    ['characteristic', 'length', 'Choose what was measured.'],
    ['condition', '', 'Say whether it was measured as it came in or as it leaves.'],
    ['readings[0].value', '', 'Enter the reading.'],
    ['readings[0].value', '0x10', 'Enter a plain number'],
    ['readings[0].value', '-0.01', 'Enter a value from 0 to 1000.'],
    ['readings[0].value', '1001', 'Enter a value from 0 to 1000.'],
    ['readings[1].value', 'x', 'Enter a plain number'],
    ['unit', '', 'Choose what the instrument reads in.'],
    ['unit', 'ft', 'Choose one of: um, mm, in, uin, graduations.'],
    ['sizeMm', '0.5', 'Enter a value from 1 to 5000.'],
    ['sizeMm', '5001', 'Enter a value from 1 to 5000.'],
    ['leverAngleDeg', '10', 'Only a lever indicator that reads a movement has an angle.'],
    ['instrumentId', '', 'Choose the instrument that it was read with.'],
    ['instrumentId', '99999', 'This is not in the records.'],
    ['note', 'x'.repeat(1001), 'Enter at most 1000 characters.'],
  ])('refuses %s "%s" beside the field', async (name, value, says) => {
    const answer = await record(runOut({ [name]: value }))
    expect(answer.status).toBe(422)
    const page = await answer.text()
    expect(page).toContain(says)
    expect(page).toContain('value="a-key"')
    expect(values()).toHaveLength(0)
  })

  it.each([
    ['componentId', '', 'Choose the face that was measured.'],
    ['componentId', '99999', 'This is not a face of the seal.'],
    ['cutOffMm', '0', 'Enter a value from 0.01 to 25.'],
    ['cutOffMm', '26', 'Enter a value from 0.01 to 25.'],
    ['evaluationLengthMm', '0.01', 'Enter a length from the cut-off up'],
    ['faceState', 'shiny', 'Choose one of: lapped, polished, matted.'],
  ])('refuses %s "%s" of a finish beside the field', async (name, value, says) => {
    const answer = await record(finish({ [name]: value }))
    expect(answer.status).toBe(422)
    expect(await answer.text()).toContain(says)
    expect(values()).toHaveLength(0)
  })

  it('asks to confirm what lies beyond the window, and takes it once confirmed', async () => {
    const far = runOut({ 'readings[0].value': '5.1' })
    const page = await (await record(far)).text()
    expect(page).toContain('0 to 5 (common practice, no source)')
    expect(page).toMatch(/type="checkbox"[^>]*confirmBeyondWindow/)
    expect((await record({ ...far, confirmBeyondWindow: 'yes' })).status).toBe(303)
    expect(values()[0]?.valueUm).toBeCloseTo(5100, 9) // rounding of doubles
  })

  it('gives back what was typed, escaped', async () => {
    const page = await (await record(runOut({ 'readings[0].value': '"><b>', note: '<b>' }))).text()
    expect(page).toContain('value="&quot;&gt;&lt;b&gt;"')
    expect(page).toContain('&lt;b&gt;</textarea>')
    expect(page).not.toContain('"><b>')
  })
})

describe('correcting a measured value', () => {
  it('opens filled, asks why, and records what it replaces', async () => {
    await record(runOut({ 'readings[1].value': '0.05', sizeMm: '140' }))
    const id = values()[0]!.id
    const page = await open(`?replaces=${id}`)
    expect(page).toContain('Correct a run-out or fit')
    expect(page).toMatch(/name="readings\[1\].value"[^>]*value="0\.05"/)
    expect(page).toMatch(/name="sizeMm"[^>]*value="140"/)
    const correction = runOut({ formKey: 'b', replacesId: String(id), reason: '' })
    expect((await record(correction)).status).toBe(422)
    await record({ ...correction, reason: 'read from the wrong side' })
    expect(values()[1]).toMatchObject({ replacesId: id, reason: 'read from the wrong side' })
    expect((await app.get(`${order}/measured-values/new?replaces=${id}`, 'tess')).status).toBe(409)
    const traveller = await (await app.get(order, 'tess')).text()
    expect(traveller).toMatch(/<s>0\.045\d* ± 0\.\d+ mm<\/s>/)
    expect(traveller).toContain('read from the wrong side')
  })

  it('knows no value of another order', async () => {
    const other = anotherOrder(shop)
    await record(runOut(), `/work-orders/${other.number}`)
    const stranger = values(other.id)[0]!.id
    const answer = await app.get(`${order}/measured-values/new?replaces=${stranger}`, 'tess')
    expect(answer.status).toBe(404)
  })
})
