import { describe, expect, test } from 'vitest'
import { roles } from '../../src/domain/role.ts'
import { addFacePhoto } from '../../src/store/add-face-photo.ts'
import { addFinding } from '../../src/store/add-finding.ts'
import { addFlatnessReading } from '../../src/store/add-flatness-reading.ts'
import { listFlatnessReadings } from '../../src/store/list-flatness-readings.ts'
import { type Route, type RouteName, routes } from '../../src/web/route-table.ts'
import { freshFinding } from '../support/build-finding.ts'
import { buildShop } from '../support/build-shop.ts'
import { actorOf } from '../support/cast.ts'
import { freshPhoto, freshWholeFace, workAndRelease } from '../support/shop-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

/** One of the cast for each role; Olga is a customer of another company. */
const personOf = { technician: 'tess', inspector: 'ian', manager: 'mo', customer: 'cora' } as const

const shop = buildShop()
// A customer sees a photograph only where a result came from it.
const photo = addFacePhoto(shop.store, freshPhoto(shop), actorOf(shop.cast.tess))
addFlatnessReading(shop.store, freshWholeFace(shop, photo), actorOf(shop.cast.tess))
addFinding(shop.store, freshFinding({ workOrderId: shop.workOrder.id }), actorOf(shop.cast.tess))
const { certificate } = workAndRelease(shop)
const web = testApp(shop.store)

/** The path of a route with records of Cora's company in it. */
function pathOf(name: RouteName): string {
  const path = routes[name].path
  const isCertificate = path.includes('/certificates/') || path.includes('/verify/')
  const ids: Readonly<Record<string, string>> = {
    number: isCertificate ? certificate.number : shop.workOrder.number,
    kind: 'flatness-reading',
    id: idOf(path),
  }
  return path
    .replace(':file{.+\\.pdf}', `${certificate.number}.pdf`)
    .replace(/:(\w+)/g, (_, key: string) => ids[key] ?? `unknown-${key}`)
}

function idOf(path: string): string {
  if (path.startsWith('/customers')) return String(shop.customer.id)
  if (path.startsWith('/seals')) return String(shop.seal.id)
  if (path.startsWith('/limit-sets')) return String(shop.limitSet.id)
  if (path.startsWith('/people')) return String(shop.cast.tom.id)
  if (path.includes('/results/')) {
    return String(listFlatnessReadings(shop.store, shop.workOrder.id)[0]!.id)
  }
  return String(shop.lamp.id)
}

const names = Object.keys(routes) as RouteName[]
const open = names.filter((name) => routes[name].who === 'public')
const closed = names.filter((name) => routes[name].who !== 'public')

function ask(app: TestApp, name: RouteName, as?: string): Promise<Response> {
  const { method, surface }: Route = routes[name]
  const path = pathOf(name)
  if (method === 'get') return app.get(path, as)
  return surface === 'api' ? app.postJson(path, {}, as) : app.post(path, {}, as)
}

describe('the route table', () => {
  test('is walked whole, and names every route that the application has', () => {
    expect(names.length).toBeGreaterThan(50)
    const mounted = web.app.routes
      .filter((one) => one.method !== 'ALL')
      .map((one) => `${one.method} ${one.path}`)
    const listed = names.map((name) => `${routes[name].method.toUpperCase()} ${routes[name].path}`)
    // Two stand outside the table on purpose: readiness and the assets, which know no user.
    expect([...new Set(mounted)].sort()).toEqual(
      [...new Set([...listed, 'GET /healthz', 'GET /assets/*'])].sort(),
    )
  })

  test.each(open)('%s is open to everyone', async (name) => {
    const response = await ask(web, name)
    expect([401, 403]).not.toContain(response.status)
    expect(response.status).toBeLessThan(500)
  })

  test.each(closed)('%s asks who one is', async (name) => {
    const response = await ask(web, name)
    if (routes[name].surface === 'api') {
      expect(response.status).toBe(401)
      expect(response.headers.get('www-authenticate')).toMatch(/^Bearer/)
    } else {
      expect(response.status).toBe(303)
      expect(response.headers.get('location')).toMatch(/^\/sign-in/)
    }
  })

  describe.each(roles)('for a %s', (role) => {
    test.each(closed)('%s', async (name) => {
      const { who }: Route = routes[name]
      const isAllowed = who === 'signed-in' || (who !== 'public' && who.includes(role))
      // A fresh application each: signing out ends a session, a password changes.
      const response = await ask(testApp(shop.store), name, personOf[role])
      if (isAllowed) expect([401, 403]).not.toContain(response.status)
      else expect(response.status).toBe(403)
      expect(response.status).toBeLessThan(500)
    })
  })

  const records = closed.filter(
    (name) => routes[name].who === 'signed-in' && /[:]/.test(routes[name].path),
  )

  test('has records that a customer may see', () => {
    expect(records.length).toBeGreaterThan(5)
  })

  test.each(records)('%s shows a customer their own record', async (name) => {
    expect((await ask(web, name, 'cora')).status).toBe(200)
  })

  test.each(records)('%s does not know the record for a stranger', async (name) => {
    const strange = await ask(web, name, 'olga')
    expect(strange.status).toBe(404)
    // The answer is the same as for a record that never was: nothing can be learned from it.
    const text = await strange.text()
    expect(text).not.toContain(shop.customer.name)
    expect(text).not.toContain(shop.seal.serial)
  })

  test('lists nothing of others to a customer', async () => {
    for (const path of ['/my-seals', '/certificates', '/api/v1/work-orders']) {
      const text = await (await web.get(path, 'olga')).text()
      expect(text).not.toContain(shop.seal.serial)
      expect(text).not.toContain(certificate.number)
      expect(await (await web.get(path, 'cora')).text()).toContain(
        path === '/certificates' ? certificate.number : shop.seal.serial,
      )
    }
  })
})
