import { beforeEach, describe, expect, it } from 'vitest'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { listFlatnessReadings } from '../../src/store/list-flatness-readings.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { actorOf } from '../support/cast.ts'
import { freshReading } from '../support/shop-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
beforeEach(() => {
  shop = buildShop()
  app = testApp(shop.store)
})

const order = '/work-orders/W-2026-0001'
const readings = () => listFlatnessReadings(shop.store, shop.workOrder.id)
const face = () => shop.seal.components.find((one) => one.kind === 'rotating-face')!
const page = async (path: string, who: 'tess' | 'ian') => (await app.get(path, who)).text()

/** Tess reads two bands, Tom two and a half: 0.5876 and 0.7345 µm of helium. */
function readTwice(): void {
  for (const [who, bands] of [
    ['tess', 2],
    ['tom', 2.5],
  ] as const) {
    const directions = [
      { directionDeg: 0, bands, bandsTyped: String(bands) },
      { directionDeg: 90, bands: 1, bandsTyped: '1' },
    ]
    const fresh = freshReading(shop, 'rotating-face', { directions })
    addFlatnessReading(shop.store, fresh, actorOf(shop.cast[who]))
  }
}

const filled = (changes: Record<string, string> = {}): Record<string, string> => ({
  formKey: 'a-key',
  faceId: String(face().id),
  condition: 'as-left',
  pattern: 'convex',
  'readings[0].directionDeg': '0',
  'readings[0].bands': '2,25',
  'readings[1].directionDeg': '90',
  'readings[1].bands': '1',
  lampInstrumentId: String(shop.lamp.id),
  opticalFlatInstrumentId: String(shop.flat.id),
  readerSpread: 'yes',
  ...changes,
})
const record = (form: Record<string, string>) => app.post(`${order}/flatness`, form, 'tess')

describe('a face that several people have read', () => {
  it('stands with mean, spread and number of readers on the order and before the inspector', async () => {
    readTwice()
    for (const [path, who] of [
      [order, 'tess'],
      [`${order}/inspection`, 'ian'],
    ] as const) {
      const text = await page(path, who)
      expect(text).toContain('Read by several')
      expect(text).toContain('Tess Turner: 0.588 µm')
      expect(text).toContain('Tom Tiller: 0.734 µm')
      // Mean of 0.58756 and 0.73445; their difference, 0.14689, over the root of two.
      expect(text).toContain('0.661 µm')
      expect(text).toContain('s = 0.104 µm')
      expect(text).toContain('for the release counts the newest reading as left')
    }
  })

  it('is nothing where one person read it', async () => {
    const [who] = [shop.cast.tess]
    addFlatnessReading(shop.store, freshReading(shop), actorOf(who))
    expect(await page(order, 'tess')).not.toContain('Read by several')
    expect(await page(`${order}/flatness/new`, 'tess')).not.toContain('name="readerSpread"')
  })

  it('offers its spread for the next reading, without a tick', async () => {
    readTwice()
    const form = await page(`${order}/flatness/new`, 'tess')
    expect(form).toMatch(/name="readerSpread" value="yes"(?! checked)/)
    expect(form).toContain('Rotating face, as left: 2 readers, s = 0.104 µm.')
  })

  it('gives its spread to the budget of a reading that asks for it, as that of one count', async () => {
    readTwice()
    expect((await record(filled())).status).toBe(303)
    const last = readings().at(-1)
    const { repeatability } = last?.budgetInput ?? {}
    // Half a band apart: 0.5 over the root of two, in bands of the same lamp.
    expect(repeatability?.standardDeviationBands).toBeCloseTo(0.5 / Math.SQRT2, 9) // kept in µm between
    expect(repeatability).toMatchObject({ count: 1, degreesOfFreedom: 1 })
    expect(last?.uncertainty?.budget.map((one) => one.source)).toContain('repeatability')
    expect(last?.uncertainty?.coverageFactor).toBeGreaterThan(2)
  })

  it('leaves the budget alone where nobody asked', async () => {
    readTwice()
    await record(filled({ readerSpread: '' }))
    expect(readings().at(-1)?.budgetInput?.repeatability).toBeNull()
  })

  it('says so where there is no spread to take, and where counts were made again', async () => {
    const none = await record(filled())
    expect(none.status).toBe(422)
    expect(await none.text()).toContain('Fewer than two people have read this face')
    readTwice()
    const both = await record(filled({ repeats: '2 2,25' }))
    expect(both.status).toBe(422)
    expect(await both.text()).toContain('not both')
    const other = await record(filled({ condition: 'as-found' }))
    expect(other.status).toBe(422)
    const asked = await app.post(
      `${order}/flatness/preview`,
      filled({ condition: 'as-found' }),
      'tess',
    )
    expect(await asked.text()).toContain('Fewer than two people have read this face')
    expect(readings()).toHaveLength(2)
  })
})
