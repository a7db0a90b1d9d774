import { beforeEach, describe, expect, it } from 'vitest'
import { combineWholeFaces } from '../../src/domain/combine-whole-faces.ts'
import type { FlatnessReading } from '../../src/domain/flatness.ts'
import type { AnnularSurface } from '../../src/science/surface/annular-surface.ts'
import { turnSurface } from '../../src/science/surface/turn-surface.ts'
import { addFacePhoto } from '../../src/store/add-face-photo.ts'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { addLapCycle } from '../../src/store/add-lap-cycle.ts'
import { listFlatnessReadings } from '../../src/store/list-flatness-readings.ts'
import { verifyStore } from '../../src/store/verify-store.ts'
import { dish, madeSurface, madeWholeReading, saddle } from '../domain/made-whole-reading.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { actorOf } from '../support/cast.ts'
import {
  anotherOrder,
  freshCycle,
  freshPhoto,
  freshReading,
  workAndRelease,
} from '../support/shop-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
beforeEach(() => {
  shop = buildShop()
  app = testApp(shop.store)
})

const face = madeSurface(2)
const page = '/work-orders/W-2026-0001/whole-faces'
const at = (hour: number) => `2026-11-24T${String(hour).padStart(2, '0')}:00:00.000Z`
const readings = () => listFlatnessReadings(shop.store, shop.workOrder.id)
const read = async (query = '', as = 'tess') => {
  const answer = await app.get(`${page}${query}`, as)
  return { status: answer.status, text: await answer.text() }
}
const combine = (first: FlatnessReading, second: FlatnessReading, key = 'k-1', as = 'tess') =>
  app.post(page, { formKey: key, first: String(first.id), second: String(second.id) }, as)

/** Records a reading of the whole rotating face from a photograph of its own. */
function add(surface: AnnularSurface, hour: number, changes: Partial<FlatnessReading> = {}) {
  const by = { ...actorOf(shop.cast.tess), at: at(hour) }
  const componentId = changes.componentId ?? freshPhoto(shop).componentId
  const bytes = Buffer.from(`photograph of ${hour}`)
  const photo = addFacePhoto(shop.store, freshPhoto(shop, { componentId, bytes }), by)
  const made = madeWholeReading(1, surface)
  const source = { ...made.wholeFace.source, photoId: photo.id }
  const { pattern, method, directions, bandHeightUm, bands, flatnessUm, form } = made
  const { standardUncertaintyUm, uncertainty } = made
  const figures = { bandHeightUm, bands, flatnessUm, form, standardUncertaintyUm, uncertainty }
  const wholeFace = { ...made.wholeFace, source } as typeof made.wholeFace
  const row = { ...freshReading(shop), pattern, method, directions, ...figures, wholeFace }
  return addFlatnessReading(shop.store, { ...row, ...changes }, by)
}

