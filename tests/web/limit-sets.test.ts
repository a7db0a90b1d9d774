import { describe, expect, it } from 'vitest'
import { addLimitSet } from '../../src/store/add-limit-set.ts'
import { listLimitSets } from '../../src/store/list-limit-sets.ts'
import { requireLimitSet } from '../../src/store/require-limit-set.ts'
import { approved, buildShop, newLimitSet } from '../support/build-shop.ts'
import { operator } from '../support/cast.ts'
import { formOf } from '../support/form-of.ts'
import { testApp } from '../support/test-app.ts'

function shopApp() {
  const shop = buildShop()
  return { shop, ...testApp(shop.store) }
}

describe('limit sets', () => {
  it('are listed by name with how each version stands', async () => {
    const { get, shop } = shopApp()
    const second = addLimitSet(shop.store, newLimitSet({ version: 2 }), operator)
    addLimitSet(shop.store, newLimitSet({ name: 'Gas' }), operator)
    const text = await (await get('/limit-sets', 'tess')).text()
    expect(text).toContain('Versions of House')
    expect(text).toContain('Versions of Gas')
    expect(text).toMatch(/In force.*from 2026-01-01/s)
    expect(text).toContain('Offered first to new work orders')
    expect(text.match(/<span>Draft<\/span>/g)).toHaveLength(2)
    approved(shop.store, second, shop.cast.ian)
    const later = await (await get('/limit-sets', 'tess')).text()
    expect(later).toContain('Replaced by a newer version')
    expect(text).not.toContain('Start another set')
  })

  it('show each limit in the units of the trade with basis and source', async () => {
    const { get, shop } = shopApp()
    const text = await (await get(`/limit-sets/${shop.limitSet.id}`, 'tess')).text()
    for (const part of ['0.881 µm', '34.7 µin', '3.00 helium bands', '14.00 kPa', '0.140 bar']) {
      expect(text).toContain(part)
    }
    expect(text).toContain('3 helium light bands')
    expect(text).toContain('House rule')
    expect(text).not.toContain('/next"')
  })

  it('mark what has no source', async () => {
    const { get, post, shop } = shopApp()
    const form = formOf(await (await get(`/limit-sets/${shop.limitSet.id}/next`, 'ian')).text())
    const change = { 'limits[0].basis': 'from memory' }
    const next = await post(`/limit-sets/${shop.limitSet.id}/next`, { ...form, ...change }, 'ian')
    const text = await (await get(next.headers.get('location')!, 'ian')).text()
    expect(text).toMatch(/verdict-missing[^>]*>.*From memory/s)
  })

  it('are not found under an id that there is not', async () => {
    const { get, post } = shopApp()
    for (const id of ['999', '0', 'x']) {
      expect((await get(`/limit-sets/${id}`, 'ian')).status, id).toBe(404)
      expect((await get(`/limit-sets/${id}/next`, 'ian')).status, id).toBe(404)
      expect((await post(`/limit-sets/${id}/next`, {}, 'ian')).status, id).toBe(404)
    }
  })
})

