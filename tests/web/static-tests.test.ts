import { beforeEach, describe, expect, it } from 'vitest'
import { addLimitSet } from '../../src/store/add-limit-set.ts'
import { listStaticTests } from '../../src/store/list-static-tests.ts'
import { buildLimitSet } from '../support/build-limit-set.ts'
import { approved, buildShop, newLimitSet, type Shop } from '../support/build-shop.ts'
import { operator } from '../support/cast.ts'
import { anotherOrder, doTheWork, workAndHandOver } from '../support/shop-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
beforeEach(() => {
  shop = buildShop()
  app = testApp(shop.store)
})

const order = '/work-orders/W-2026-0001'
const tests = () => listStaticTests(shop.store, shop.workOrder.id)

/**
 * A worked example of the pressure-change formula: 5 L from 271.325 kPa at 21 °C to 268.1 kPa at
 * 20.5 °C in 600 s.
 */
const filled = (changes: Record<string, string> = {}): Record<string, string> => ({
  formKey: 'a-key',
  section: 'whole',
  startPressure: '271.325',
  endPressure: '268.100',
  pressureUnit: 'kPa',
  pressureReference: 'absolute',
  barometerKPa: '101.325',
  startTemperatureC: '21',
  endTemperatureC: '20.5',
  startedAt: '2026-11-25T09:30',
  durationMin: '10',
  durationS: '',
  volumeL: '5',
  stabilisationS: '',
  gaugeInstrumentId: String(shop.gauge.id),
  thermometerInstrumentId: '',
  note: '',
  ...changes,
})
const record = (form: Record<string, string>) => app.post(`${order}/static-tests`, form, 'tess')
const preview = async (form: Record<string, string>) =>
  (await app.post(`${order}/static-tests/preview`, form, 'tess')).text()
const open = async (query = '') =>
  (await app.get(`${order}/static-tests/new${query}`, 'tess')).text()

describe('the form of a static test', () => {
  it('warns of gas under pressure before it asks a number', async () => {
    const page = await open()
    const warned = page.indexOf('Caution: gas under pressure')
    expect(warned).toBeGreaterThan(0)
    expect(warned).toBeLessThan(page.indexOf('name="startPressure"'))
    expect(page).toContain('Not the size of the seal, and not the supply bottle.')
  })

  it('remembers gauge, unit and volume of the last test, and no reading', async () => {
    await record(filled({ thermometerInstrumentId: String(shop.thermometer.id) }))
    const page = await open()
    expect(page).toContain(`<option value="${shop.gauge.id}" selected`)
    expect(page).toContain(`<option value="${shop.thermometer.id}" selected`)
    expect(page).toContain('<option value="absolute" selected')
    expect(page).toMatch(/name="volumeL"[^>]*value="5"/)
    expect(page).toMatch(/name="startPressure"[^>]*value=""/)
  })

  it('is refused once the order is handed over, and unknown for no order', async () => {
    workAndHandOver(shop)
    const count = tests().length
    expect((await app.get(`${order}/static-tests/new`, 'tess')).status).toBe(409)
    expect((await record(filled())).status).toBe(409)
    expect(tests()).toHaveLength(count)
    expect((await app.get('/work-orders/W-2026-9999/static-tests/new', 'tess')).status).toBe(404)
  })
})

describe('a volume by expansion', () => {
  // Of the facts: 300, 180 and 101.325 kPa from one litre make 1.525 L.
  const expanded = (changes: Record<string, string> = {}) =>
    filled({
      volumeL: '',
      knownVolumeL: '1',
      filledPressure: '300',
      beforePressure: '101.325',
      joinedPressure: '180',
      ...changes,
    })

  it('is computed, told, kept as typed, and taken into a correction', async () => {
    expect(await preview(expanded())).toContain('1.525 L')
    await record(expanded())
    const [test] = tests()
    expect(test?.volumeL).toBeCloseTo(1.525, 3)
    expect(test?.expansion).toMatchObject({
      knownVolumeL: 1,
      joinedKPaAbs: 180,
      typed: { filled: '300', before: '101.325' },
    })
    expect(await (await app.get(order, 'tess')).text()).toContain('1.525 L by expansion')
    const correction = await open(`?replaces=${test?.id}`)
    expect(correction).toMatch(/name="filledPressure"[^>]*value="300"/)
    expect(correction).toMatch(/name="volumeL"[^>]*value=""/)
    const gauge = { pressureReference: 'gauge', beforePressure: '0', filledPressure: '198.675' }
    await record(
      expanded({
        ...gauge,
        joinedPressure: '78.675',
        startPressure: '170',
        endPressure: '169',
        formKey: 'b',
      }),
    )
    expect(tests()[1]?.volumeL).toBeCloseTo(1.525, 3)
  })

  it('is refused beside the pressure that no opening gives, and beside a stated volume', async () => {
    for (const [change, sentence] of [
      [{ joinedPressure: '310' }, 'must lie between the two before it'],
      [{ joinedPressure: '101.325' }, 'must lie between the two before it'],
      [{ volumeL: '5' }, 'The volume follows from the expansion'],
      [{ knownVolumeL: '' }, 'Enter a value.'],
    ] as const) {
      const refused = await record(expanded(change))
      expect(refused.status).toBe(422)
      expect(await refused.text()).toContain(sentence)
    }
    expect(tests()).toEqual([])
  })
})

