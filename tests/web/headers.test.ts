import { randomBytes } from 'node:crypto'
import { fileURLToPath } from 'node:url'
import { verify } from '@node-rs/argon2'
import { describe, expect, test } from 'vitest'
import { findUserByName } from '../../src/store/find-user-by-name.ts'
import { bodyLimitBytes, createApp } from '../../src/web/app.ts'
import { readAssets } from '../../src/web/assets.ts'
import { hashPassword, verifyPassword } from '../../src/web/password.ts'
import { strangerHash } from '../../src/web/try-password.ts'
import { castPassword } from '../support/cast.ts'
import { dumpStore } from '../support/dump-store.ts'
import { openTestStore } from '../support/open-test-store.ts'
import { testApp, testNow, testOrigin } from '../support/test-app.ts'

const assets = readAssets(fileURLToPath(new URL('../..', import.meta.url)))
const tess = { name: 'tess', password: castPassword('tess') }

/** The directives of a Content-Security-Policy by their names. */
function directivesOf(answer: Response): Map<string, string> {
  const policy = answer.headers.get('content-security-policy') ?? ''
  return new Map(
    policy.split(';').map((one) => {
      const [name = '', ...values] = one.trim().split(' ')
      return [name, values.join(' ')]
    }),
  )
}

describe('every page', () => {
  test.each([
    ['/sign-in', undefined],
    ['/bench', 'tess'],
    ['/verify', undefined],
    ['/no-such-page', undefined],
  ])('%s has a policy that lets no inline script or style run', async (path, as) => {
    const { get } = testApp()
    const answer = await get(path, as)
    const directives = directivesOf(answer)
    expect(directives.get('default-src')).toBe("'none'")
    expect(directives.get('script-src')).toMatch(/^'nonce-[\w+/=-]{16,}'$/)
    expect(directives.get('style-src')).toBe("'self'")
    expect(directives.get('frame-ancestors')).toBe("'none'")
    expect(directives.get('base-uri')).toBe("'none'")
    expect(directives.get('form-action')).toBe("'self'")
    expect([...directives.values()].join(' ')).not.toMatch(/unsafe|\*|http:/)
    const page = await answer.text()
    expect(page).not.toMatch(/<style|\sstyle="|\son\w+="|javascript:/i)
    const nonce = /'nonce-([^']+)'/.exec(directives.get('script-src') ?? '')?.[1]
    const scripts = page.match(/<script[^>]*>/g) ?? []
    expect(scripts.length).toBeGreaterThan(0)
    for (const script of scripts) {
      expect(script).toContain(`nonce="${nonce}"`)
      expect(script).toContain('src="/assets/')
    }
  })

  test('has a nonce of its own', async () => {
    const { get } = testApp()
    const first = directivesOf(await get('/sign-in')).get('script-src')
    expect(directivesOf(await get('/sign-in')).get('script-src')).not.toBe(first)
  })

  test('is not framed, sniffed, or told of elsewhere', async () => {
    const { headers } = await testApp().get('/sign-in')
    expect(headers.get('x-frame-options')).toBe('DENY')
    expect(headers.get('x-content-type-options')).toBe('nosniff')
    expect(headers.get('referrer-policy')).toBe('same-origin')
    expect(headers.get('strict-transport-security')).toBeNull()
    expect(headers.get('x-powered-by')).toBeNull()
  })
})

describe('the session cookie', () => {
  test('is HttpOnly and SameSite=Lax', async () => {
    const answer = await testApp().post('/sign-in', tess)
    expect(answer.status).toBe(303)
    const cookie = answer.headers.get('set-cookie') ?? ''
    expect(cookie).toMatch(/^ringproof=[\w-]{43}; /)
    expect(cookie).toMatch(/; HttpOnly(;|$)/)
    expect(cookie).toMatch(/; SameSite=Lax(;|$)/)
    expect(cookie).toMatch(/; Path=\/(;|$)/)
    expect(cookie).not.toMatch(/Secure|Domain/)
  })

  test('is Secure and bound to the host where the public address is https', async () => {
    const app = secureApp()
    const answer = await app.request('http://127.0.0.1:3000/sign-in', {
      method: 'POST',
      headers: {
        'content-type': 'application/x-www-form-urlencoded',
        origin: 'https://seals.example',
      },
      body: new URLSearchParams(tess).toString(),
    })
    const cookie = answer.headers.get('set-cookie') ?? ''
    expect(cookie).toMatch(/^__Host-ringproof=[\w-]{43}; /)
    for (const flag of ['Secure', 'HttpOnly', 'SameSite=Lax', 'Path=/']) {
      expect(cookie.split('; ')).toContain(flag)
    }
    expect(cookie).not.toContain('Domain')
    expect(answer.headers.get('strict-transport-security')).toBe('max-age=31536000')
    // The name without the prefix could be set by another service on the same host: it is not read.
    const value = cookie.split(';')[0]?.split('=')[1] ?? ''
    const account = (name: string) =>
      app.request('http://127.0.0.1:3000/account', { headers: { cookie: `${name}=${value}` } })
    expect((await account('__Host-ringproof')).status).toBe(200)
    expect((await account('ringproof')).status).toBe(303)
  })

  test('is another one at every sign-in, and the old one ends with signing out', async () => {
    const { post, get } = testApp()
    const cookieOf = (answer: Response) =>
      (answer.headers.get('set-cookie') ?? '').split(';')[0] ?? ''
    const first = cookieOf(await post('/sign-in', tess))
    const second = cookieOf(await post('/sign-in', tess, undefined, { cookie: first }))
    expect(second).not.toBe(first)
    expect((await get('/account', undefined, { cookie: first })).status).toBe(200)
    await post('/sign-out', {}, undefined, { cookie: first })
    expect((await get('/account', undefined, { cookie: first })).status).toBe(303)
    expect((await get('/account', undefined, { cookie: second })).status).toBe(200)
  })
})

