import { readFileSync } from 'node:fs'
import sharp from 'sharp'
import { describe, expect, it, vi } from 'vitest'
import { listFacePhotos } from '../../src/store/list-face-photos.ts'
import { listFlatnessReadings } from '../../src/store/list-flatness-readings.ts'
import { verifyStore } from '../../src/store/verify-store.ts'
import { buildShop } from '../support/build-shop.ts'
import { testApp } from '../support/test-app.ts'

const folder = new URL('../../fixtures/files/bands/suite/', import.meta.url)
const bytesOf = (name: string) => readFileSync(new URL(`${name}.jpg`, folder))

// A photograph is read in a thread of its own: two seconds alone, many beside other work.
vi.setConfig({ testTimeout: 30_000 })

function shopApp() {
  const shop = buildShop()
  const app = testApp(shop.store)
  const face = shop.seal.components.find((one) => one.kind === 'rotating-face')!
  const order = `/work-orders/${shop.workOrder.number}`
  const send = (bytes: Buffer, key = 'k-photo', as = 'tess') => {
    const form = new FormData()
    form.append('formKey', key)
    form.append('faceId', String(face.id))
    form.append('note', '')
    form.append('file', new File([new Uint8Array(bytes)], 'IMG_1.HEIC'))
    return app.upload(`${order}/face-photos`, form, as)
  }
  const photos = () => listFacePhotos(shop.store, shop.workOrder.id)
  const readings = () => listFlatnessReadings(shop.store, shop.workOrder.id)
  const fields = (more: Record<string, string> = {}) => ({
    formKey: 'k-read',
    kind: 'photo',
    condition: 'as-left',
    lampInstrumentId: String(shop.lamp.id),
    opticalFlatInstrumentId: String(shop.flat.id),
    ...diametersOf(photos()[0]),
    ...more,
  })
  return { shop, ...app, face, order, send, photos, readings, fields }
}

/** As the edges were found, so that they belong to one ring. */
function diametersOf(photo: ReturnType<typeof listFacePhotos>[number] | undefined) {
  const { outer, inner } = photo?.foundEdges ?? { outer: { rx: 10 }, inner: { rx: 8 } }
  return { outerDiameterMm: '60', innerDiameterMm: String((60 * inner.rx) / outer.rx) }
}

