import { describe, expect, it } from 'vitest'
import { addLimitSet } from '../../src/store/add-limit-set.ts'
import { requireLimitSet } from '../../src/store/require-limit-set.ts'
import { buildLimit } from '../support/build-limit-set.ts'
import { approved, buildShop, newLimitSet } from '../support/build-shop.ts'
import { operator } from '../support/cast.ts'
import { formOf } from '../support/form-of.ts'
import { testApp } from '../support/test-app.ts'

function shopApp() {
  const shop = buildShop()
  return { shop, ...testApp(shop.store) }
}

type ShopApp = ReturnType<typeof shopApp>

/** Writes the next version by the form, with changes to it, and gives where it stands. */
async function writeNext({ get, post, shop }: ShopApp, as: string, changes: object = {}) {
  const path = `/limit-sets/${shop.limitSet.id}/next`
  const form = formOf(await (await get(path, as)).text())
  const answer = await post(path, { ...form, ...changes }, as)
  expect(answer.status).toBe(303)
  const location = answer.headers.get('location') ?? ''
  return { page: location.replace('?recorded', ''), id: Number(/\d+/.exec(location)?.[0]) }
}

const text = async (answer: Promise<Response> | Response) => (await answer).text()

describe('a draft', () => {
  it('is refused while limits tie, approved by another once they do not, and then offered', async () => {
    const app = shopApp()
    const { get, post, shop } = app
    const tie = {
      'limits[0].faceMaterial': 'alumina',
      'limits[2].characteristic': 'flatness',
      'limits[2].diameterUpToMm': '75',
      'limits[2].upper': '2',
      'limits[2].unit': 'helium-bands',
      'limits[2].asWritten': '2 bands up to 75 mm',
      'limits[2].basis': 'house rule',
      'limits[2].source': 'this test',
    }
    const draft = await writeNext(app, 'mo', tie)
    const shown = await text(get(draft.page, 'ian'))
    expect(shown).toContain('Limits that tie')
    expect(shown).toContain('No. 3: 2 bands up to 75 mm, face up to 75 mm')
    const refused = await post(`${draft.page}/approval`, {}, 'ian')
    expect(refused.status).toBe(409)
    const why = await refused.text()
    expect(why).toContain('“1. 3 helium light bands” and “3. 2 bands up to 75 mm”')
    expect(requireLimitSet(shop.store, draft.id).steps).toEqual([])

    // The next version makes one of them more specific.
    const path = `${draft.page}/next`
    const form = formOf(await text(get(path, 'ian')))
    const fixed = { ...form, 'limits[2].faceMaterial': 'alumina' }
    const second = (await post(path, fixed, 'ian')).headers.get('location')!.split('?')[0]!
    const own = await text(get(second, 'ian'))
    expect(own).toContain('You wrote this draft.')
    expect(own).not.toContain('/approval"')
    const alone = await post(`${second}/approval`, {}, 'ian')
    expect(alone.status).toBe(409)
    expect(await alone.text()).toContain('Whoever wrote a limit set can’t approve it')

    expect(await receipt(app)).not.toContain('House, version 3')
    const approval = formOf(await text(get(second, 'ina')))
    const answer = await post(`${second}/approval`, { formKey: approval.formKey! }, 'ina')
    expect(answer.status).toBe(303)
    const done = await text(get(answer.headers.get('location')!, 'ina'))
    expect(done).toContain('Approved.')
    expect(done).toMatch(/In force.*from 2026-11-25/s)
    expect(done).toContain('Ina Irwin, 2026-11-25')
    const offered = await receipt(app)
    expect(offered).toContain('House, version 3')
    expect(offered).not.toContain('House, version 1')
  })

  it('comes into force on a later day, and the version before it goes on until then', async () => {
    const app = shopApp()
    const { get, post, setNow } = app
    const draft = await writeNext(app, 'mo')
    const answer = await post(`${draft.page}/approval`, { inForceFrom: '2026-12-01' }, 'ian')
    expect(answer.status).toBe(303)
    expect(await text(get(draft.page, 'tess'))).toMatch(
      /Approved, not in force yet.*from 2026-12-01/s,
    )
    const first = await text(get('/limit-sets/1', 'tess'))
    expect(first).toContain('Version 2 is approved and comes into force on 2026-12-01')
    expect(await receipt(app)).toContain('House, version 1')
    setNow('2026-12-01T08:00:00.000Z')
    expect(await receipt(app)).not.toContain('House, version 1')
    expect(await text(get('/limit-sets/1', 'tess'))).toContain(
      'A newer version is in force since 2026-12-01: version 2.',
    )
  })

  it('is shown again with what was typed, where the day is over or none', async () => {
    const app = shopApp()
    const draft = await writeNext(app, 'mo')
    const approve = (inForceFrom: string) =>
      app.post(`${draft.page}/approval`, { inForceFrom }, 'ian')
    const past = await approve('2026-11-24')
    expect(past.status).toBe(422)
    const shown = await past.text()
    expect(shown).toContain('Choose today or a later day.')
    expect(shown).toContain('value="2026-11-24"')
    expect((await approve('soon')).status).toBe(422)
    expect((await app.post(`${draft.page}/approval`, { other: 'x' }, 'ian')).status).toBe(422)
  })

  it('is approved by inspectors alone, and not shown to others as if they could', async () => {
    const app = shopApp()
    const draft = await writeNext(app, 'mo')
    for (const name of ['mo', 'tess', 'cora']) {
      expect((await app.post(`${draft.page}/approval`, {}, name)).status, name).toBe(403)
      expect((await app.post(`${draft.page}/retirement`, {}, name)).status, name).toBe(403)
    }
    const shown = await text(app.get(draft.page, 'mo'))
    expect(shown).not.toContain('/approval"')
    expect(shown).toContain('Nobody yet: a draft is not offered to work orders.')
    expect((await app.post('/limit-sets/99/approval', {}, 'ian')).status).toBe(404)
  })

  it('is approved once by a form that is sent twice', async () => {
    const app = shopApp()
    const draft = await writeNext(app, 'mo')
    const { formKey = '' } = formOf(await text(app.get(draft.page, 'ian')))
    const send = () => app.post(`${draft.page}/approval`, { formKey }, 'ian')
    expect((await send()).headers.get('location')).toBe((await send()).headers.get('location'))
    expect((await app.post(`${draft.page}/approval`, {}, 'ian')).status).toBe(409)
    expect(requireLimitSet(app.shop.store, draft.id).steps).toHaveLength(1)
  })
})