describe('a request of another site', () => {
  const form = { name: 'Forged Works', address: '1 Road', contact: 'x', formKey: 'k1' }

  test.each([
    [{ origin: 'https://elsewhere.example', 'sec-fetch-site': 'cross-site' }],
    [{ origin: 'https://elsewhere.example' }],
    [{ origin: 'http://127.0.0.1:3001', 'sec-fetch-site': 'same-site' }],
    [{ origin: 'null', 'sec-fetch-site': 'cross-site' }],
    [{ origin: 'http://127.0.0.1:3000.elsewhere.example' }],
    [{ 'sec-fetch-site': 'cross-site' }],
    [{}],
  ])('posting a form with %o is refused with 403 and records nothing', async (sent) => {
    const { app, post, cookieOf, store } = testApp()
    expect((await post('/customers', { ...form, name: 'Ours', formKey: 'k0' }, 'mo')).status).toBe(
      303,
    )
    const before = dumpStore(store)
    const answer = await app.request(`${testOrigin}/customers`, {
      method: 'POST',
      headers: {
        'content-type': 'application/x-www-form-urlencoded',
        cookie: cookieOf('mo'),
        ...sent,
      },
      body: new URLSearchParams(form).toString(),
    })
    expect(answer.status).toBe(403)
    expect(dumpStore(store)).toEqual(before)
  })

  test.each(['application/json', 'text/plain', 'application/x-www-form-urlencoded'])(
    'posting %s to the machine interface with a session’s cookie records nothing',
    async (type) => {
      const { app, cookieOf, store } = testApp()
      const cookie = cookieOf('mo')
      const before = dumpStore(store)
      const answer = await app.request(`${testOrigin}/api/v1/customers`, {
        method: 'POST',
        headers: {
          'content-type': type,
          cookie,
          origin: 'https://elsewhere.example',
          'sec-fetch-site': 'cross-site',
        },
        body: JSON.stringify({ name: 'Forged Works', address: '1 Road', contact: 'x' }),
      })
      expect([403, 415]).toContain(answer.status)
      expect(dumpStore(store)).toEqual(before)
    },
  )
})

describe('a body larger than is taken', () => {
  const large = 'x'.repeat(bodyLimitBytes.usual + 1)

  test.each(['/customers', '/sign-in', '/view'])('is refused with 413 at %s', async (path) => {
    const { post, store } = testApp()
    const before = dumpStore(store)
    const answer = await post(path, { name: large, formKey: 'k' })
    expect(answer.status).toBe(413)
    // A person sent it: they are answered by a page.
    expect(answer.headers.get('content-type')).toMatch(/^text\/html/)
    expect(await answer.text()).toContain('The request is larger than is taken here.')
    expect(dumpStore(store)).toEqual(before)
  })

  test('is refused with 413 by the machine interface, as problem details', async () => {
    const answer = await testApp().postJson('/api/v1/customers', { name: large }, 'mo')
    expect(answer.status).toBe(413)
    expect(answer.headers.get('content-type')).toBe('application/problem+json')
    expect(await answer.json()).toMatchObject({ status: 413, type: '/problems/too-large' })
  })

  test('is refused also where no length is announced', async () => {
    const { app, cookieOf } = testApp()
    const pieces = new ReadableStream<Uint8Array>({
      start(controller) {
        controller.enqueue(Buffer.from('name='))
        controller.enqueue(Buffer.from(large))
        controller.close()
      },
    })
    const init = {
      method: 'POST',
      headers: {
        'content-type': 'application/x-www-form-urlencoded',
        cookie: cookieOf('mo'),
        origin: testOrigin,
        'sec-fetch-site': 'same-origin',
      },
      body: pieces,
      duplex: 'half',
    } as const
    expect((await app.request(`${testOrigin}/customers`, init)).status).toBe(413)
  })
})

