import { beforeEach, describe, expect, it } from 'vitest'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { addLapCycle } from '../../src/store/add-lap-cycle.ts'
import { addSeal } from '../../src/store/add-seal.ts'
import { listLapCycles } from '../../src/store/list-lap-cycles.ts'
import { buildShop, newSeal, type Shop } from '../support/build-shop.ts'
import { actorOf, operator } from '../support/cast.ts'
import {
  anotherOrder,
  freshCycle,
  freshReading,
  workAndHandOver,
  workAndRelease,
} from '../support/shop-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
/** Of a seal whose nose may come down to 1.5 mm. */
let order: string
let orderId: number
let faces: { rotating: string; seat: string }
beforeEach(() => {
  shop = buildShop()
  app = testApp(shop.store)
  const { components } = newSeal(shop.customer.id)
  const worn = components.map((one) =>
    one.kind === 'rotating-face' ? { ...one, noseHeightMm: 3, minimumNoseHeightMm: 1.5 } : one,
  )
  const own = newSeal(shop.customer.id, { serial: 'S-77', components: worn })
  const seal = addSeal(shop.store, own, operator)
  const at = (kind: string) => String(seal.components.find((one) => one.kind === kind)!.id)
  faces = { rotating: at('rotating-face'), seat: at('stationary-seat') }
  const { id, number } = anotherOrder(shop, { sealId: seal.id })
  orderId = id
  order = `/work-orders/${number}`
})

const cycles = () => listLapCycles(shop.store, orderId)

/** As the form sends it: every field, empty ones too. */
const lap = (changes: Record<string, string> = {}): Record<string, string> => ({
  formKey: 'a-key',
  componentId: faces.rotating,
  otherPlate: 'Plate 2',
  plateForm: '',
  abrasive: '',
  grit: '',
  heightBeforeMm: '',
  heightAfterMm: '',
  plannedStockUm: '',
  stockUm: '',
  durationMin: '',
  loadKg: '',
  plateSagUm: '',
  plateDiameterMm: '',
  note: '',
  ...changes,
})
const record = (form: Record<string, string>, at = order, as = 'tess') =>
  app.post(`${at}/lap-cycles`, form, as)
const preview = async (form: Record<string, string>) =>
  (await app.post(`${order}/lap-cycles/preview`, form, 'tess')).text()
const open = async (query = '', at = order) =>
  (await app.get(`${at}/lap-cycles/new${query}`, 'tess')).text()
const traveller = async (as = 'tess') => (await app.get(order, as)).text()

describe('the form of a lap cycle', () => {
  it('warns of plate, slurry and dust before it asks a number, and leaves site rules first', async () => {
    const page = await open()
    const warned = page.indexOf('Caution: turning plate, slurry, dust and weight')
    expect(warned).toBeGreaterThan(0)
    expect(warned).toBeLessThan(page.indexOf('name="heightBeforeMm"'))
    expect(page).toContain('Site rules, safety data sheets and local codes come first.')
  })

  it('asks for the plate as text while no plate is known, and opens at a face', async () => {
    const page = await open(`?face=${faces.seat}`)
    expect(page).not.toContain('name="plate"')
    expect(page).toContain('name="otherPlate"')
    expect(page).toMatch(new RegExp(`value="${faces.seat}"[^>]*checked`))
    expect(await open()).not.toMatch(/name="componentId"[^>]*checked/)
  })

  it('offers the plates used last as cards, and remembers how this person lapped', async () => {
    await record(lap({ abrasive: 'diamond-charged', grit: '3 µm', stockUm: '12' }))
    const page = await open()
    expect(page).toMatch(/name="plate" value="Plate 2"[^>]*checked/)
    expect(page).toContain('<option value="diamond-charged" selected')
    expect(page).toMatch(/name="grit"[^>]*value="3 µm"/)
    expect(page).toMatch(/name="stockUm"[^>]*value=""/)
    const toms = await (await app.get(`${order}/lap-cycles/new`, 'tom')).text()
    expect(toms).toContain('name="plate" value="Plate 2"')
    expect(toms).not.toMatch(/name="plate"[^>]*checked/)
    expect(toms).not.toContain('<option value="diamond-charged" selected')
  })

  it('is refused once the order is handed over or released, and unknown for no order', async () => {
    workAndHandOver(shop)
    const handedOver = '/work-orders/W-2026-0001'
    expect((await app.get(`${handedOver}/lap-cycles/new`, 'tess')).status).toBe(409)
    const componentId = String(shop.seal.components[0]!.id)
    expect((await record(lap({ componentId }), handedOver)).status).toBe(409)
    const other = anotherOrder(shop)
    workAndRelease(shop, other)
    expect((await record(lap({ componentId }), `/work-orders/${other.number}`)).status).toBe(409)
    expect((await app.get('/work-orders/W-2026-9999/lap-cycles/new', 'tess')).status).toBe(404)
  })

  it('is the technician’s alone', async () => {
    for (const as of ['ian', 'mo', 'cora', 'olga']) {
      expect((await record(lap(), order, as)).status, as).toBe(403)
      expect((await app.get(`${order}/lap-cycles/new`, as)).status, as).toBe(403)
    }
    expect(cycles()).toHaveLength(0)
  })
})

