import { describe, expect, it } from 'vitest'
import { instrumentFileBytesAtMost } from '../../src/domain/parse-instrument-file.ts'
import { listAudit } from '../../src/store/list-audit.ts'
import { listInstrumentFiles } from '../../src/store/list-instrument-files.ts'
import { verifyStore } from '../../src/store/verify-store.ts'
import { uploadLimitBytes } from '../../src/web/read-upload.ts'
import { buildShop } from '../support/build-shop.ts'
import { jpeg, jpegParts } from '../support/pictures.ts'
import { testApp } from '../support/test-app.ts'

function shopApp() {
  const shop = buildShop()
  const app = testApp(shop.store)
  const path = `/instruments/${shop.gauge.id}/files`
  const send = (file: File | string | null, more: Record<string, string> = {}, as = 'tess') => {
    const form = new FormData()
    for (const [name, value] of Object.entries({ formKey: 'k-file', ...more })) {
      form.append(name, value)
    }
    if (file !== null) form.append('file', file)
    return app.upload(path, form, as)
  }
  const kept = () => listInstrumentFiles(shop.store, shop.gauge.id)
  return { shop, ...app, path, send, kept }
}

const file = (bytes: Buffer | string, name: string, type = 'application/octet-stream') =>
  new File([typeof bytes === 'string' ? bytes : new Uint8Array(bytes)], name, { type })
const photo = jpeg({ beside: [jpegParts.exif(6), jpegParts.xmp] })

describe('a photo of an instrument', () => {
  it('is kept without where it was taken, and shown on the page', async () => {
    const { shop, get, send, kept } = shopApp()
    const answer = await send(file(photo, 'IMG 1.JPG', 'image/jpeg'))
    expect(answer.status).toBe(303)
    expect(answer.headers.get('location')).toBe(`/instruments/${shop.gauge.id}?recorded#files`)
    const [one] = kept()
    expect(one).toMatchObject({ kind: 'photo', name: 'IMG 1.jpg', byName: 'Tess Turner' })
    const href = `/instruments/${shop.gauge.id}/files/${one?.id}`
    const page = await (await get(`/instruments/${shop.gauge.id}`, 'mo')).text()
    expect(page).toContain(`src="${href}"`)
    expect(page).toContain('alt="G-01: IMG 1.jpg"')
    const shown = await get(href, 'ian')
    expect(shown.headers.get('content-type')).toBe('image/jpeg')
    expect(shown.headers.get('content-disposition')).toMatch(/^inline; filename="IMG 1.jpg"/)
    const bytes = Buffer.from(await shown.arrayBuffer())
    expect(bytes.includes('GPS')).toBe(false)
    expect(bytes.subarray(0, 3).toString('hex')).toBe('ffd8ff')
    const { items } = listAudit(shop.store, { subject: 'instrument G-01', limit: 1 })
    expect(items[0]?.act).toBe('add-instrument-file')
    expect(verifyStore(shop.store)).toEqual([])
  })

  it('is kept once, however often its form is sent', async () => {
    const { send, kept } = shopApp()
    const first = await send(file(photo, 'a.jpg'))
    const again = await send(file(photo, 'a.jpg'))
    expect(again.headers.get('location')).toBe(first.headers.get('location'))
    expect(kept()).toHaveLength(1)
    // The same key with another picture is another form.
    expect((await send(file(jpeg(), 'a.jpg'))).status).toBe(409)
  })
})