describe('a set that is retired', () => {
  it('needs a reason, is offered no longer, and stays with its orders', async () => {
    const app = shopApp()
    const { get, post, shop } = app
    const path = `/limit-sets/${shop.limitSet.id}/retirement`
    const unsaid = await post(path, {}, 'ian')
    expect(unsaid.status).toBe(422)
    expect(await unsaid.text()).toContain('Say why it is retired.')
    expect((await post(path, { reason: 'a <new> standard' }, 'ian')).status).toBe(303)
    const shown = await text(get(`/limit-sets/${shop.limitSet.id}`, 'tess'))
    expect(shown).toMatch(/Retired.*from 2026-11-25/s)
    expect(shown).toContain('Ian Ives, 2026-11-25: a &lt;new&gt; standard')
    const order = await text(get(`/work-orders/${shop.workOrder.number}`, 'tess'))
    expect(order).toContain('House, version 1')
    expect(await text(get('/limit-sets', 'tess'))).toContain('No limit set is in force')
  })
})

describe('receiving a seal', () => {
  it('says so where no set is in force', async () => {
    const { get, post, shop } = shopApp()
    const path = `/work-orders/new?seal=${shop.seal.id}`
    expect((await get(path, 'tess')).status).toBe(200)
    await post(`/limit-sets/${shop.limitSet.id}/retirement`, { reason: 'is over' }, 'ian')
    const answer = await get(path, 'tess')
    expect(answer.status).toBe(409)
    expect(await answer.text()).toContain('No limit set is in force, so nothing could be judged.')
  })

  it('refuses a set that is a draft, retired or replaced, on the page and by the interface', async () => {
    const app = shopApp()
    const { post, postJson, shop } = app
    const { store, cast } = shop
    const draft = addLimitSet(store, newLimitSet({ name: 'Draft' }), operator)
    const second = approved(
      store,
      addLimitSet(store, newLimitSet({ version: 2 }), operator),
      cast.ian,
    )
    for (const id of [draft.id, shop.limitSet.id]) {
      const form = { sealId: String(shop.seal.id), limitSetId: String(id) }
      const page = await post('/work-orders', form, 'tess')
      expect(page.status).toBe(422)
      expect(await page.text()).toContain('This is not in force today.')
      const body = { customerId: shop.customer.id, sealId: shop.seal.id, limitSetId: id }
      const api = await postJson('/api/v1/work-orders', body, 'tess')
      expect(api.status).toBe(422)
      expect(await api.text()).toContain('"limitSetId"')
    }
    const body = { customerId: shop.customer.id, sealId: shop.seal.id, limitSetId: second.id }
    expect((await postJson('/api/v1/work-orders', body, 'tess')).status).toBe(201)
  })
})

