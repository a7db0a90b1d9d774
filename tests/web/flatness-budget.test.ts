import { beforeEach, describe, expect, it } from 'vitest'
import { listFlatnessReadings } from '../../src/store/list-flatness-readings.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { anotherOrder } from '../support/shop-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
beforeEach(() => {
  shop = buildShop()
  app = testApp(shop.store)
})

const order = '/work-orders/W-2026-0001'
const readings = () => listFlatnessReadings(shop.store, shop.workOrder.id)
const face = () => shop.seal.components.find((one) => one.kind === 'stationary-seat')!

/** Two bands and one, and what stands in the fold for the uncertainty when it is opened first. */
const filled = (changes: Record<string, string> = {}): Record<string, string> => ({
  formKey: 'a-key',
  faceId: String(face().id),
  condition: 'as-left',
  pattern: 'convex',
  'readings[0].directionDeg': '0',
  'readings[0].bands': '2',
  'readings[1].directionDeg': '90',
  'readings[1].bands': '1',
  lampInstrumentId: String(shop.lamp.id),
  opticalFlatInstrumentId: String(shop.flat.id),
  readingHalfWidthBands: '0.25',
  readingHalfWidthOther: '',
  repeats: '',
  viewingAngleLimitDeg: '',
  opticalFlatToleranceUm: '',
  ...bow('thermal'),
  ...bow('flatThermal', { expansionUmPerMK: '0.55' }),
  ...changes,
})
const bow = (name: string, values: Record<string, string> = {}) =>
  Object.fromEntries(
    ['deltaK', 'thicknessMm', 'diameterMm', 'expansionUmPerMK'].map((part) => [
      `${name}.${part}`,
      values[part] ?? '',
    ]),
  )
const record = (form: Record<string, string>) => app.post(`${order}/flatness`, form, 'tess')
const preview = async (form: Record<string, string>) =>
  (await app.post(`${order}/flatness/preview`, form, 'tess')).text()
const open = async (query = '', of = order) =>
  (await app.get(`${of}/flatness/new${query}`, 'tess')).text()
const typedIn = (page: string, name: string) => {
  const escaped = name.replaceAll('.', '\\.')
  return new RegExp(`name="${escaped}"[^>]*value="([^"]*)"`).exec(page)?.[1]
}

/** A value set large, and what follows ± beside it. */
const figure = (value: string, doubt: string) =>
  new RegExp(`>${value}</span> <span class="result-doubt">${doubt}<`)

