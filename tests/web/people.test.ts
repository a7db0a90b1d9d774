import { describe, expect, it } from 'vitest'
import { findUserByName } from '../../src/store/find-user-by-name.ts'
import { listAudit } from '../../src/store/list-audit.ts'
import { listUsers } from '../../src/store/list-users.ts'
import { castOf } from '../support/cast.ts'
import { testApp } from '../support/test-app.ts'

const ned = {
  name: 'ned',
  displayName: 'Ned Nye',
  role: 'technician',
  department: 'Seal bench',
  customerId: '',
  password: 'eight ch',
  formKey: 'p',
}

describe('the list of people', () => {
  it('shows everyone with role, customer and access', async () => {
    const { get } = testApp()
    const text = await (await get('/people', 'mo')).text()
    expect(text).toContain('Tess Turner')
    expect(text).toContain('Invented Dairy')
    expect(text).toContain('Has access')
    expect(text).toContain('This is you')
    expect(text).not.toContain('plain tess')
  })
})

describe('a new person', () => {
  it('is added once and can sign in', async () => {
    const { post, store } = testApp()
    expect((await post('/people', ned, 'mo')).status).toBe(303)
    expect((await post('/people', ned, 'mo')).status).toBe(303)
    expect(listUsers(store)).toHaveLength(8)
    expect(findUserByName(store, 'ned')).toMatchObject({ role: 'technician', customerId: null })
    const signedIn = await post('/sign-in', { name: 'Ned', password: 'eight ch' })
    expect(signedIn.headers.get('location')).toBe('/bench')
  })

  it('leaves no password in the page, the trail or the kept answer', async () => {
    const { post, store } = testApp()
    const refused = await post('/people', { ...ned, role: '', password: 'secret word' }, 'mo')
    expect(refused.status).toBe(422)
    expect(await refused.text()).not.toContain('secret word')
    await post('/people', ned, 'mo')
    // Were the password part of what knows a resent form, another one would be a key reused.
    expect((await post('/people', { ...ned, password: 'other pw' }, 'mo')).status).toBe(303)
    const line = listAudit(store, { subject: 'user ned', limit: 5 }).items[0]
    expect(line?.act).toBe('add-user')
    expect(line?.detail).not.toContain('eight ch')
  })

  it('comes back with what was typed, escaped, and a sentence for each field', async () => {
    const { post, store } = testApp()
    const form = { ...ned, displayName: '<b>Ned</b>', name: '', role: 'owner', password: 'short' }
    const answer = await post('/people', form, 'mo')
    const text = await answer.text()
    expect(answer.status).toBe(422)
    expect(text).toContain('value="&lt;b&gt;Ned&lt;/b&gt;"')
    for (const sentence of [
      'Enter what is typed at sign-in.',
      'Choose a role.',
      'Enter at least 8 characters.',
    ]) {
      expect(text).toContain(sentence)
    }
    expect(listUsers(store)).toHaveLength(7)
  })

  it('is refused under a name that somebody has, whatever its capitals', async () => {
    const { post } = testApp()
    const answer = await post('/people', { ...ned, name: 'TESS' }, 'mo')
    expect(answer.status).toBe(422)
    expect(await answer.text()).toContain('Somebody signs in with this name already.')
  })

  it('of a customer belongs to one that there is', async () => {
    const { post, store } = testApp()
    const of = (customerId: string) =>
      post('/people', { ...ned, role: 'customer', customerId }, 'mo')
    expect(await (await of('')).text()).toContain('Choose the customer whose seals')
    expect((await of('99')).status).toBe(422)
    const { customerId } = castOf(store).cora
    expect((await of(String(customerId))).status).toBe(303)
    expect(findUserByName(store, 'ned')?.customerId).toBe(customerId)
  })
})