describe('the answer while a cycle is entered', () => {
  it('asks for face and height, says what is wrong, and records nothing', async () => {
    expect(await preview(lap({ componentId: '' }))).toContain('Choose the face to see')
    expect(await preview(lap())).toContain('Enter a height, or read the face height before')
    expect(await preview(lap({ stockUm: '4 µm' }))).toContain('Enter a plain number')
    expect(await preview(lap({ heightBeforeMm: '2', heightAfterMm: '2.1' }))).toContain(
      'no higher after lapping than before',
    )
    expect(cycles()).toHaveLength(0)
  })

  it('gives what is left above the minimum', async () => {
    const text = await preview(lap({ heightBeforeMm: '2.91', stockUm: '15' }))
    expect(text).toContain('>2.895<')
    expect(text).toContain('Smallest allowed 1.5 mm')
    expect(text).toContain('Enough left')
    expect(text).not.toContain('Caution')
  })

  it('warns before the face falls below, by the stock planned', async () => {
    const text = await preview(lap({ heightBeforeMm: '1.51', plannedStockUm: '15' }))
    expect(text).toContain('Would be too low')
    expect(text).toContain('Caution: this cycle takes the face below its minimum')
    expect(text).toContain('About 1.495 mm would be left, and 1.5 mm are the smallest allowed.')
    const next = await preview(lap({ heightBeforeMm: '1.52', plannedStockUm: '15' }))
    expect(next).toContain('Enough left')
    expect(next).toContain('Caution: the next cycle would take the face below its minimum')
  })

  it('warns by the mean of the cycles so far, over earlier orders too', async () => {
    for (const [key, stockUm] of [
      ['a', '30'],
      ['b', '50'],
    ] as const) {
      await record(lap({ formKey: key, stockUm }))
    }
    const later = anotherOrder(shop, { sealId: sealOf(orderId) })
    const at = `/work-orders/${later.number}`
    const form = lap({ heightBeforeMm: '1.53' })
    const text = await (await app.post(`${at}/lap-cycles/preview`, form, 'tess')).text()
    expect(text).toContain('Expected: 40.0 µm, mean of 2 cycles of this ring')
    expect(text).toContain('About 1.490 mm would be left')
    expect(text).toContain('2 times')
  })

  it('says below once it is so, and nothing without a minimum', async () => {
    const text = await preview(lap({ heightAfterMm: '1.49' }))
    expect(text).toContain('>Too low<')
    expect(text).toContain('Read the height again, and ask an inspector')
    const seat = await preview(lap({ componentId: faces.seat, heightAfterMm: '0.4' }))
    expect(seat).toContain('No minimum')
    expect(seat).toContain('states no smallest height for this face')
  })

  it('warns of loose grains on carbon, and tells what form the plate leaves', async () => {
    const loose = lap({ abrasive: 'silicon-carbide-loose' })
    expect(await preview(loose)).toContain('Caution: loose grains on carbon')
    expect(await preview({ ...loose, componentId: faces.seat })).not.toContain('on carbon')
    const concave = { plateForm: 'concave', plateSagUm: '25', plateDiameterMm: '380' }
    const outer = shop.seal.components.find((one) => one.kind === 'rotating-face')?.outerDiameterMm
    const said = (25 * (outer! / 380) ** 2).toFixed(2)
    expect(await preview(lap(concave))).toContain(`leaves the ring convex by about ${said} µm`)
  })

  it('says that a height is at most so, where a cycle before says nothing of its stock', async () => {
    await record(lap({ heightBeforeMm: '2.9' }))
    const text = await preview(lap({ stockUm: '10' }))
    expect(text).toContain('at most 2.890')
    expect(text).toContain('1 cycle before does not say what came off')
  })
})