describe('what is stated for the uncertainty of a reading', () => {
  it('opens with the usual quarter band, and nothing else', async () => {
    const page = await open()
    expect(page).toMatch(/name="readingHalfWidthBands" value="0.25" checked/)
    expect(typedIn(page, 'repeats')).toBe('')
    expect(typedIn(page, 'thermal.deltaK')).toBe('')
    expect(typedIn(page, 'flatThermal.expansionUmPerMK')).toBe('0.55')
    expect(page).toMatch(/<details class="fold" id="uncertainty">/)
  })

  it('is kept with the reading, and the uncertainty with its lines', async () => {
    const stated = {
      readingHalfWidthBands: '0.1',
      repeats: '2,0 2,25 1,75',
      viewingAngleLimitDeg: '6',
      ...bow('thermal', { deltaK: '0,5', thicknessMm: '10' }),
      ...bow('flatThermal', {
        deltaK: '0.1',
        thicknessMm: '20',
        diameterMm: '100',
        expansionUmPerMK: '0.55',
      }),
    }
    expect((await record(filled(stated))).status).toBe(303)
    const [reading] = readings()
    expect(reading?.budgetInput).toMatchObject({
      readingHalfWidthBands: 0.1,
      repeats: [
        { bands: 2, typed: '2,0' },
        { bands: 2.25, typed: '2,25' },
        { bands: 1.75, typed: '1,75' },
      ],
      viewingAngleLimitDeg: 6,
      // The seat is of sintered silicon carbide, 68 mm across: as recorded, 4e-6/K from memory.
      thermal: { deltaK: 0.5, thicknessMm: 10, diameterMm: 68, expansionPerK: 4e-6 },
      flatThermal: { deltaK: 0.1, thicknessMm: 20, diameterMm: 100 },
    })
    const { uncertainty, standardUncertaintyUm } = reading!
    expect(uncertainty?.leftOut).toEqual([])
    expect(uncertainty?.standardUncertainty).toBe(standardUncertaintyUm)
    expect(uncertainty?.budget.map((line) => line.source)).toContain('repeatability')
    // Counts of a hand: two degrees of freedom for their mean.
    expect(uncertainty?.effectiveDegreesOfFreedom).not.toBeNull()
  })

  it('is remembered for the next reading, but for the counts and the ring of another order', async () => {
    const stated = {
      readingHalfWidthOther: '0,2',
      repeats: '2 2',
      viewingAngleLimitDeg: '6',
      ...bow('thermal', { deltaK: '0.5', thicknessMm: '10' }),
    }
    await record(filled(stated))
    const same = await open('?recorded=flatness')
    expect(typedIn(same, 'readingHalfWidthOther')).toBe('0.2')
    expect(typedIn(same, 'viewingAngleLimitDeg')).toBe('6')
    expect(typedIn(same, 'repeats')).toBe('')
    expect(typedIn(same, 'thermal.deltaK')).toBe('0.5')
    expect(typedIn(same, 'thermal.diameterMm')).toBe('')
    const other = await open('', `/work-orders/${anotherOrder(shop).number}`)
    expect(typedIn(other, 'viewingAngleLimitDeg')).toBe('6')
    expect(typedIn(other, 'thermal.deltaK')).toBe('')
  })

  it('comes back when the reading is corrected, counts as typed', async () => {
    await record(
      filled({ repeats: '2,0; 2,25', ...bow('thermal', { deltaK: '1', thicknessMm: '8' }) }),
    )
    const page = await open(`?replaces=${readings()[0]!.id}`)
    expect(typedIn(page, 'repeats')).toBe('2,0 2,25')
    expect(typedIn(page, 'thermal.diameterMm')).toBe('68')
    expect(typedIn(page, 'thermal.expansionUmPerMK')).toBe('4')
  })

  it('keeps the scatter that a program stated, which the form does not ask for', async () => {
    const repeatability = { standardDeviationBands: 0.15, count: 3, degreesOfFreedom: 9 }
    await app.postJson(
      `/api/v1${order}/flatness-readings`,
      {
        faceId: face().id,
        condition: 'as-left',
        lampInstrumentId: shop.lamp.id,
        opticalFlatInstrumentId: shop.flat.id,
        pattern: 'convex',
        readings: [{ directionDeg: 0, bands: 2 }],
        repeatability,
      },
      'tess',
    )
    const wrong = readings()[0]!
    const page = await open(`?replaces=${wrong.id}`)
    expect(page).toContain('standard deviation 0.15 bands, mean of 3 counts')
    const correction = filled({ replacesId: String(wrong.id), reason: 'Other face.' })
    // 0.2938 µm x sqrt(0.25² + 0.15²) / sqrt 3 = 0.0495 µm; flat 0.05 / sqrt 3 µm; twice the root.
    expect(await preview(correction)).toMatch(figure('0.59', '± 0.11'))
    expect(await preview({ ...correction, replacesId: '' })).toMatch(figure('0.59', '± 0.10'))
    expect((await record(correction)).status).toBe(303)
    expect(readings()[1]?.budgetInput?.repeatability).toEqual(repeatability)
    expect(readings()[1]?.uncertainty?.standardUncertainty).toBe(
      wrong.uncertainty?.standardUncertainty,
    )
  })

  it('lets counts made again go before it', async () => {
    const body = {
      faceId: face().id,
      condition: 'as-left',
      lampInstrumentId: shop.lamp.id,
      opticalFlatInstrumentId: shop.flat.id,
      pattern: 'convex',
      readings: [{ directionDeg: 0, bands: 2 }],
      repeatability: { standardDeviationBands: 0.15, count: 3 },
    }
    await app.postJson(`/api/v1${order}/flatness-readings`, body, 'tess')
    const replacesId = String(readings()[0]!.id)
    await record(filled({ replacesId, reason: 'Counted again.', repeats: '2 2,25' }))
    expect(readings()[1]?.budgetInput).toMatchObject({ repeatability: null })
    expect(readings()[1]?.budgetInput?.repeats).toHaveLength(2)
  })

  it.each([
    ['readingHalfWidthOther', 'fine', 'Enter a plain number'],
    ['readingHalfWidthOther', '101', 'Enter a value from 0 to 100.'],
    ['repeats', '2', 'Enter two counts or more, or none.'],
    ['repeats', '2,0 x', 'Enter a plain number'],
    ['repeats', '2 -1', 'A count is 0 or more.'],
    ['viewingAngleLimitDeg', '81', 'Enter a value from 0 to 80.'],
    ['opticalFlatToleranceUm', '-1', 'Enter a value from 0 to 100.'],
    ['thermal.deltaK', '1', 'Enter the thickness: a thin ring bows more.'],
    ['thermal.thicknessMm', '10', 'Enter the difference in temperature, or clear'],
    ['flatThermal.diameterMm', '0', 'Enter a value from 0.1 to 10000.'],
  ])(
    'is refused where %s is "%s", beside the field, and stays as typed',
    async (name, value, says) => {
      const answer = await record(filled({ [name]: value }))
      expect(answer.status).toBe(422)
      const page = await answer.text()
      expect(page).toContain(says)
      expect(typedIn(page, name)).toBe(value)
      expect(page).toMatch(/<details class="fold" open(="")? id="uncertainty">/)
      expect(readings()).toHaveLength(0)
    },
  )

  it('leads from the summary to the field', async () => {
    const page = await (await record(filled({ repeats: '2 x', 'thermal.deltaK': 'y' }))).text()
    expect(page).toContain('href="#repeats"')
    expect(page).toContain('href="#thermal.deltaK"')
    expect(page).toContain('id="thermal.deltaK"')
  })
})

describe('the answer while the uncertainty is stated', () => {
  it('shows the value with its uncertainty by one rule, the factor and the largest part', async () => {
    const text = await preview(filled())
    // 0.25 band of 0.29378 um and a flat of 0.05 um, both rectangular, k = 2: 0.10 um.
    expect(text).toMatch(figure('0.59', '± 0.10'))
    expect(text).toContain('± is the expanded one, k = 2')
    expect(text).toContain('reading the bands')
    expect(text).toContain('viewing angle')
  })

  it('follows what is stated, and is not upset by what is half typed', async () => {
    const fine = await preview(filled({ readingHalfWidthBands: '0.1' }))
    // 0.1 band: 0.0170 um, with the flat's 0.0289 um: U = 0.067 um.
    expect(fine).toMatch(figure('0.588', '± 0.067'))
    const half = await preview(filled({ 'thermal.deltaK': '1', repeats: '2' }))
    expect(half).toMatch(figure('0.59', '± 0.10'))
    expect(await preview(filled({ repeats: '2 x' }))).toContain('Enter a plain number')
  })
})
