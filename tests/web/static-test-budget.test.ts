import { beforeEach, describe, expect, it } from 'vitest'
import { addCalibration } from '../../src/store/add-calibration.ts'
import { addInstrument } from '../../src/store/add-instrument.ts'
import { listStaticTests } from '../../src/store/list-static-tests.ts'
import { buildCalibration, buildInstrument } from '../support/build-instrument.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { operator } from '../support/cast.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
beforeEach(() => {
  shop = buildShop()
  app = testApp(shop.store)
})

const order = '/work-orders/W-2026-0001'
const tests = () => listStaticTests(shop.store, shop.workOrder.id)

/** An instrument whose papers state U in its unit, k = 2, and that no error was found. */
function calibrated(
  kind: 'pressure-transducer' | 'thermometer' | 'volume',
  unit: 'kPa' | 'C' | 'L',
  expandedUncertainty: number,
): number {
  const {
    id: _,
    calibrations: _none,
    withdrawnOn: _in,
    ...fresh
  } = buildInstrument(kind, { unit, number: `${kind} of the rig` })
  const { id } = addInstrument(shop.store, fresh, operator)
  const { id: _id, ...calibration } = buildCalibration({
    instrumentId: id,
    expandedUncertainty,
    coverageFactor: 2,
    asLeftError: 0,
  })
  addCalibration(shop.store, calibration, operator)
  return id
}

/** 5 L from 271.325 kPa at 21 °C to 268.1 kPa at 20.5 °C in 600 s. */
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
  volumeL: '5',
  gaugeInstrumentId: String(shop.gauge.id),
  thermometerInstrumentId: '',
  volumeInstrumentId: '',
  volumeUncertaintyPercent: '',
  timeUncertaintyS: '1',
  pressureUncertaintyPa: '',
  temperatureUncertaintyK: '',
  ...changes,
})
/** The uncertainties of the worked example, stated by hand. */
const stated = {
  volumeUncertaintyPercent: '2',
  pressureUncertaintyPa: '30',
  temperatureUncertaintyK: '0,05',
  timeUncertaintyS: '0',
}
const record = (form: Record<string, string>) => app.post(`${order}/static-tests`, form, 'tess')
const preview = async (form: Record<string, string>) =>
  (await app.post(`${order}/static-tests/preview`, form, 'tess')).text()
const open = async (query = '') =>
  (await app.get(`${order}/static-tests/new${query}`, 'tess')).text()
const typedIn = (page: string, name: string) =>
  new RegExp(`name="${name}"[^>]*value="([^"]*)"`).exec(page)?.[1]

/** A value set large, and what follows ± beside it. */
const figure = (value: string, doubt: string) =>
  new RegExp(`>${value}</span> <span class="result-doubt">${doubt}<`)