describe('access', () => {
  it('ends at once with every session, and can be given again', async () => {
    const { get, post, store } = testApp()
    const { tess } = castOf(store)
    expect((await get('/bench', 'tess')).status).toBe(200)
    const path = `/people/${tess.id}/active`
    expect((await post(path, { isActive: 'no', formKey: 'a' }, 'mo')).status).toBe(303)
    expect((await post(path, { isActive: 'no', formKey: 'a' }, 'mo')).status).toBe(303)
    const acts = listAudit(store, { subject: 'user tess', limit: 9 }).items
    expect(acts.filter((one) => one.act === 'set-active')).toHaveLength(1)
    expect((await get('/bench', 'tess')).status).toBe(303)
    const signIn = { name: 'tess', password: 'tess at the quay' }
    expect((await post('/sign-in', signIn)).status).toBe(422)
    expect(await (await get('/people', 'mo')).text()).toContain('Give access again')
    await post(path, { isActive: 'yes', formKey: 'b' }, 'mo')
    // The old session stays ended; signing in makes a new one.
    expect((await get('/bench', 'tess')).status).toBe(303)
    expect((await post('/sign-in', signIn)).status).toBe(303)
  })

  it('is never ended by oneself', async () => {
    const { post, store } = testApp()
    const { mo } = castOf(store)
    const answer = await post(`/people/${mo.id}/active`, { isActive: 'no' }, 'mo')
    expect(answer.status).toBe(409)
    expect(await answer.text()).toContain('Nobody ends their own access.')
    expect(castOf(store).mo.isActive).toBe(true)
  })

  it('is not changed by a malformed form or for nobody', async () => {
    const { post, store } = testApp()
    const { tess } = castOf(store)
    expect((await post(`/people/${tess.id}/active`, { isActive: 'maybe' }, 'mo')).status).toBe(422)
    expect((await post(`/people/${tess.id}/active`, {}, 'mo')).status).toBe(422)
    expect((await post('/people/999/active', { isActive: 'no' }, 'mo')).status).toBe(404)
    expect((await post('/people/x/active', { isActive: 'no' }, 'mo')).status).toBe(404)
    expect(castOf(store).tess.isActive).toBe(true)
  })
})

describe('the audit trail', () => {
  it('shows who did what about what, with the detail and its hash', async () => {
    const { get, store } = testApp()
    const text = await (await get('/audit', 'ian')).text()
    const [line] = listAudit(store, { subject: 'user tess', limit: 1 }).items
    expect(text).toContain('added a person')
    expect(text).toContain('user tess')
    expect(text).toContain(line!.hash)
    expect(text).toContain('&quot;displayName&quot;: &quot;Tess Turner&quot;')
    expect(text).toContain('npm run -s admin -- verify')
  })

  it('shows one subject, escaped in the form, and says where there is nothing', async () => {
    const { get } = testApp()
    const tess = await (await get('/audit?subject=user%20tess', 'mo')).text()
    expect(tess).toContain('Tess Turner')
    expect(tess).not.toContain('Ian Ives')
    const none = await (await get('/audit?subject=%3Cb%3E', 'mo')).text()
    expect(none).toContain('Nothing recorded about this')
    expect(none).toContain('value="&lt;b&gt;"')
  })

  it('leads through its pages without a gap', async () => {
    const { get, post, store } = testApp()
    for (let round = 0; round < 30; round++) {
      await post(`/people/${castOf(store).tom.id}/active`, { isActive: 'no' }, 'mo')
      await post(`/people/${castOf(store).tom.id}/active`, { isActive: 'yes' }, 'mo')
    }
    const seen: number[] = []
    let path: string | undefined = '/audit'
    for (let pages = 0; path !== undefined && pages < 5; pages++) {
      const text = await (await get(path, 'ian')).text()
      seen.push(...[...text.matchAll(/id="line-(\d+)"/g)].map((match) => Number(match[1])))
      path = /href="([^"]+)" rel="next"/.exec(text)?.[1]?.replaceAll('&amp;', '&')
    }
    const { count } = store.raw.prepare('SELECT count(*) AS count FROM audit').get() as {
      count: number
    }
    expect(count).toBeGreaterThan(60)
    expect(seen).toEqual(Array.from({ length: count }, (_, index) => count - index))
  })

  it('answers a cursor that is none with an empty page', async () => {
    const { get } = testApp()
    expect((await get('/audit?cursor=abc', 'ian')).status).toBe(200)
  })
})