describe('where it leaks', () => {
  it('is asked, kept, shown on the order and taken into a correction', async () => {
    expect(await open()).toContain('Where does it leak?')
    await record(filled({ leakPlace: 'between-faces' }))
    expect(tests()[0]?.leakPlace).toBe('between-faces')
    const page = await (await app.get(order, 'tess')).text()
    expect(page).toContain('leak: between the faces')
    const correction = await open(`?replaces=${tests()[0]?.id}`)
    expect(correction).toContain('<option value="between-faces" selected')
  })

  it('stays open where nobody looked, and is no word of ours', async () => {
    await record(filled({ leakPlace: '' }))
    expect(tests()[0]?.leakPlace).toBeNull()
    const refused = await record(filled({ leakPlace: 'attic' }))
    expect(refused.status).toBe(422)
    expect(tests()).toHaveLength(1)
  })
})

describe('what is told before the gas is let in', () => {
  const planned = (changes: Record<string, string> = {}) =>
    preview(filled({ endPressure: '', endTemperatureC: '', volumeL: '28', ...changes }))

  it('is the energy of the gas, with its caution, as soon as start and volume stand', async () => {
    const text = await planned({ durationMin: '' })
    expect(text).toContain('4.66 kJ, as much as 1.09 g of TNT') // E24 of the facts
    expect(text).toContain('shield, relief valve and distance by the site rules')
    expect(text).not.toContain('Smallest leak that it can see')
    expect(await planned({ startPressure: '' })).not.toContain('Energy of the gas')
    expect(await planned({ volumeL: 'much' })).not.toContain('Energy of the gas')
    expect(await planned({ startPressure: '50' })).toContain('0 J')
  })

  it('is the smallest leak, once the hold time stands, and stays beside the answer', async () => {
    const uncertain = { pressureUncertaintyPa: '30' }
    expect(await planned(uncertain)).toContain('Smallest leak that it can see')
    expect(await preview(filled(uncertain))).toContain('Before the gas is let in')
  })

  it('is a longer hold where the limit can’t be seen', async () => {
    const limits = buildLimitSet().limits.map(({ id: _, limitSetId: __, ...limit }) =>
      limit.characteristic === 'flatness'
        ? limit
        : ({ ...limit, characteristic: 'static-leak-rate', upper: 0.1 } as const),
    )
    const draft = addLimitSet(shop.store, newLimitSet({ version: 2, limits }), operator)
    const { id } = approved(shop.store, draft, shop.cast.ian)
    anotherOrder(shop, { limitSetId: id })
    const ask = async (changes: Record<string, string>) => {
      const form = filled({ endPressure: '', endTemperatureC: '', volumeL: '28', ...changes })
      const path = '/work-orders/W-2026-0002/static-tests/preview'
      return (await app.post(path, form, 'tess')).text()
    }
    // 3.29 x 28 L x sqrt 2 x 100 Pa / 60 s = 0.217 Pa m3/s: the limit takes 2.2 times the hold.
    const short = await ask({ pressureUncertaintyPa: '100', durationMin: '1' })
    expect(short).toContain('can’t tell a leak of the limit, 0.10')
    expect(short).toContain('Hold for 3 min or longer')
    expect(await ask({ pressureUncertaintyPa: '100', durationMin: '3' })).not.toContain(
      'can’t tell',
    )
  })
})