describe('the uncertainty of a static test', () => {
  it('takes the time for good to a second, and says so beside the field', async () => {
    const page = await open()
    expect(typedIn(page, 'timeUncertaintyS')).toBe('1')
    expect(page).toContain('One second for a stop watch is common practice, without a source.')
  })

  it('shows what is stated by hand as value ± U, and the smallest leak that can be seen', async () => {
    const text = await preview(filled(stated))
    // 0.022992 with u = 7.92e-4 and k = 2: U = 0.0016 Pa·m³/s.
    expect(text).toMatch(figure('0.0230', '± 0.0016'))
    // 3.29 times pressure 3.53e-4 and temperature 5.39e-4, combined: 0.00212 Pa·m³/s.
    expect(text).toContain('The smallest leak that this set-up can see')
    expect(text).toContain('0.00212 Pa·m³/s')
    // The drop, 3.225 kPa, is good to 2 x √2 x 30 Pa.
    expect(text).toContain('3.225 ± 0.085 kPa')
  })

  it('says that nothing is known where nobody and no paper states anything', async () => {
    const text = await preview(filled())
    expect(text).toContain('>0.0230<')
    expect(text).toContain('not known: the papers of the instruments say nothing of it')
    expect(text).not.toContain('The smallest leak that this set-up can see')
    await record(filled())
    expect(tests()[0]).toMatchObject({ leakUncertainty: null, dropUncertainty: null })
  })

  it('follows from a transducer, a thermometer and a calibrated volume, and is kept', async () => {
    const answer = await record(
      filled({
        gaugeInstrumentId: String(calibrated('pressure-transducer', 'kPa', 0.06)),
        thermometerInstrumentId: String(calibrated('thermometer', 'C', 0.1)),
        volumeInstrumentId: String(calibrated('volume', 'L', 0.2)),
        timeUncertaintyS: '0',
      }),
    )
    expect(answer.status).toBe(303)
    const [test] = tests()
    expect(test?.leakUncertainty?.standardUncertainty).toBeCloseTo(7.917e-4, 7) // four digits
    expect(test?.leakUncertainty?.leftOut).toEqual([])
    expect(test?.volume).toMatchObject({ kind: 'volume', status: 'in-calibration' })
    expect(test?.gauge.kind).toBe('pressure-transducer')
  })

  it('is remembered for the order’s next test, and comes back when one is corrected', async () => {
    await record(filled(stated))
    expect(tests()[0]?.budgetInput).toEqual({
      volumeRelative: 0.02,
      pressurePa: 30,
      temperatureK: 0.05,
      timeS: 0,
    })
    for (const query of ['', `?replaces=${tests()[0]!.id}`]) {
      const page = await open(query)
      expect(typedIn(page, 'volumeUncertaintyPercent')).toBe('2')
      expect(typedIn(page, 'temperatureUncertaintyK')).toBe('0.05')
      expect(typedIn(page, 'timeUncertaintyS')).toBe('0')
    }
  })

  it('keeps the steps of displays that a program stated, which the form does not ask for', async () => {
    const uncertainties = { pressurePa: 30, resolutionPa: 100, resolutionK: 0.1, timeS: 0 }
    await app.postJson(
      `/api/v1${order}/static-tests`,
      {
        volumeL: 5,
        start: { timeS: 0, pressureKPaAbs: 271.325, temperatureC: 21 },
        end: { timeS: 600, pressureKPaAbs: 268.1, temperatureC: 20.5 },
        gaugeInstrumentId: shop.gauge.id,
        uncertainties,
      },
      'tess',
    )
    const wrong = tests()[0]!
    expect(wrong.budgetInput).toMatchObject(uncertainties)
    const page = await open(`?replaces=${wrong.id}`)
    expect(page).toContain('the steps of its displays: 100 Pa, 0.1 K. They are kept.')
    const correction = filled({
      replacesId: String(wrong.id),
      reason: 'Other section.',
      pressureUncertaintyPa: '30',
      timeUncertaintyS: '0',
    })
    // Twice 30 Pa and a step of 100 Pa, 28.9 Pa: √2 x 41.6 Pa, times 2.
    const drop = '3.23 ± 0.12 kPa'
    expect(await preview(correction)).toContain(drop)
    expect((await record(correction)).status).toBe(303)
    expect(tests()[1]?.budgetInput).toMatchObject({ resolutionPa: 100, resolutionK: 0.1 })
    expect(tests()[1]?.dropUncertainty).toEqual(wrong.dropUncertainty)
  })

  it.each([
    ['volumeUncertaintyPercent', '101', 'Enter a value from 0 to 100.'],
    ['volumeUncertaintyPercent', 'two', 'Enter a plain number'],
    ['pressureUncertaintyPa', '-1', 'Enter a value from 0 to'],
    ['temperatureUncertaintyK', '1001', 'Enter a value from 0 to 1000.'],
    ['timeUncertaintyS', 'x', 'Enter a plain number'],
  ])(
    'is refused where %s is "%s", beside the field, and stays as typed',
    async (name, value, says) => {
      const answer = await record(filled({ [name]: value }))
      expect(answer.status).toBe(422)
      const page = await answer.text()
      expect(page).toContain(says)
      expect(typedIn(page, name)).toBe(value)
      expect(tests()).toHaveLength(0)
    },
  )

  it('refuses a volume that is none, and a gauge that is a thermometer', async () => {
    const volume = await record(filled({ volumeInstrumentId: String(shop.gauge.id) }))
    expect(volume.status).toBe(422)
    expect(await volume.text()).toContain('Choose an instrument of the right kind.')
    const gauge = await record(filled({ gaugeInstrumentId: String(shop.thermometer.id) }))
    expect(gauge.status).toBe(422)
  })
})