describe('recording a lap cycle', () => {
  it('records face and plate alone, once, and leaves the rest unknown', async () => {
    const first = await record(lap())
    expect(first.status).toBe(303)
    expect(first.headers.get('location')).toBe(`${order}?recorded=lap-cycle`)
    expect((await record(lap())).headers.get('location')).toBe(first.headers.get('location'))
    expect(cycles()).toMatchObject([
      { plate: 'Plate 2', stockUm: null, heightBeforeMm: null, abrasive: null, typed: {} },
    ])
    const page = await traveller()
    expect(page).toContain('height not recorded')
    expect(page).toContain('not known')
    expect(page).not.toContain('>0.0 µm<')
  })

  it('takes the plate of a card, and one that is typed over it', async () => {
    await record(lap())
    const { otherPlate: _, ...carded } = lap({ formKey: 'b', plate: 'Plate 2' })
    expect((await record({ ...carded, otherPlate: '' })).status).toBe(303)
    await record(lap({ formKey: 'c', plate: 'Plate 2', otherPlate: 'Plate 5' }))
    expect(cycles().map((one) => one.plate)).toEqual(['Plate 2', 'Plate 2', 'Plate 5'])
  })

  it('keeps everything that was said, as typed, and shows it', async () => {
    await record(
      lap({
        plateForm: 'concave',
        abrasive: 'diamond-charged',
        grit: '3 µm',
        heightBeforeMm: '2,910',
        heightAfterMm: '2.896',
        plannedStockUm: '15',
        durationMin: '12',
        loadKg: '1.5',
        plateSagUm: '4',
        plateDiameterMm: '380',
        isNewRing: 'yes',
        note: 'rim was dry',
      }),
    )
    expect(cycles()[0]).toMatchObject({ heightBeforeMm: 2.91, typed: { heightBeforeMm: '2,910' } })
    const page = await traveller()
    for (const text of [
      'Diamond, charged plate, 3 µm',
      '12 min, 1.5 kg',
      'plate concave, 4 µm over 380 mm',
      '2.910 to 2.896',
      '14.0 µm',
      'planned 15.0 µm',
      '1.396 mm above the minimum',
      'rim was dry',
      'new ring',
    ]) {
      expect(page).toContain(text)
    }
  })

  it('marks a face that is below its minimum by word and sign', async () => {
    await record(lap({ heightAfterMm: '1.488' }))
    const page = await traveller()
    expect(page).toContain('class="row-stop"')
    expect(page).toContain('0.012 mm below the minimum')
    expect(page).toMatch(/verdict-fail[\s\S]{0,2000}Below the minimum/)
  })

  it('counts cycles and relaps over the earlier orders of the seal', async () => {
    await record(lap({ formKey: 'a' }))
    await record(lap({ formKey: 'b' }))
    const later = anotherOrder(shop, { sealId: sealOf(orderId) })
    await record(lap({ formKey: 'c' }), `/work-orders/${later.number}`)
    const page = await (await app.get(`/work-orders/${later.number}`, 'tess')).text()
    expect(page).toContain('1 cycle in this order, 2 in earlier ones, relapped 2 times')
  })

  it('says on order and evidence that a face was matted after its flatness was read', async () => {
    const componentId = Number(faces.rotating)
    const by = (hour: number) => ({
      ...actorOf(shop.cast.tess),
      at: `2026-11-25T${hour}:00:00.000Z`,
    })
    const cycle = (purpose: 'polish' | 'matt', hour: number) =>
      addLapCycle(
        shop.store,
        freshCycle(shop, { workOrderId: orderId, componentId, purpose }),
        by(hour),
      )
    cycle('polish', 11)
    const of = { workOrderId: orderId, componentId }
    addFlatnessReading(shop.store, freshReading(shop, 'rotating-face', of), by(12))
    expect(await traveller()).not.toContain('matted')
    cycle('matt', 13)
    const pages = [await traveller(), await (await app.get(`${order}/inspection`, 'ian')).text()]
    for (const page of pages) {
      expect(page).toMatch(/Flatness was read on the polished face \(.*12:00.*matted afterwards/)
      expect(page).toContain('Its finish was not read since.')
    }
    expect(pages[1]).toMatch(/; matted afterwards \(2026-11-25 13:00/)
    expect(await open()).toMatch(/name="purpose" value="lap"[^>]*checked/)
  })

  it('ties a reading to the cycle before it, and stands on the inspector’s page', async () => {
    await record(lap({ heightBeforeMm: '2.9', stockUm: '10' }))
    const by = actorOf(shop.cast.tess)
    const read = (at: string) =>
      addFlatnessReading(
        shop.store,
        freshReading(shop, 'rotating-face', {
          workOrderId: orderId,
          componentId: Number(faces.rotating),
        }),
        { ...by, at },
      )
    read('2026-11-25T12:00:00.000Z')
    addLapCycle(
      shop.store,
      freshCycle(shop, { workOrderId: orderId, componentId: Number(faces.rotating) }),
      { ...by, at: '2026-11-25T13:00:00.000Z' },
    )
    read('2026-11-25T14:00:00.000Z')
    const page = await traveller()
    expect(page.match(/after lap cycle \d/g)).toEqual(['after lap cycle 1', 'after lap cycle 2'])
    const inspection = await (await app.get(`${order}/inspection`, 'ian')).text()
    expect(inspection).toContain('; after lap cycle 2')
    expect(inspection).toContain('Lapping of the faces')
    expect(inspection).toContain('Height 2.900 to at most 2.890 mm (reckoned)')
  })

  it.each([
    ['componentId', '', 'Choose the face that is lapped.'],
    ['componentId', '99999', 'This is not a face of the seal.'],
    ['otherPlate', ' ', 'Say on which plate it is lapped.'],
    ['otherPlate', 'x'.repeat(61), 'Enter at most 60 characters.'],
    ['grit', 'x'.repeat(41), 'Enter at most 40 characters.'],
    ['heightBeforeMm', '0', 'Enter a value from 0.001 to 500.'],
    ['heightAfterMm', '501', 'Enter a value from 0.001 to 500.'],
    ['stockUm', 'x', 'Enter a plain number'],
    ['stockUm', '-1', 'Enter a value from 0 to 10000.'],
    ['plannedStockUm', '10001', 'Enter a value from 0 to 10000.'],
    ['durationMin', '2881', 'Enter a value from 0 to 2880.'],
    ['loadKg', '501', 'Enter a value from 0 to 500.'],
    ['plateDiameterMm', '19', 'Enter a value from 20 to 5000.'],
    ['plateSagUm', '4', 'Say whether the plate is convex or concave'],
    ['abrasive', 'sand', 'Choose one of'],
    ['isNewRing', 'maybe', 'Choose one of'],
    ['note', 'x'.repeat(1001), 'Enter at most 1000 characters.'],
  ])('refuses %s "%s" beside the field', async (name, value, says) => {
    const answer = await record(lap({ [name]: value }))
    expect(answer.status).toBe(422)
    const page = await answer.text()
    expect(page).toContain(says)
    expect(page).toContain('value="a-key"')
    expect(cycles()).toHaveLength(0)
  })

  it('asks to confirm a stock that is more often a slip of the unit', async () => {
    const far = lap({ stockUm: '0.02' })
    const page = await (await record(far)).text()
    expect(page).toContain('0.05 to 500 (common practice, no source)')
    expect(page).toMatch(/type="checkbox"[^>]*confirmBeyondWindow/)
    expect((await record({ ...far, confirmBeyondWindow: 'yes' })).status).toBe(303)
  })

  it('gives back what was typed, escaped', async () => {
    const bad = lap({ otherPlate: '"><b>', stockUm: '"><i>', note: '<b>' })
    const page = await (await record(bad)).text()
    expect(page).toContain('value="&quot;&gt;&lt;b&gt;"')
    expect(page).toContain('&lt;b&gt;</textarea>')
    expect(page).not.toContain('"><b>')
    expect(page).not.toContain('"><i>')
  })
})

describe('correcting a lap cycle', () => {
  it('opens filled, asks why, and records what it replaces', async () => {
    await record(lap({ heightBeforeMm: '2,910', stockUm: '120', note: 'first' }))
    const id = cycles()[0]!.id
    const page = await open(`?replaces=${id}`)
    expect(page).toContain('Correct a lap cycle')
    expect(page).toMatch(/name="heightBeforeMm"[^>]*value="2,910"/)
    expect(page).toMatch(/name="stockUm"[^>]*value="120"/)
    expect(page).toMatch(/name="plate" value="Plate 2"[^>]*checked/)
    const correction = lap({ formKey: 'b', stockUm: '12', replacesId: String(id), reason: '' })
    expect((await record(correction)).status).toBe(422)
    await record({ ...correction, reason: 'slip of the key' })
    expect(cycles()[1]).toMatchObject({ replacesId: id, stockUm: 12 })
    expect((await app.get(`${order}/lap-cycles/new?replaces=${id}`, 'tess')).status).toBe(409)
    const after = await traveller()
    expect(after).toContain('<s>120.0 µm</s>')
    expect(after).toContain('slip of the key')
    expect(after).toContain('1 cycle in this order')
  })

  it('knows no cycle of another order', async () => {
    const stranger = addLapCycle(shop.store, freshCycle(shop), actorOf(shop.cast.tess))
    const answer = await app.get(`${order}/lap-cycles/new?replaces=${stranger.id}`, 'tess')
    expect(answer.status).toBe(404)
  })
})

function sealOf(id: number): number {
  const query = `SELECT seal_id FROM work_order WHERE id = ${id}`
  return shop.store.raw.prepare(query).pluck().get() as number
}