describe('the answer while the test is entered', () => {
  it('shows leak rate, drop, verdicts and what temperature did', async () => {
    const text = await preview(filled())
    // 0.022992 Pa·m³/s at 20 °C, 13.615 mL/min; without temperature 0.026875 Pa·m³/s.
    expect(text).toContain('>0.0230<')
    expect(text).toContain('13.6 mL/min')
    expect(text).toContain('0.230 mbar·L/s')
    expect(text).toContain('0.0269 Pa·m³/s')
    // The drop is 3.225 kPa, printed half away from zero, within 14 kPa; no limit of leak rate.
    expect(text).toContain('3.23 kPa')
    expect(text).toContain('>Pass<')
    expect(text).toContain('>Not judged<')
    expect(text).toContain('2 psi in 5 min. House rule: test')
    expect(tests()).toHaveLength(0)
  })

  it('says nothing of temperature where it stayed', async () => {
    const text = await preview(filled({ endTemperatureC: '21' }))
    expect(text).not.toContain('Without regard to temperature')
  })

  it('judges no drop of a volume that the limit is not written for', async () => {
    const text = await preview(filled({ volumeL: '30' }))
    expect(text).not.toContain('>Pass<')
    expect(text).toContain('The volume is larger than the limit is written for')
  })

  it('judges no drop of a hold that began below the pressure of the limit', async () => {
    const limits = buildLimitSet().limits.map(({ id: _, limitSetId: __, ...limit }) => ({
      ...limit,
      startAtLeastKPaGauge: limit.characteristic === 'static-drop' ? 170 : null,
    }))
    const draft = addLimitSet(shop.store, newLimitSet({ version: 2, limits }), operator)
    const { id } = approved(shop.store, draft, shop.cast.ian)
    anotherOrder(shop, { limitSetId: id })
    const form = '/work-orders/W-2026-0002/static-tests'
    const page = await (await app.get(`${form}/new`, 'tess')).text()
    expect(page).toContain('started at 170.0 kPa gauge or above')
    const low = filled({ startPressure: '20', endPressure: '19.9', pressureReference: 'gauge' })
    const text = await (await app.post(`${form}/preview`, low, 'tess')).text()
    expect(text).not.toContain('>Pass<')
    expect(text).toContain('The hold started below the pressure the limit is written for')
    const right = filled({ startPressure: '170', endPressure: '169', pressureReference: 'gauge' })
    expect(await (await app.post(`${form}/preview`, right, 'tess')).text()).toContain('>Pass<')
  })

  it('says that a rise is to be looked into', async () => {
    const text = await preview(filled({ endPressure: '275' }))
    expect(text).toContain('There is more gas at the end than at the start.')
    expect(text).toContain('−')
  })

  it('asks for what is missing, and says what is wrong', async () => {
    expect(await preview(filled({ volumeL: '' }))).toContain('Enter both pressures')
    expect(await preview(filled({ volumeL: '5 L' }))).toContain('Enter a plain number')
  })

  it('says that the gauge is out of calibration on the day of the test', async () => {
    app.setNow('2027-02-01T10:00:00.000Z')
    const text = await preview(filled({ startedAt: '2027-02-01T09:00' }))
    expect(text).toContain('G-01: Calibration overdue.')
  })
})