describe('a photograph of a face', { timeout: 60_000 }, () => {
  it('is kept with its edges, whatever it is called', async () => {
    const { shop, send, photos, get } = shopApp()
    const answer = await send(bytesOf('core-000'))
    expect(answer.status).toBe(303)
    const [photo] = photos()
    expect(answer.headers.get('location')).toMatch(new RegExp(`/face-photos/${photo?.id}$`))
    expect(photo).toMatchObject({ mediaType: 'image/jpeg', recordedByName: 'Tess Turner' })
    expect(photo?.foundEdges?.outer.rx).toBeGreaterThan(100)
    const page = await get(`/work-orders/${shop.workOrder.number}/face-photos/${photo?.id}`, 'tess')
    expect(page.status).toBe(200)
    const href = `/work-orders/${shop.workOrder.number}/face-photos/${photo?.id}/picture`
    const picture = await get(href, 'ian')
    expect(picture.headers.get('content-type')).toBe('image/jpeg')
    expect(picture.headers.get('content-security-policy')).toContain('sandbox')
    // To a customer only once the order is released.
    expect((await get(href, 'cora')).status).toBe(404)
    expect((await get(href, 'olga')).status).toBe(404)
    expect(verifyStore(shop.store)).toEqual([])
  })

  it('is kept once, however often its form is sent', async () => {
    const { send, photos } = shopApp()
    const first = await send(bytesOf('core-000'))
    const again = await send(bytesOf('core-000'))
    expect(again.headers.get('location')).toBe(first.headers.get('location'))
    expect(photos()).toHaveLength(1)
  })

  it.each([
    ['taken', 0],
    ['chosen', 1],
  ])('is kept where it was %s, and the other control of the field left empty', async (_, at) => {
    const { shop, upload, face, order, photos } = shopApp()
    const line = 'x'.repeat(30)
    // As browsers write it: a control that was left empty is a file without name and bytes.
    const part = (name: string, more: string, bytes: Buffer | string) => [
      Buffer.from(`--${line}\r\nContent-Disposition: form-data; name="${name}"${more}\r\n\r\n`),
      Buffer.from(bytes),
      Buffer.from('\r\n'),
    ]
    const none = part('file', '; filename=""', '')
    const file = part('file', '; filename="IMG_1.jpg"', bytesOf('core-000'))
    const body = Buffer.concat([
      ...part('formKey', '', 'k-two'),
      ...part('faceId', '', String(face.id)),
      ...part('note', '', ''),
      ...(at === 0 ? [...file, ...none] : [...none, ...file]),
      Buffer.from(`--${line}--\r\n`),
    ])
    const type = { 'content-type': `multipart/form-data; boundary=${line}` }
    const answer = await upload(`${order}/face-photos`, body as unknown as FormData, 'tess', type)
    expect(answer.status).toBe(303)
    expect(photos()).toHaveLength(1)
    expect(verifyStore(shop.store)).toEqual([])
  })

  it('is refused where two were sent', async () => {
    const { upload, face, order, photos } = shopApp()
    const form = new FormData()
    form.append('formKey', 'k-two')
    form.append('faceId', String(face.id))
    const file = new File([new Uint8Array(bytesOf('core-000'))], 'IMG_1.jpg')
    for (const one of [file, file]) form.append('file', one)
    expect((await upload(`${order}/face-photos`, form, 'tess')).status).toBe(422)
    expect(photos()).toEqual([])
  })

  it('is kept without where it was taken', async () => {
    const { send, photos, get, order } = shopApp()
    const size = { width: 60, height: 40, channels: 3 as const, background: '#888' }
    const taken = await sharp({ create: size })
      .withExif({ IFD0: { Copyright: 'somebody' }, IFD3: { GPSLatitudeRef: 'N' } })
      .jpeg()
      .toBuffer()
    expect(taken.includes('somebody')).toBe(true)
    await send(taken)
    const [photo] = photos()
    const bytes = await (
      await get(`${order}/face-photos/${photo?.id}/picture`, 'tess')
    ).arrayBuffer()
    expect(Buffer.from(bytes).includes('somebody')).toBe(false)
    // Nothing banded is in it: the technician sets the edges.
    expect(photo?.foundEdges).toBeNull()
  })

  it.each([
    ['nothing', Buffer.alloc(0), 'Choose a file'],
    ['a text', Buffer.from('not a photo'), 'This file is no photograph'],
    ['a HEIC', Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic', 'latin1'), 'HEIC'],
    ['half a photo', bytesOf('core-000').subarray(0, 20_000), 'cut off or damaged'],
  ])('is refused where it is %s, and nothing is kept', async (_, bytes, sentence) => {
    const { send, photos } = shopApp()
    const answer = await send(bytes)
    expect(answer.status).toBe(422)
    expect(photos()).toEqual([])
    expect(await answer.text()).toContain(sentence)
  })
})

describe('reading a photograph', { timeout: 60_000 }, () => {
  it('records flatness, map and where it comes from, once', async () => {
    const { shop, send, photos, readings, fields, post, order } = shopApp()
    await send(bytesOf('core-000'))
    const at = `${order}/face-photos/${photos()[0]?.id}/reading`
    expect((await post(at, fields(), 'tess')).status).toBe(303)
    expect((await post(at, fields(), 'tess')).status).toBe(303)
    const [reading, ...more] = readings()
    expect(more).toEqual([])
    expect(reading).toMatchObject({
      pattern: 'whole-face',
      sees: 'whole-surface',
      method: 'flatness/photo 1',
      form: expect.any(String),
    })
    const truth = JSON.parse(readFileSync(new URL('truth.json', folder), 'utf8')) as {
      id: string
      pvLS: number
    }[]
    const expected = truth.find((one) => one.id === 'core-000')!.pvLS
    // Its own bar: a tenth of a band or 5 %; the edges here are those that the program found.
    expect(Math.abs(reading!.bands! - expected)).toBeLessThan(Math.max(0.1, 0.05 * expected))
    expect(reading?.wholeFace).toMatchObject({
      source: { kind: 'photo', photoId: photos()[0]?.id, wedge: null },
      isSignKnown: false,
      taperUm: null,
    })
    expect(reading?.uncertainty?.budget.map((one) => one.source)).toContain('optical-flat')
    expect(verifyStore(shop.store)).toEqual([])
  })

  it('gives the sign when somebody saw where the gap opens', async () => {
    const { send, photos, readings, fields, post, order } = shopApp()
    await send(bytesOf('core-000'))
    const at = `${order}/face-photos/${photos()[0]?.id}/reading`
    await post(at, fields({ opensTowardsDeg: '0' }), 'tess')
    const [reading] = readings()
    expect(reading?.wholeFace?.isSignKnown).toBe(true)
    expect(reading?.wholeFace?.taperUm).not.toBeNull()
  })

  it('streams its progress and the answer to the page', async () => {
    const { send, photos, fields, post, order, readings } = shopApp()
    await send(bytesOf('core-000'))
    const at = `${order}/face-photos/${photos()[0]?.id}/preview`
    const answer = await post(at, fields(), 'tess', { accept: 'application/x-ndjson' })
    const lines = (await answer.text())
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as { progress?: number; html?: string })
    expect(lines.filter((one) => one.progress !== undefined).length).toBeGreaterThan(2)
    expect(lines.at(-1)?.html).toBeTypeOf('string')
    expect(readings()).toEqual([])
  })

  it('records nothing of a photograph without bands, and says why', async () => {
    const { send, photos, readings, fields, post, order } = shopApp()
    await send(bytesOf('refuse-000'))
    const edges = {
      'outer.cx': '500',
      'outer.cy': '500',
      'outer.rx': '300',
      'outer.ry': '300',
      'outer.rotationDeg': '0',
      'inner.cx': '500',
      'inner.cy': '500',
      'inner.rx': '240',
      'inner.ry': '240',
      'inner.rotationDeg': '0',
    }
    const at = `${order}/face-photos/${photos()[0]?.id}/reading`
    const answer = await post(at, fields({ ...edges, innerDiameterMm: '48' }), 'tess')
    expect(answer.status).toBe(422)
    expect(readings()).toEqual([])
  })

  it('refuses the photograph of another order, and roles that do not measure', async () => {
    const { send, photos, get, order, post, fields } = shopApp()
    await send(bytesOf('core-000'))
    const id = photos()[0]?.id
    expect((await get(`${order}/face-photos/999`, 'tess')).status).toBe(404)
    expect((await get(`${order}/face-photos/x`, 'tess')).status).toBe(404)
    expect((await get(`${order}/face-photos/${id}`, 'ian')).status).toBe(403)
    expect((await post(`${order}/face-photos/${id}/reading`, fields(), 'ian')).status).toBe(403)
  })
})

describe('a line grid', { timeout: 60_000 }, () => {
  it('records the two departures as a figure of the whole face', async () => {
    const { send, photos, readings, fields, post, order } = shopApp()
    await send(bytesOf('core-000'))
    const grid = {
      kind: 'line-grid',
      gridDirectionDeg: '10',
      gridSpacingPx: '40',
      gridOffsetPx: '0',
      oneWayBands: '0.5',
      otherWayBands: '0.25',
    }
    await post(`${order}/face-photos/${photos()[0]?.id}/reading`, fields(grid), 'tess')
    const [reading] = readings()
    expect(reading).toMatchObject({ method: 'flatness/line-grid 1', sees: 'whole-surface' })
    // Helium: 587.5618 nm / 2 x 0.75, by the wavelength table of the project.
    // The view is that of the edge which was found.
    const { rx = 1, ry = 1 } = photos()[0]?.foundEdges?.outer ?? {}
    const cosine = Math.min(rx, ry) / Math.max(rx, ry)
    expect(cosine).toBeLessThan(1)
    expect(reading?.flatnessUm).toBeCloseTo(((0.5875618 / 2) * 0.75) / cosine, 6)
    expect(reading?.wholeFace?.surface).toBeNull()
  })
})