describe('the page of two readings', () => {
  it('says that nothing was read whole, or only once', async () => {
    expect((await read()).text).toContain('No face of this order was read whole yet')
    add(face, 9)
    expect((await read()).text).toContain('This face was read whole once')
  })

  it('lays two photographs on each other, draws them on one scale and says that they agree', async () => {
    const first = add(face, 9)
    add(turnSurface(face, 120), 10)
    const { status, text } = await read()
    expect(status).toBe(200)
    // Turned back by 240 degrees, to the nearest degree.
    expect(text).toContain('Turned by 240° they are most alike: likeness 1.00')
    expect(text).toContain('Both are drawn on one scale')
    expect(text).toContain('Their flatness agrees')
    expect(text).toContain('Their maps agree')
    expect(text).toContain('Record the combination')
    expect(text.match(/class="whole-face-map"/g)).toHaveLength(2)
    expect(text).toContain(`/results/flatness-reading/${first.id}"`)
    // The order's page leads here.
    const order = await (await app.get('/work-orders/W-2026-0001', 'tess')).text()
    expect(order).toContain('/work-orders/W-2026-0001/whole-faces"')
  })

  it('says that the turn of a dish can not be told, and of a saddle only guessed', async () => {
    add(dish, 9)
    add(turnSurface(dish, 50), 10)
    expect((await read()).text).toContain('can’t be told')
    const [a, b] = [add(saddle, 11), add(turnSurface(saddle, 50), 12)]
    expect((await read(`?first=${a.id}&second=${b.id}`)).text).toContain('is only a guess')
  })

  it('puts the later one second, whichever was chosen first', async () => {
    const [a, b] = [add(face, 9), add(turnSurface(face, 30), 10)]
    const there = (await read(`?first=${a.id}&second=${b.id}`)).text
    const back = (await read(`?first=${b.id}&second=${a.id}`)).text
    const without = (text: string) => text.replace(/formKey" value="[^"]*"|nonce="[^"]*"/g, '')
    const addresses = (text: string) => without(text).replace(/first=\d+&(amp;)?second=\d+/g, '')
    expect(addresses(encoded(back))).toBe(addresses(encoded(there)))
  })

  it('does not turn a face that was lapped, and says what the lap took', async () => {
    add(face, 9, { condition: 'as-found' })
    const cycle = freshCycle(shop, { heightBeforeMm: 3.2, heightAfterMm: 3.19 })
    addLapCycle(shop.store, cycle, { ...actorOf(shop.cast.tess), at: at(10) })
    const flatter = { ...face, coefficients: face.coefficients.map((one) => 0.2 * one) }
    const left = add(flatter, 11)
    const { text } = await read()
    expect(text).toContain('What the lap took')
    expect(text).toContain('so nothing was turned')
    expect(text).toContain('By the log the lap cycle in between took 10.0 µm')
    expect(text).toContain('As left after lap cycle 1')
    // 0.8 of the height of the face went, the same everywhere in shape.
    const um = (0.8 * (left.flatnessUm ?? 0) * 5).toFixed(3)
    expect(text).toContain(`to the place where most was, ${um} µm;`)
    expect(text).toContain('Flatness changed by')
    expect(text).toContain('One was read as found and one as left: they are not combined.')
    expect((await read('?lay=by-form')).text).toContain('need not be the true one')
  })

  it('shows the staff everything, and a customer only what is released', async () => {
    add(face, 9)
    add(turnSurface(face, 120), 10)
    const ian = await read('', 'ian')
    expect(ian.status).toBe(200)
    expect(ian.text).not.toContain('Record the combination')
    expect((await read('', 'cora')).status).toBe(404)
    workAndRelease(shop)
    expect((await read('', 'cora')).status).toBe(200)
    expect((await read('', 'olga')).status).toBe(404)
  })

  it('knows no reading or face that is not there, or no number', async () => {
    const reading = add(face, 9)
    add(face, 10)
    const seat = shop.seal.components.find((one) => one.kind === 'stationary-seat')!
    for (const query of [
      '?first=999',
      '?first=x',
      '?second=-1',
      '?face=999',
      '?face=x',
      `?face=${seat.id}`,
      '?lay=sideways',
    ]) {
      expect((await read(query)).status, query).toBe(404)
    }
    const otherOrder = `/work-orders/${anotherOrder(shop).number}/whole-faces?first=${reading.id}`
    expect((await app.get(otherOrder, 'tess')).status).toBe(404)
    expect((await app.get('/work-orders/W-2026-9999/whole-faces', 'tess')).status).toBe(404)
  })

  it('asks for two different ones where one was chosen twice', async () => {
    const reading = add(face, 9)
    add(face, 10)
    const { status, text } = await read(`?first=${reading.id}&second=${reading.id}`)
    expect(status).toBe(200)
    expect(text).toContain('Choose two different readings.')
  })

  it('keeps the readings of both faces apart', async () => {
    const seat = shop.seal.components.find((one) => one.kind === 'stationary-seat')!
    const here = add(face, 9)
    const there = add(face, 10, { componentId: seat.id })
    expect((await read(`?first=${here.id}&second=${there.id}`)).status).toBe(404)
    expect((await read()).text).toContain(`whole-faces?face=${seat.id}"`)
  })
})

describe('a combination', () => {
  it('is recorded once, with the instruments of the later part, and verifies', async () => {
    const [a, b] = [add(face, 9), add(turnSurface(face, 120), 10)]
    const answer = await combine(a, b)
    expect(answer.status).toBe(303)
    expect(answer.headers.get('location')).toBe('/work-orders/W-2026-0001?recorded=flatness')
    expect((await combine(a, b)).status).toBe(303)
    expect(readings()).toHaveLength(3)
    const combined = readings().at(-1)!
    expect(combined).toMatchObject({
      pattern: 'whole-face',
      method: 'flatness/combined 1',
      sees: 'whole-surface',
      condition: 'as-left',
      lamp: b.lamp,
      flat: b.flat,
      recordedByName: 'Tess Turner',
    })
    // From the records of its parts it comes out the same, bit for bit.
    const again = combineWholeFaces(readings().slice(0, 2))
    expect(combined.flatnessUm).toBe(again.computed.flatnessUm)
    expect(combined.uncertainty).toEqual(again.computed.uncertainty)
    expect(combined.wholeFace).toEqual(again.wholeFace)
    expect(verifyStore(shop.store)).toEqual([])
    const result = `/work-orders/W-2026-0001/results/flatness-reading/${combined.id}`
    const shown = await (await app.get(`${result}?repeat=yes`, 'tess')).text()
    expect(shown).toContain('every figure is the same, bit for bit')
    expect(shown).toContain(`href="./${a.id}"`)
  })

  it('is refused with its reason where there is no mean, and nothing is recorded', async () => {
    const [a, b] = [add(dish, 9), add(saddle, 10)]
    const answer = await combine(a, b)
    expect(answer.status).toBe(422)
    const text = await answer.text()
    expect(text).toContain('Not combined')
    expect(text).toContain('Their forms are not alike at any turn')
    expect((await combine(a, a, 'k-2')).status).toBe(422)
    expect(readings()).toHaveLength(2)
  })

  it('is refused a second time by another form', async () => {
    const [a, b] = [add(face, 9), add(turnSurface(face, 120), 10)]
    await combine(a, b)
    const again = await combine(a, b, 'k-2')
    expect(again.status).toBe(422)
    expect(await again.text()).toContain('combined already')
    expect(readings()).toHaveLength(3)
  })

  it('is recorded by technicians alone', async () => {
    const [a, b] = [add(face, 9), add(turnSurface(face, 120), 10)]
    for (const [as, status] of [
      ['ian', 403],
      ['mo', 403],
      ['cora', 403],
    ] as const) {
      expect((await combine(a, b, `k-${as}`, as)).status).toBe(status)
    }
    const form = { formKey: 'k', first: String(a.id), second: String(b.id) }
    expect((await app.post(page, form)).headers.get('location')).toMatch(/^\/sign-in/)
    expect((await app.post(page, { formKey: 'k', first: 'x', second: '1' }, 'tess')).status).toBe(
      404,
    )
    expect(readings()).toHaveLength(2)
  })

  it('is refused once the order is released', async () => {
    const [a, b] = [add(face, 9), add(turnSurface(face, 120), 10)]
    workAndRelease(shop)
    const count = readings().length
    expect((await combine(a, b)).status).toBe(409)
    expect(readings()).toHaveLength(count)
  })
})

/** An address in a hidden field, as it stands in the page. */
function encoded(text: string): string {
  return text.replace(/first%3D\d+%26second%3D\d+/g, '')
}