describe('guessing a password', () => {
  const wrong = { name: 'tess', password: 'not her password' }

  test('is slowed after the fifth failure: 429 with Retry-After, for the right one too', async () => {
    const { post, setNow } = testApp()
    for (let n = 0; n < 5; n++) expect((await post('/sign-in', wrong)).status).toBe(422)
    const answer = await post('/sign-in', tess)
    expect(answer.status).toBe(429)
    expect(answer.headers.get('retry-after')).toBe('2')
    expect(answer.headers.get('set-cookie')).toBeNull()
    setNow(new Date(Date.parse(testNow) + 2000).toISOString())
    expect((await post('/sign-in', tess)).status).toBe(303)
  })

  test('is slowed for a name that nobody has as well', async () => {
    const { post } = testApp()
    const nobody = { name: 'nobody', password: 'x' }
    for (let n = 0; n < 5; n++) expect((await post('/sign-in', nobody)).status).toBe(422)
    expect((await post('/sign-in', nobody)).status).toBe(429)
  })

  test('many at once is no faster than one after another', async () => {
    const { post } = testApp()
    const answers = await Promise.all(Array.from({ length: 30 }, () => post('/sign-in', wrong)))
    expect(answers.filter((one) => one.status === 422)).toHaveLength(5)
    expect(answers.filter((one) => one.status === 429)).toHaveLength(25)
  })

  test('is slowed where the password is changed, at a session left open', async () => {
    const { post } = testApp()
    const guess = { old: 'not her password', new: 'a new long password' }
    for (let n = 0; n < 5; n++) {
      expect((await post('/account/password', guess, 'tess')).status).toBe(422)
    }
    const answer = await post('/account/password', { ...guess, old: tess.password }, 'tess')
    expect(answer.status).toBe(429)
    expect(answer.headers.get('retry-after')).toBe('2')
  })
})

describe('a password', () => {
  test('is kept as Argon2id, with a salt of its own', async () => {
    const first = await hashPassword('salt marsh heron')
    expect(first).toMatch(/^\$argon2id\$v=19\$m=65536,t=3,p=1\$[\w+/]{22}\$[\w+/]{43}$/)
    expect(await hashPassword('salt marsh heron')).not.toBe(first)
    expect(await verifyPassword(first, 'salt marsh heron')).toBe(true)
    expect(await verifyPassword(first, 'salt marsh heroN')).toBe(false)
    expect(await verifyPassword(first, '')).toBe(false)
    expect(await verifyPassword('plain salt marsh heron', 'salt marsh heron')).toBe(false)
  })

  test('changed by its owner is stored as Argon2id', async () => {
    const app = secureApp()
    const headers = {
      'content-type': 'application/x-www-form-urlencoded',
      origin: 'https://seals.example',
    }
    const send = (path: string, form: Record<string, string>, cookie = '') =>
      app.request(`http://127.0.0.1:3000${path}`, {
        method: 'POST',
        headers: { ...headers, cookie },
        body: new URLSearchParams(form).toString(),
      })
    const cookie = (await send('/sign-in', tess)).headers.get('set-cookie')?.split(';')[0] ?? ''
    const change = { old: tess.password, new: 'salt marsh heron' }
    expect((await send('/account/password', change, cookie)).status).toBe(303)
    const kept = findUserByName(app.store, 'tess')?.passwordHash ?? ''
    expect(kept).toMatch(/^\$argon2id\$/)
    expect(await verify(kept, 'salt marsh heron')).toBe(true)
  })

  test('of an unknown name takes as long to refuse: it is tried against a real hash', async () => {
    // A malformed hash would be refused at once, and tell a stranger which names exist.
    await expect(verify(strangerHash, 'anything')).resolves.toBe(false)
    expect(strangerHash).toMatch(/^\$argon2id\$v=19\$m=65536,t=3,p=1\$/)
  })
})

/** The application as it stands behind a proxy with HTTPS, with the real Argon2id. */
function secureApp() {
  const store = openTestStore()
  const app = createApp({
    store,
    assets,
    workshop: { name: 'Test Workshop', address: '1 Test Quay' },
    origin: 'https://seals.example',
    now: () => new Date(testNow),
    randomBytes: (count) => randomBytes(count),
    hashPassword,
    verifyPassword: async (hash, password) =>
      hash.startsWith('plain ') ? hash === `plain ${password}` : verifyPassword(hash, password),
    demoAccounts: [],
    isInvented: false,
  })
  return Object.assign(app, { store })
}