describe('a file of an instrument', () => {
  it('is handed over as a file, without any right, and as what its bytes are', async () => {
    const { shop, get, send, kept } = shopApp()
    const html = '<script>alert(1)</script>'
    expect((await send(file(html, 'p"ä.html', 'text/html'))).status).toBe(303)
    const [one] = kept()
    const shown = await get(`/instruments/${shop.gauge.id}/files/${one?.id}`, 'tess')
    expect(shown.headers.get('content-type')).toBe('text/plain; charset=utf-8')
    expect(shown.headers.get('content-disposition')).toBe(
      `attachment; filename="p__.html.txt"; filename*=UTF-8''p_%C3%A4.html.txt`,
    )
    expect(shown.headers.get('x-content-type-options')).toBe('nosniff')
    expect(shown.headers.get('content-security-policy')).toBe("default-src 'none'; sandbox")
    expect(shown.headers.get('cache-control')).toBe('private, no-cache')
    expect(await shown.text()).toBe(html)
  })

  it('belongs to a calibration where one is chosen', async () => {
    const { shop, get, send, kept } = shopApp()
    const [calibration] = shop.gauge.calibrations
    const of = { calibrationId: String(calibration?.id) }
    expect((await send(file('%PDF-1.7', 'K.pdf'), of)).status).toBe(303)
    expect(kept()[0]?.calibrationId).toBe(calibration?.id)
    const page = await (await get(`/instruments/${shop.gauge.id}`, 'tess')).text()
    expect(page).toContain(`certificate ${calibration?.certificateNumber}`)
    const other = { calibrationId: String(shop.lamp.calibrations[0]?.id), formKey: 'other-file' }
    const refused = await send(file('%PDF-1.7', 'K.pdf'), other)
    expect(refused.status).toBe(422)
    expect(await refused.text()).toContain('Choose a calibration of the list.')
    expect(kept()).toHaveLength(1)
  })

  it('keeps nothing of a path in its name', async () => {
    const { send, kept } = shopApp()
    await send(file('%PDF-1.7', '../../data/ringproof.sqlite'))
    expect(kept()[0]?.name).toBe('ringproof.sqlite.pdf')
  })

  it.each([
    ['nothing chosen', file('', ''), 'Choose a file that has something in it.'],
    ['no bytes', file('', 'empty.pdf'), 'Choose a file that has something in it.'],
    ['a text where a file belongs', 'K.pdf', 'file'],
    [
      'another type under a good name',
      file(Buffer.from('4d5a9000', 'hex'), 'a.jpg'),
      'none of the',
    ],
    ['half a picture', file(photo.subarray(0, 40), 'a.jpg'), 'cut off or damaged'],
    [
      'too much',
      file(Buffer.alloc(instrumentFileBytesAtMost + 1, 'x'), 'a.txt'),
      'larger than 10 MB',
    ],
  ])('is refused with a sentence: %s', async (_, sent, sentence) => {
    const { send, kept } = shopApp()
    const answer = await send(sent)
    expect(answer.status).toBe(422)
    const text = await answer.text()
    expect(text).toContain(sentence)
    expect(text).toContain('href="#file"')
    expect(text).toContain('value="k-file"')
    expect(kept()).toEqual([])
  })

  it('is refused unread where it is far too large, and so is any other large form', async () => {
    const { post, send, path, kept } = shopApp()
    const large = 'x'.repeat(uploadLimitBytes)
    expect((await send(file(large, 'a.txt'))).status).toBe(413)
    const other = path.replace('/files', '/holder')
    expect((await post(other, { holder: 'x'.repeat(300 * 1024) }, 'tess')).status).toBe(413)
    expect(kept()).toEqual([])
  })

  it('is not taken from a form that is none, or that holds several', async () => {
    const { post, upload, path, kept } = shopApp()
    expect((await post(path, { file: 'x' }, 'tess')).status).toBe(422)
    const form = new FormData()
    form.append('file', file('%PDF-1', 'a.pdf'))
    form.append('file', file('%PDF-2', 'b.pdf'))
    expect((await upload(path, form, 'tess')).status).toBe(422)
    const elsewhere = new FormData()
    elsewhere.append('other', file('%PDF-1', 'a.pdf'))
    expect((await upload(path, elsewhere, 'tess')).status).toBe(422)
    const torn = { 'content-type': 'multipart/form-data; boundary=x' }
    expect((await post(path, { file: 'x' }, 'tess', torn)).status).toBe(422)
    expect(kept()).toEqual([])
  })

  it('is taken from our own pages alone, and from staff alone', async () => {
    const { upload, send, path, kept } = shopApp()
    const form = new FormData()
    form.append('file', file('%PDF-1', 'a.pdf'))
    const foreign = { origin: 'https://elsewhere.example', 'sec-fetch-site': 'cross-site' }
    expect((await upload(path, form, 'tess', foreign)).status).toBe(403)
    expect((await upload(path, form)).status).toBe(303)
    expect((await send(file('%PDF-1', 'a.pdf'), {}, 'cora')).status).toBe(403)
    expect(kept()).toEqual([])
  })

  it('is not found under another instrument, another id or no id', async () => {
    const { shop, get, send, kept } = shopApp()
    await send(file('%PDF-1.7', 'K.pdf'))
    const id = kept()[0]?.id
    const at = async (instrument: number, of: unknown) =>
      (await get(`/instruments/${instrument}/files/${of}`, 'ian')).status
    expect(await at(shop.gauge.id, id)).toBe(200)
    expect(await at(shop.lamp.id, id)).toBe(404)
    expect(await at(shop.gauge.id, 99)).toBe(404)
    expect(await at(shop.gauge.id, 'x')).toBe(404)
    expect(await at(99, id)).toBe(404)
  })
})