describe('limits side by side', () => {
  it('name where sets differ, by how much, and draw it', async () => {
    const { get, shop } = shopApp()
    const { store, cast } = shop
    const set = (name: string, upper: number, asWritten: string) => {
      const {
        id: _,
        limitSetId: __,
        ...limit
      } = buildLimit({
        characteristic: 'end-play',
        upper,
        asWritten,
        basis: 'published',
      })
      return addLimitSet(store, newLimitSet({ name, limits: [limit] }), operator)
    }
    const one = set('Manual', 250, '0.25 mm (0.010 in)')
    const other = set('Table', 50, '0.05 mm (0.002 in)')
    const shown = await text(get(`/limit-sets/compare?sets=${one.id}&sets=${other.id}`, 'tess'))
    expect(shown).toContain('Factor 5.0: the largest is 5.0 times the smallest.')
    expect(shown).toContain('The sets differ in 1 row.')
    expect(shown).toContain('End play: the limits drawn to one scale')
    expect(shown).toContain('0.25 mm (0.010 in)')
    expect(shown).not.toContain('Flatness')
    // Of themselves the sets that are in force stand side by side: here one, and no draft.
    approved(store, one, cast.ian)
    const unasked = await text(get('/limit-sets/compare', 'tess'))
    expect(unasked).toContain('Flatness')
    expect(unasked).not.toContain('0.05 mm (0.002 in)')
    expect((await get('/limit-sets/compare?sets=x', 'tess')).status).toBe(200)
    expect((await get('/limit-sets/compare', 'cora')).status).toBe(403)
  })
})

describe('which limits apply', () => {
  it('is told for each face and the machine, with the reason of every other one', async () => {
    const { get, post, shop } = shopApp()
    const { store, cast } = shop
    const plain = (changes: Parameters<typeof buildLimit>[0]) => {
      const { id: _, limitSetId: __, ...limit } = buildLimit(changes)
      return limit
    }
    const limits = [
      plain({}),
      plain({ faceMaterial: 'carbon-graphite', asWritten: 'carbon' }),
      plain({ faceMaterial: 'carbon-graphite', pressureOverKPa: 2000 }),
      plain({ characteristic: 'chamber-face-squareness', upper: 0.5, perMmOf: 'bore' }),
      plain({ characteristic: 'sleeve-run-out', upper: 1, perMmOf: 'shaft' }),
    ]
    approved(store, addLimitSet(store, newLimitSet({ version: 2, limits }), operator), cast.ian)
    const sealId = String(shop.seal.id)
    const received = await post('/work-orders', { sealId, sealedPressureKPa: '400' }, 'tess')
    const number = /W-[\d-]+/.exec(received.headers.get('location')!)![0]
    const path = `/work-orders/${number}/limits`
    const shown = await text(get(path, 'tess'))
    for (const part of [
      'Limits of the face: Rotating face',
      'Limits of the face: Stationary seat',
      'Limits of the machine and of the seal as a whole',
      'It holds for: carbon-graphite.',
      'every face: it matches too, and is less specific.',
      'carbon-graphite, sealed pressure over 20 bar: another pressure.',
      'carbon-graphite: another material.',
      'The size that it is multiplied by is not known here.',
      // 1 µm per mm of a shaft of 50 mm.
      '≤ 0.050 mm',
      '≤ 1.00 µm per mm of shaft diameter, multiplied out.',
      'The set has no limits for',
    ]) {
      expect(shown).toContain(part)
    }
    const order = await text(get(`/work-orders/${number}`, 'tess'))
    expect(order).toContain(`href="${path}"`)
    expect((await get(path, 'cora')).status).toBe(403)
    expect((await get('/work-orders/W-2026-9999/limits', 'tess')).status).toBe(404)
  })
})

async function receipt({ get, shop }: ShopApp): Promise<string> {
  return text(get(`/work-orders/new?seal=${shop.seal.id}`, 'tess'))
}