describe('a new version', () => {
  it('of an unchanged form says exactly the same under the next number, dated today', async () => {
    const { get, post, shop, store } = shopApp()
    const path = `/limit-sets/${shop.limitSet.id}/next`
    const form = formOf(await (await get(path, 'mo')).text())
    const answer = await post(path, form, 'mo')
    expect(answer.status).toBe(303)
    const again = await post(path, form, 'mo')
    expect(again.headers.get('location')).toBe(answer.headers.get('location'))
    const [next, first, ...rest] = listLimitSets(store)
    expect(rest).toEqual([])
    expect(first).toEqual(shop.limitSet)
    // The first was stored before typed numbers were kept; everything else is the same.
    const own = { id: 0, limitSetId: 0, typedUpper: '', typedUnit: '' }
    const plain = (set: typeof next) => set!.limits.map((one) => ({ ...one, ...own }))
    expect(plain(next)).toEqual(plain(first))
    expect(next!.limits.map((one) => `${one.typedUpper} ${one.typedUnit}`)).toEqual([
      '0.8814 um',
      '14 kPa',
    ])
    expect(next!.steps).toEqual([])
    expect(next).toMatchObject({ version: 2, datedOn: '2026-11-25', name: first!.name })
  })

  it('asks for the start of a drop, and of nothing else', async () => {
    const { get, post, shop, store } = shopApp()
    const path = `/limit-sets/${shop.limitSet.id}/next`
    const form = formOf(await (await get(path, 'ian')).text())
    expect(form['limits[1].startAtLeast']).toBe('')
    const start = (index: number, unit: string) => ({
      ...form,
      [`limits[${index}].startAtLeast`]: '1,7',
      [`limits[${index}].startUnit`]: unit,
    })
    const flatness = await post(path, start(0, 'bar'), 'ian')
    expect(flatness.status).toBe(422)
    expect(await flatness.text()).toContain('Only a pressure drop has a start pressure.')
    const slip = await post(path, start(1, 'kPa'), 'ian')
    expect(slip.status).toBe(422)
    const again = await slip.text()
    expect(again).toContain('Enter a value from 5 to 10000.')
    expect(formOf(again)['limits[1].startAtLeast']).toBe('1,7')
    expect((await post(path, start(1, 'bar'), 'ian')).status).toBe(303)
    expect(listLimitSets(store)[0]!.limits[1]!.startAtLeastKPaGauge).toBe(170)
  })

  it('keeps what was typed, escaped, and opens the limit that is wrong', async () => {
    const { get, post, shop, store } = shopApp()
    const path = `/limit-sets/${shop.limitSet.id}/next`
    const form = formOf(await (await get(path, 'ian')).text())
    const wrong = {
      ...form,
      note: '<script>x</script>',
      directionsRequiredCount: '9',
      'limits[0].upper': '"much"',
      'limits[0].unit': 'kPa',
    }
    const answer = await post(path, wrong, 'ian')
    const text = await answer.text()
    expect(answer.status).toBe(422)
    expect(text).toContain('&lt;script&gt;x&lt;/script&gt;')
    expect(text).not.toContain('<script>x')
    expect(text).toContain('value="&quot;much&quot;"')
    expect(text).toContain('Choose a unit of what is limited.')
    expect(text).toContain('href="#limits[0].upper"')
    expect(text).toContain('<details class="fold" open="">')
    expect(formOf(text).formKey).toBe(form.formKey)
    expect(listLimitSets(store)).toHaveLength(1)
  })

  it('leaves out a limit, adds one, and needs at least one', async () => {
    const { get, post, shop, store } = shopApp()
    const path = `/limit-sets/${shop.limitSet.id}/next`
    const form = formOf(await (await get(path, 'ian')).text())
    const none = { ...form, 'limits[0].leaveOut': 'yes', 'limits[1].leaveOut': 'yes' }
    const refused = await post(path, none, 'ian')
    expect(refused.status).toBe(422)
    expect(await refused.text()).toContain('A set has at least one limit.')
    const leak = {
      'limits[2].characteristic': 'static-leak-rate',
      'limits[2].upper': '30',
      'limits[2].unit': 'ml-per-min',
      'limits[2].asWritten': '30 mL/min',
      'limits[2].basis': 'house rule',
      'limits[2].source': 'this test',
    }
    const answer = await post(path, { ...none, ...leak }, 'ian')
    expect(answer.status).toBe(303)
    const [next] = listLimitSets(store)
    expect(next!.limits).toHaveLength(1)
    // 30 mL/min × 101 325 Pa × 1e-6 / 60 s; twelve decimals are beyond any printed digit.
    expect(next!.limits[0]!.upper).toBeCloseTo(0.0506625, 12)
  })

  it('shows one more limit on demand and stores nothing by that', async () => {
    const { get, post, shop, store } = shopApp()
    const path = `/limit-sets/${shop.limitSet.id}/next`
    const form = formOf(await (await get(path, 'ian')).text())
    const answer = await post(path, { ...form, note: 'kept', more: 'yes' }, 'ian')
    expect(answer.status).toBe(200)
    const more = formOf(await answer.text())
    expect(more.note).toBe('kept')
    expect(more['limits[3].upper']).toBe('')
    expect(listLimitSets(store)).toHaveLength(1)
  })

  it('follows the newest version only', async () => {
    const { get, post, shop } = shopApp()
    const path = `/limit-sets/${shop.limitSet.id}/next`
    const mine = formOf(await (await get(path, 'ian')).text())
    const theirs = formOf(await (await get(path, 'mo')).text())
    expect((await post(path, theirs, 'mo')).status).toBe(303)
    const late = await post(path, mine, 'ian')
    expect(late.status).toBe(409)
    expect(await late.text()).toContain('A newer version of this limit set stands.')
    expect((await get(path, 'ian')).status).toBe(409)
    const old = await (await get(`/limit-sets/${shop.limitSet.id}`, 'ian')).text()
    expect(old).toContain('Version 2 is written as a draft; until it is in force, nothing changes.')
  })
})

describe('a workshop without a limit set', () => {
  it('tells a technician whom to ask, and lets a manager start from sourced defaults', async () => {
    const { get, post, store } = testApp()
    const asked = await (await get('/limit-sets', 'tess')).text()
    expect(asked).toContain('No limit set yet')
    expect(asked).toContain('An inspector or the manager makes the first one.')
    expect(asked).not.toContain('/limit-sets/new')
    expect(await (await get('/limit-sets', 'mo')).text()).toContain('/limit-sets/new')

    const form = formOf(await (await get('/limit-sets/new', 'mo')).text())
    const nameless = await post('/limit-sets', form, 'mo')
    expect(nameless.status).toBe(422)
    expect(await nameless.text()).toContain('Name the set.')

    const answer = await post('/limit-sets', { ...form, name: 'Liquid duty' }, 'mo')
    expect(answer.status).toBe(303)
    const id = Number(/\d+/.exec(answer.headers.get('location')!)?.[0])
    const set = requireLimitSet(store, id)
    expect(set).toMatchObject({ name: 'Liquid duty', version: 1, datedOn: '2026-11-25' })
    expect(set.limits.map((one) => one.basis)).toEqual(['published', 'published', 'house rule'])
    expect(set.limits.map((one) => one.startAtLeastKPaGauge)).toEqual([null, 170, null])
    const page = await (await get(`/limit-sets/${id}`, 'mo')).text()
    expect(page).toContain('Started at 170.0 kPa gauge or above')
  })

  it('refuses a second set of the same name', async () => {
    const { get, post, store, shop } = shopApp()
    const form = formOf(await (await get('/limit-sets/new', 'mo')).text())
    const answer = await post('/limit-sets', { ...form, name: shop.limitSet.name }, 'mo')
    expect(answer.status).toBe(422)
    expect(await answer.text()).toContain('There is a set of this name already')
    expect(listLimitSets(store)).toHaveLength(1)
  })
})
