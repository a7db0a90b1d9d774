import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { listFacePhotos } from '../../../src/store/list-face-photos.ts'
import { listFlatnessReadings } from '../../../src/store/list-flatness-readings.ts'
import { verifyStore } from '../../../src/store/verify-store.ts'
import { buildShop } from '../../support/build-shop.ts'
import { testApp } from '../../support/test-app.ts'

const folder = new URL('../../../fixtures/files/bands/suite/', import.meta.url)
const bytesOf = (name: string) => new Uint8Array(readFileSync(new URL(`${name}.jpg`, folder)))
type Truth = {
  readonly id: string
  readonly pvLS: number
  readonly eps: number
  readonly clicks: { readonly outer: number[][]; readonly inner: number[][] }
}
const suite = JSON.parse(readFileSync(new URL('truth.json', folder), 'utf8')) as Truth[]
const truthOf = (id: string) => suite.find((one) => one.id === id)!

function shopApi() {
  const shop = buildShop()
  const app = testApp(shop.store)
  const face = shop.seal.components.find((one) => one.kind === 'rotating-face')!
  const path = `/api/v1/work-orders/${shop.workOrder.number}/flatness-readings`
  const common = {
    faceId: face.id,
    condition: 'as-left',
    lampInstrumentId: shop.lamp.id,
    opticalFlatInstrumentId: shop.flat.id,
    outerDiameterMm: 60,
  }
  const sendPhoto = (name: string, request: object, key?: string) => {
    const form = new FormData()
    form.set('image', new Blob([bytesOf(name)]), 'face.jpg')
    form.set('request', JSON.stringify(request))
    const headers = {
      cookie: app.cookieOf('tess'),
      ...(key === undefined ? {} : { 'idempotency-key': key }),
    }
    return app.app.request(path, { method: 'POST', body: form, headers })
  }
  const readings = () => listFlatnessReadings(shop.store, shop.workOrder.id)
  const photos = () => listFacePhotos(shop.store, shop.workOrder.id)
  return { shop, ...app, path, common, sendPhoto, readings, photos }
}

describe('a photograph sent by a program', { timeout: 60_000 }, () => {
  it('becomes a reading with its photograph, once for a key', async () => {
    const { shop, sendPhoto, common, readings, photos } = shopApi()
    const { clicks, eps, pvLS } = truthOf('core-001')
    const { outer: outerPoints, inner: innerPoints } = clicks
    const request = { ...common, innerDiameterMm: 60 * eps, outerPoints, innerPoints }
    const first = await sendPhoto('core-001', { ...request, lamp: 'helium' }, 'k1')
    expect(first.status).toBe(201)
    const body = (await first.json()) as { id: number; method: string; bands: number }
    expect(body).toMatchObject({ method: 'flatness/photo 1', pattern: 'whole-face' })
    // The bar of the method for a face below two bands: a tenth of a band.
    expect(Math.abs(body.bands - pvLS)).toBeLessThan(0.1)
    const again = await sendPhoto('core-001', { ...request, lamp: 'helium' }, 'k1')
    expect(again.headers.get('idempotency-replayed')).toBe('true')
    expect(readings()).toHaveLength(1)
    expect(photos()).toHaveLength(1)
    expect(readings()[0]?.wholeFace?.source).toMatchObject({ photoId: photos()[0]?.id })
    expect(verifyStore(shop.store)).toEqual([])
  })

  it('is refused with the reason where it gives no honest figure, and nothing is kept', async () => {
    const { sendPhoto, common, readings, photos } = shopApi()
    const { clicks, eps } = truthOf('refuse-000')
    const { outer: outerPoints, inner: innerPoints } = clicks
    const request = { ...common, innerDiameterMm: 60 * eps, outerPoints, innerPoints }
    const answer = await sendPhoto('refuse-000', request)
    expect(answer.status).toBe(422)
    const problem = (await answer.json()) as { type: string; reason: string }
    expect(problem.type).toMatch(/\/unreadable-picture$/)
    expect(problem.reason).toEqual(expect.any(String))
    expect([readings(), photos()]).toEqual([[], []])
  })

  it('names what is wrong with its fields', async () => {
    const { sendPhoto, common, readings } = shopApi()
    const request = { ...common, faceId: 999, lamp: 'sodium', innerDiameterMm: 70, colour: 'red' }
    const answer = await sendPhoto('core-001', request)
    expect(answer.status).toBe(422)
    const { errors } = (await answer.json()) as { errors: { field: string }[] }
    expect(errors.map((one) => one.field)).toContain('faceId')
    expect(readings()).toEqual([])
  })
})

/** Straight bands 60 px apart, their orders rising to the right, on a ring of 300 and 240 px. */
function marks() {
  return Array.from({ length: 40 }, (_, k) => {
    const angle = (2 * Math.PI * k) / 40
    const r = k % 2 === 0 ? 255 : 285
    const order = Math.round((2 * r * Math.cos(angle)) / 60) / 2
    return { x: 500 + 60 * order, y: 400 - r * Math.sin(angle), order }
  }).filter(({ x, y }) => Math.hypot(x - 500, y - 400) < 300 && Math.hypot(x - 500, y - 400) > 240)
}

describe('marks sent by a program', () => {
  it('become a reading of the whole face without a photograph', async () => {
    const { shop, postJson, path, common, readings } = shopApi()
    const ring = (r: number) => ({ cx: 500, cy: 400, rx: r, ry: r })
    const request = {
      ...common,
      innerDiameterMm: 48,
      imageWidth: 1000,
      imageHeight: 800,
      outer: ring(300),
      inner: ring(240),
      points: marks(),
      increasingTowards: 'gap-opens',
    }
    const answer = await postJson(path, request, 'tess')
    expect(await answer.clone().text()).not.toContain('errors')
    expect(answer.status).toBe(201)
    const [reading] = readings()
    expect(reading).toMatchObject({ method: 'flatness/marked 1', sees: 'whole-surface' })
    expect(reading?.wholeFace?.source).toMatchObject({ kind: 'marked', photoId: null })
    // The marks lie on a plane: what is left is the noise that rounding of places leaves.
    expect(reading?.bands).toBeLessThan(0.05)
    expect(verifyStore(shop.store)).toEqual([])
    const fewer = await postJson(path, { ...request, points: marks().slice(0, 12) }, 'tess')
    expect(fewer.status).toBe(422)
  })
})
