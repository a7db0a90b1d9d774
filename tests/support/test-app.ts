import { fileURLToPath } from 'node:url'
import type { Hono } from 'hono'
import { addSession } from '../../src/store/add-session.ts'
import { findUserByName } from '../../src/store/find-user-by-name.ts'
import type { Store } from '../../src/store/open.ts'
import { secretHash } from '../../src/store/secret-hash.ts'
import { createApp } from '../../src/web/app.ts'
import { type Assets, readAssets } from '../../src/web/assets.ts'
import type { AppEnv } from '../../src/web/context.ts'
import { openTestStore } from './open-test-store.ts'

export const testNow = '2026-11-25T10:00:00.000Z'
export const testOrigin = 'http://127.0.0.1:3000'

let assets: Assets | undefined
/** Several applications may stand over one store: each has sessions of its own. */
let appCount = 0

export type TestApp = {
  readonly app: Hono<AppEnv>
  readonly store: Store
  /** A cookie header for one of the cast, without going through the sign-in page. */
  readonly cookieOf: (name: string) => string
  readonly get: (path: string, as?: string, headers?: Record<string, string>) => Promise<Response>
  /** Posts a form as a browser on our own page does. */
  readonly post: (
    path: string,
    form: Record<string, string>,
    as?: string,
    headers?: Record<string, string>,
  ) => Promise<Response>
  /** Posts a form with a file, as a browser on our own page does. */
  readonly upload: (
    path: string,
    form: FormData,
    as?: string,
    headers?: Record<string, string>,
  ) => Promise<Response>
  /** Posts JSON with the session's cookie (or the headers given). */
  readonly postJson: (
    path: string,
    body: unknown,
    as?: string,
    headers?: Record<string, string>,
  ) => Promise<Response>
  /** Moves the clock of the app. */
  readonly setNow: (at: string) => void
}

/** The whole application over a store of its own, with a fixed clock and seeded randomness. */
export function testApp(store: Store = openTestStore()): TestApp {
  assets ??= readAssets(fileURLToPath(new URL('../..', import.meta.url)))
  appCount++
  let now = testNow
  let drawn = 0
  const app = createApp({
    store,
    assets,
    workshop: { name: 'Test Workshop', address: '1 Test Quay' },
    origin: testOrigin,
    now: () => new Date(now),
    randomBytes: (count) => Uint8Array.from({ length: count }, () => (drawn++ * 131 + 17) % 256),
    // The real Argon2id is tried in its own test; here it would cost 60 ms a sign-in.
    hashPassword: async (password) => `plain ${password}`,
    verifyPassword: async (hash, password) => hash === `plain ${password}`,
    demoAccounts: [],
    isInvented: false,
  })
  const cookies = new Map<string, string>()
  const ownCount = appCount
  const cookieOf = (name: string) => {
    const token = cookies.get(name) ?? `session-${ownCount}-of-${name}`
    if (cookies.has(name)) return `ringproof=${token}`
    const user = findUserByName(store, name)
    if (user === undefined) throw new Error(`${name} is not in the cast`)
    addSession(
      store,
      { tokenHash: secretHash(token), userId: user.id, expiresAt: '2099-01-01T00:00:00.000Z' },
      { userId: user.id, name: user.displayName, at: testNow },
    )
    cookies.set(name, token)
    return `ringproof=${token}`
  }
  const headersOf = (as: string | undefined, more: Record<string, string> | undefined) => ({
    origin: testOrigin,
    'sec-fetch-site': 'same-origin',
    ...(as === undefined ? {} : { cookie: cookieOf(as) }),
    ...more,
  })
  const send = async (path: string, init: RequestInit) =>
    app.request(`${testOrigin}${path}`, { redirect: 'manual', ...init })
  return {
    app,
    store,
    cookieOf,
    get: (path, as, headers) => send(path, { headers: headersOf(as, headers) }),
    post: (path, form, as, headers) =>
      send(path, {
        method: 'POST',
        body: new URLSearchParams(form).toString(),
        headers: {
          'content-type': 'application/x-www-form-urlencoded',
          ...headersOf(as, headers),
        },
      }),
    upload: (path, form, as, headers) =>
      send(path, { method: 'POST', body: form, headers: headersOf(as, headers) }),
    postJson: (path, body, as, headers) =>
      send(path, {
        method: 'POST',
        body: JSON.stringify(body),
        headers: { 'content-type': 'application/json', ...headersOf(as, headers) },
      }),
    setNow: (at) => {
      now = at
    },
  }
}
