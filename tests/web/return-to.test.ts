import { describe, expect, test } from 'vitest'
import { castPassword } from '../support/cast.ts'
import { fillShop } from '../support/fill-shop.ts'
import { testApp, testOrigin } from '../support/test-app.ts'

/** Where the switch of the view leads back to, as the page says it. */
async function returnOf(answer: Response): Promise<string> {
  const page = await answer.text()
  const value = /name="returnTo" value="([^"]*)"/.exec(page)?.[1] ?? 'none'
  return value.replaceAll('&amp;', '&')
}

describe('switching the view', () => {
  test('leads back to the page with all that its address says', async () => {
    const shop = fillShop()
    const { get, post } = testApp(shop.store)
    const here = `/work-orders/new?seal=${shop.seal.id}&x=a,b%20%C5%81`
    expect(await returnOf(await get(here, 'tess'))).toBe(here)
    const answer = await post('/view', { view: 'lamp', returnTo: here }, 'tess')
    expect(answer.headers.get('location')).toBe(here)
  })

  test('leads from a refused form back to the page it was drawn on', async () => {
    const shop = fillShop()
    const { post } = testApp(shop.store)
    const customer = `/customers/${shop.customer.id}`
    const form = { serial: '' }
    const drawnOn = `${customer}/seals/new?next=receipt`
    const from = (referer: string) => post(`${customer}/seals`, form, 'tess', { referer })
    const refused = await from(`${testOrigin}${drawnOn}`)
    expect(refused.status).toBe(422)
    expect(await returnOf(refused)).toBe(drawnOn)
    for (const elsewhere of ['https://elsewhere.example/x', 'nonsense', '']) {
      expect(await returnOf(await from(elsewhere))).toBe('/')
    }
  })
})

describe('signing in', () => {
  const signIn = { name: 'tess', password: castPassword('tess') }

  test('leads on to the page that was asked for, with its question', async () => {
    const { get, post } = testApp()
    const asked = '/work-orders?q=SW-1&stage=lapping'
    const answer = await get(asked)
    const location = answer.headers.get('location') ?? ''
    expect(new URL(location, testOrigin).searchParams.get('next')).toBe(asked)
    const signedIn = await post('/sign-in', { ...signIn, next: asked })
    expect(signedIn.headers.get('location')).toBe(asked)
  })

  test.each([
    '//elsewhere.example',
    '/\\elsewhere.example',
    '/\t/elsewhere.example',
    '/x\\..\\y',
    'https://elsewhere.example',
    '/Łódź',
    '/x\r\nset-cookie: a=b',
    'bench',
  ])('leads to no address that is not plainly ours: %j', async (next) => {
    const { post } = testApp()
    const answer = await post('/sign-in', { ...signIn, next })
    expect(answer.headers.get('location')).toBe('/bench')
  })

  test('is asked of htmx in a way that leaves the page, not the part, for it', async () => {
    const shop = fillShop()
    const { post } = testApp(shop.store)
    const path = `/work-orders/${shop.workOrder.number}/flatness/preview`
    const answer = await post(path, {}, undefined, { 'hx-request': 'true' })
    // A redirect would be followed before htmx sees its header, and the sign-in page put in place.
    expect(answer.status).toBe(401)
    expect(answer.headers.get('hx-redirect')).toBe('/sign-in')
  })
})