describe('recording a static test', () => {
  it('records gauge pressures in their unit, and once', async () => {
    const form = filled({
      pressureUnit: 'bar',
      pressureReference: 'gauge',
      startPressure: '1,70',
      endPressure: '1,68',
    })
    const first = await record(form)
    expect(first.status).toBe(303)
    expect(first.headers.get('location')).toBe(`${order}?recorded=static-test`)
    expect((await record(form)).headers.get('location')).toBe(first.headers.get('location'))
    expect(tests()).toHaveLength(1)
    // 1.70 bar over 101.325 kPa is 271.325 kPa; 1e-9 allows for the binary sum.
    expect(tests()[0]?.startPressureKPaAbs).toBeCloseTo(271.325, 9)
    expect(tests()[0]?.typed.startPressure).toBe('1,70')
  })

  it.each([
    ['section', '', 'Choose the part that was under pressure.'],
    ['startPressure', '', 'Enter the pressure at the start.'],
    ['startPressure', '-1', 'Enter a value from 0 to 100000.'],
    ['endPressure', '100001', 'Enter a value from 0 to 100000.'],
    ['endPressure', '0x10', 'Enter a plain number'],
    ['pressureUnit', 'atm', 'Choose one of: kPa, bar, mbar, psi, MPa.'],
    ['pressureReference', '', 'Enter a value.'],
    ['barometerKPa', '59', 'Enter a value from 60 to 110.'],
    ['barometerKPa', '111', 'Enter a value from 60 to 110.'],
    ['startTemperatureC', '', 'Enter the temperature at the start.'],
    ['startTemperatureC', '-300', 'Nothing is colder'],
    ['endTemperatureC', '451', 'This is outside the usual range of the trade, -200 to 450'],
    ['endTemperatureC', '2001', 'Enter a value from -270 to 2000.'],
    ['durationMin', '', 'Enter how long the gas was shut in.'],
    ['durationS', '604801', 'Enter a value from'],
    ['startedAt', '2026-11-25T09:55', 'The hold must be over before it is recorded.'],
    ['startedAt', '2026-06-01T09:00', 'The hold can’t have begun before the seal came in.'],
    ['volumeL', '', 'Enter the volume that was shut in.'],
    ['volumeL', '0', 'Enter a value from 0.001 to 10000.'],
    ['volumeL', '10001', 'Enter a value from 0.001 to 10000.'],
    ['stabilisationS', '-1', 'Enter a value from 0 to 604800.'],
    ['gaugeInstrumentId', '', 'Choose the pressure gauge.'],
    ['thermometerInstrumentId', '99999', 'This is not in the records.'],
    ['note', 'x'.repeat(1001), 'Enter at most 1000 characters.'],
  ])('refuses %s "%s" beside the field', async (name, value, says) => {
    const answer = await record(filled({ [name]: value }))
    expect(answer.status).toBe(422)
    const page = await answer.text()
    expect(page).toContain(says)
    expect(page).toContain('value="a-key"')
    expect(tests()).toHaveLength(0)
  })

  it('asks to confirm a temperature beyond the window, and takes it once confirmed', async () => {
    const hot = filled({ endTemperatureC: '451' })
    expect(await (await record(hot)).text()).toMatch(/type="checkbox"[^>]*confirmBeyondWindow/)
    expect((await record({ ...hot, confirmBeyondWindow: 'yes' })).status).toBe(303)
    expect(tests()[0]?.endTemperatureC).toBe(451)
  })

  it('gives back what was typed, escaped', async () => {
    const page = await (await record(filled({ startPressure: '"><b>', note: '<b>' }))).text()
    expect(page).toContain('value="&quot;&gt;&lt;b&gt;"')
    expect(page).toContain('&lt;b&gt;</textarea>')
  })
})

describe('correcting a static test', () => {
  it('opens filled, asks why, and records what it replaces', async () => {
    await record(filled())
    const id = tests()[0]!.id
    const page = await open(`?replaces=${id}`)
    expect(page).toMatch(/name="startPressure"[^>]*value="271\.325"/)
    expect(page).toMatch(/name="durationS"[^>]*value="600"/)
    const correction = filled({ formKey: 'b', replacesId: String(id), reason: '' })
    expect((await record(correction)).status).toBe(422)
    await record({ ...correction, reason: 'gauge misread' })
    expect(tests()[1]).toMatchObject({ replacesId: id, reason: 'gauge misread' })
    expect((await app.get(`${order}/static-tests/new?replaces=${id}`, 'tess')).status).toBe(409)
  })

  it('knows no test of another order', async () => {
    const second = anotherOrder(shop)
    doTheWork(shop, second)
    const stranger = listStaticTests(shop.store, second.id)[0]!.id
    const answer = await app.get(`${order}/static-tests/new?replaces=${stranger}`, 'tess')
    expect(answer.status).toBe(404)
  })
})

it('the summary of what was refused names the field of a general sentence', async () => {
  const { post, path } = deskForSummary()
  const text = await (await post(path, { volumeL: 'lots', startPressure: '' }, 'tess')).text()
  expect(text).toContain('Shut-in volume: Enter a plain number')
  expect(text).not.toContain('Pressure at the start: Enter the pressure at the start.')
})

function deskForSummary() {
  const shop = buildShop()
  const { post } = testApp(shop.store)
  return { post, path: `/work-orders/${shop.workOrder.number}/static-tests` }
}
