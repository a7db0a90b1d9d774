import { beforeEach, describe, expect, test } from 'vitest'
import { findingBlocks } from '../../reports/certificate/finding-blocks.ts'
import { readEvidence } from '../../src/store/read-evidence.ts'
import { verifyStore } from '../../src/store/verify-store.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { anotherOrder, workAndHandOver, workAndRelease } from '../support/shop-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let web: TestApp
let order = ''

beforeEach(() => {
  shop = buildShop()
  web = testApp(shop.store)
  order = `/work-orders/${shop.workOrder.number}`
})

/** The smallest PNG: one pixel, grey. */
const png = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==',
  'base64',
)

const finding = (more: Record<string, string> = {}) => ({
  formKey: 'f',
  part: 'stationary-seat',
  term: 'wide-track',
  severity: 'marked',
  isBeforeCleaning: 'yes',
  suspectedCause: 'shaft-run-out',
  ...more,
})
const send = (fields: Record<string, string>, as = 'tess', photo?: Buffer, at = order) => {
  const form = new FormData()
  for (const [name, value] of Object.entries(fields)) form.set(name, value)
  if (photo !== undefined) form.set('file', new File([new Uint8Array(photo)], 'track.png'))
  return web.upload(`${at}/findings`, form, as)
}
const line = (more: Record<string, string> = {}) => ({
  formKey: 'p',
  part: 'rotating-secondary',
  description: 'O-ring 50 x 4',
  fate: 'replaced',
  quantityCount: '1',
  batch: 'B-17',
  curedOn: '2026-03-01',
  ...more,
})
const evidence = () => readEvidence(shop.store, shop.workOrder.id)
const pageOf = async (as = 'tess') =>
  (await (await web.get(`${order}/strip`, as)).text()).replaceAll(/\s+/g, ' ')

describe('a finding', () => {
  test('is kept with its photograph, and says that the seal is stripped', async () => {
    const kept = await send(
      finding({ fromHour: '2', toHour: '5', observation: 'wide <b>' }),
      'tess',
      png,
    )
    expect(kept.status).toBe(303)
    expect(kept.headers.get('location')).toBe(`${order}/strip`)
    expect(evidence().findings).toMatchObject([
      {
        part: 'stationary-seat',
        term: 'wide-track',
        fromHour: 2,
        toHour: 5,
        isBeforeCleaning: true,
      },
    ])
    expect(evidence().workOrder.stage).toBe('stripped')
    const page = await pageOf()
    expect(page).toContain('Track wider than the nose, marked, 2 to 5 o’clock, before cleaning')
    expect(page).toContain('wide &lt;b&gt;')
    expect(page).toContain('Suspected cause, an opinion:</span> Run-out of the shaft')
    const picture = await web.get(`${order}/findings/1/picture`, 'ian')
    expect(picture.headers.get('content-type')).toBe('image/png')
    expect(Buffer.from(await picture.arrayBuffer()).equals(png)).toBe(true)
    expect(verifyStore(shop.store)).toEqual([])
  })

  test('is corrected with a reason, keeping its photograph', async () => {
    await send(finding(), 'tess', png)
    const wrong = await send(finding({ formKey: 'g', replacesId: '1', severity: 'severe' }))
    expect(wrong.status).toBe(422)
    const right = { formKey: 'h', replacesId: '1', reason: 'worse on the other side' }
    expect((await send(finding({ ...right, severity: 'severe' }))).status).toBe(303)
    const [first, second] = evidence().findings
    expect(first?.replacedById).toBe(2)
    expect(second).toMatchObject({ severity: 'severe', photoSha256: first?.photoSha256 })
    expect(await pageOf()).toContain('corrected since')
  })

  test('is corrected without the photograph where that was wrong, which stays with the first', async () => {
    await send(finding(), 'tess', png)
    const page = await (await web.get(`${order}/findings/new?replaces=1`, 'tess')).text()
    expect(page).toMatch(/type="checkbox" id="isPhotoTakenOut"/)
    const fresh = await (await web.get(`${order}/findings/new`, 'tess')).text()
    expect(fresh).not.toContain('isPhotoTakenOut')
    const right = { replacesId: '1', reason: 'photograph of another seal', isPhotoTakenOut: 'yes' }
    const both = await send(finding({ ...right, formKey: 'g' }), 'tess', png)
    expect(both.status).toBe(422)
    const told = await both.text()
    expect(told).toContain('Choose another photograph, or go without: not both.')
    expect(told).toMatch(/id="isPhotoTakenOut"[^>]*checked/)
    expect((await send(finding({ ...right, formKey: 'h' }))).status).toBe(303)
    const [first, second] = evidence().findings
    expect(first?.photoSha256).not.toBeNull()
    expect(second?.photoSha256).toBeNull()
    workAndRelease(shop)
    for (const id of [1, 2]) {
      expect((await web.get(`${order}/findings/${id}/picture`, 'cora')).status, `${id}`).toBe(404)
    }
    expect((await web.get(`${order}/findings/1/picture`, 'ian')).status).toBe(200)
  })

  test('takes no photograph out where there is none before', async () => {
    const answer = await send(finding({ isPhotoTakenOut: 'yes' }))
    expect(answer.status).toBe(422)
    expect(await answer.text()).toContain('Only where a finding is corrected')
    expect((await send(finding({ isPhotoTakenOut: 'maybe' }))).status).toBe(422)
  })

  test('is recorded once however often it is sent', async () => {
    await send(finding())
    await send(finding())
    expect(evidence().findings).toHaveLength(1)
  })

  test('of nothing asks for no severity', async () => {
    expect((await send(finding({ term: 'nothing-found', severity: '' }))).status).toBe(303)
    expect(evidence().findings[0]?.severity).toBeNull()
  })

  test('of nothing has neither severity nor place, by page or program', async () => {
    const nothing = { term: 'nothing-found' }
    const refused = await send(finding({ ...nothing, severity: 'marked', radialPlace: 'middle' }))
    expect(refused.status).toBe(422)
    const page = (await refused.text()).replaceAll(/\s+/g, ' ')
    expect(page).toContain('Your choice is taken back')
    expect(page).toContain('neither severity nor place')
    // Sent again as it is drawn, with the place left empty, it goes through.
    expect(page).not.toMatch(/name="severity"[^>]*checked/)
    expect(page).toMatch(/value="nothing-found"[^>]*checked/)
    const hours = await send(finding({ ...nothing, severity: '', fromHour: '2', toHour: '5' }))
    expect(hours.status).toBe(422)
    const api = `/api/v1${order}/findings`
    const body = { part: 'spring', ...nothing }
    for (const more of [{ severity: 'slight' }, { toHour: 0 }, { radialPlace: 7 }]) {
      const answer = await web.postJson(api, { ...body, ...more }, 'tess')
      const { errors } = (await answer.json()) as { errors: unknown[] }
      expect(errors).toEqual([
        {
          field: Object.keys(more)[0],
          message:
            'Where nothing was found there is neither severity nor place. Leave this empty, or say what was found.',
        },
      ])
    }
    expect(evidence().findings).toEqual([])
    const none = { severity: null, fromHour: null, toHour: null, radialPlace: null }
    expect((await web.postJson(api, { ...body, ...none }, 'tess')).status).toBe(201)
  })

  test.each([
    [{ part: '' }, 'Choose the part.'],
    [{ term: '' }, 'Choose what is seen.'],
    [{ term: 'clogged' }, 'This is not said of that part.'],
    [{ severity: '' }, 'Say how much of it there is.'],
    [{ fromHour: '2' }, 'Say where it ends too.'],
    [{ toHour: '2' }, 'Say where it begins too.'],
    [{ fromHour: '13', toHour: '2' }, 'from 0 to 12'],
    [{ observation: 'x'.repeat(501) }, 'at most 500'],
    [{ suspectedCause: 'witchcraft' }, 'Choose one of'],
    [{ colour: 'red' }, 'colour'],
  ])('is refused for %j, with a sentence and what was typed', async (more, sentence) => {
    const answer = await send(finding({ causeNote: 'see <i>log</i>', ...(more as object) }))
    const text = await answer.text()
    expect(answer.status, text.slice(0, 200)).toBe(422)
    expect(text).toContain(sentence)
    expect(text).toContain('see &lt;i&gt;log&lt;/i&gt;')
    expect(evidence().findings).toEqual([])
  })

  test('shows its place on the clock as it was typed, when refused and when corrected', async () => {
    const clockOf = (page: string) =>
      /<svg[^>]*aria-labelledby="finding-clock-title".*?<\/svg>/s.exec(page)?.[0] ?? ''
    const fresh = clockOf(await (await web.get(`${order}/findings/new`, 'tess')).text())
    expect(fresh).not.toContain('accent')
    const place = { fromHour: '2', toHour: '5', radialPlace: 'outer-edge' }
    const refused = clockOf(await (await send(finding({ ...place, severity: '' }))).text())
    expect(refused).toContain('fill-accent')
    // Half a place is no area, and is seen all the same.
    const half = clockOf(await (await send(finding({ fromHour: '2' }))).text())
    expect(half).toContain('stroke-accent')
    expect(half).not.toContain('fill-accent')
    await send(finding(place))
    const path = `${order}/findings/new?replaces=1`
    expect(clockOf(await (await web.get(path, 'tess')).text())).toBe(refused)
  })

  test('keeps an hour between two in a correction of something else', async () => {
    const body = { part: 'spring', term: 'clogged', severity: 'marked', fromHour: 3.5, toHour: 0 }
    expect((await web.postJson(`/api/v1${order}/findings`, body, 'tess')).status).toBe(201)
    const page = await (await web.get(`${order}/findings/new?replaces=1`, 'tess')).text()
    expect(page).toMatch(/<option value="3\.5" selected=""[^>]*>3\.5</)
    expect(page).toMatch(/<option value="12" selected=""/)
    const right = { replacesId: '1', reason: 'worse', part: 'spring', term: 'clogged' }
    await send(finding({ ...right, severity: 'severe', fromHour: '3.5', toHour: '12' }))
    expect(evidence().findings[1]).toMatchObject({ fromHour: 3.5, toHour: 12 })
  })

  test('takes no file but a photograph', async () => {
    const answer = await send(finding(), 'tess', Buffer.from('not a picture'))
    expect(answer.status).toBe(422)
    expect(await answer.text()).toContain('This file is no photograph.')
    expect((await send(finding(), 'tess', png.subarray(0, 40))).status).toBe(422)
    expect(evidence().findings).toEqual([])
  })
})

describe('what becomes of a part', () => {
  test('is kept with what a new one is known by, and corrected', async () => {
    expect((await web.post(`${order}/part-lines`, line(), 'tess')).status).toBe(303)
    const right = { formKey: 'q', replacesId: '1', reason: 'batch misread', batch: 'B-18' }
    expect((await web.post(`${order}/part-lines`, line(right), 'tess')).status).toBe(303)
    const page = await pageOf()
    expect(page).toContain('batch B-18, cured 2026-03-01')
    expect(page).toContain('Replaced')
    expect(evidence().partLines.map((one) => one.replacedById)).toEqual([2, null])
  })

  test('is asked of each part, and of all of them together, while nobody said it', async () => {
    const sections = async () => {
      const page = await pageOf()
      const at = page.indexOf('id="parts"')
      return { ofEach: page.slice(0, at), ofAll: page.slice(at) }
    }
    const before = await sections()
    expect(before.ofEach).toContain('not said yet what becomes of it')
    expect(before.ofAll).toContain('Nothing said yet of what becomes of the parts')
    expect(before.ofAll).not.toContain('what becomes of it')
    await web.post(`${order}/part-lines`, line(), 'tess')
    expect((await sections()).ofAll).not.toContain('Nothing said yet')
  })

  test('stands on the certificate with its note, on the page as in the document', async () => {
    await web.post(`${order}/part-lines`, line({ note: 'maker’s own box, opened' }), 'tess')
    const old = { formKey: 'r', part: 'spring', fate: 're-used', batch: '', curedOn: '' }
    await web.post(`${order}/part-lines`, line({ ...old, note: 'washed twice' }), 'tess')
    const { number, record } = workAndRelease(shop).certificate
    const page = await (await web.get(`/certificates/${number}`, 'cora')).text()
    const document = JSON.stringify(findingBlocks(record))
    const said = [
      ['batch B-17, cured 2026-03-01', 'maker’s own box, opened'],
      ['the part that came in', 'washed twice'],
    ]
    for (const texts of said) {
      expect(page).toContain(texts.join('. '))
      for (const text of texts) expect(document).toContain(text)
    }
  })

  test.each([
    [{ part: '' }, 'Choose the part.'],
    [{ fate: '' }, 'Say what becomes of it.'],
    [{ fate: 're-used' }, 'are of a new part'],
    [{ curedOn: 'spring' }, 'date that exists'],
    [{ quantityCount: '0' }, 'from 1 to 1000'],
    [{ quantityCount: '1.5' }, 'whole number'],
  ])('is refused for %j', async (more, sentence) => {
    const answer = await web.post(
      `${order}/part-lines`,
      line(more as Record<string, string>),
      'tess',
    )
    expect(answer.status).toBe(422)
    const text = await answer.text()
    expect(text).toContain(sentence)
    expect(text).toContain('O-ring 50 x 4')
    expect(evidence().partLines).toEqual([])
  })
})

describe('a seal in quarantine', () => {
  test('is not opened: no stage, no finding, no part, by page or program', async () => {
    const closed = anotherOrder(shop, { decontamination: 'not-stated' })
    const at = `/work-orders/${closed.number}`
    for (const path of ['strip', 'findings/new', 'part-lines/new']) {
      const page = await (await web.get(`${at}/${path}`, 'tess')).text()
      expect(page, path).toContain('a seal in quarantine')
      expect(page, path).not.toContain('Record the finding')
    }
    expect((await send(finding(), 'tess', undefined, at)).status).toBe(409)
    expect((await web.post(`${at}/part-lines`, line(), 'tess')).status).toBe(409)
    expect((await web.post(`${at}/stage`, { formKey: 's', to: 'stripped' }, 'tess')).status).toBe(
      409,
    )
    const api = `/api/v1${at}`
    const body = { part: 'spring', term: 'clogged', severity: 'marked' }
    const refused = await web.postJson(`${api}/findings`, body, 'tess')
    expect(refused.status).toBe(409)
    expect(refused.headers.get('content-type')).toBe('application/problem+json')
    const lines = { part: 'spring', fate: 're-used' }
    expect((await web.postJson(`${api}/part-lines`, lines, 'tess')).status).toBe(409)
    const kept = readEvidence(shop.store, closed.id)
    expect([kept.findings, kept.partLines]).toEqual([[], []])
    expect(kept.workOrder.stage).toBe('received')
  })
})

describe('the machine interface', () => {
  test('records findings and parts, once for a key, and refuses by name', async () => {
    const api = `/api/v1${order}`
    const body = { part: 'spring', term: 'clogged', severity: 'marked', suspectedCause: 'other' }
    const key = { 'idempotency-key': 'k1' }
    const first = await web.postJson(`${api}/findings`, body, 'tess', key)
    expect(first.status).toBe(201)
    const again = await web.postJson(`${api}/findings`, body, 'tess', key)
    expect(await again.json()).toEqual(await first.json())
    expect(evidence().findings).toHaveLength(1)
    const odd = await web.postJson(`${api}/findings`, { ...body, size: 4 }, 'tess')
    const { errors } = (await odd.json()) as { errors: { field: string }[] }
    expect([odd.status, errors[0]?.field]).toEqual([422, 'size'])
    await send(finding(), 'tess', png)
    const right = { ...body, replacesId: 2, reason: 'another seal', isPhotoTakenOut: true }
    expect((await web.postJson(`${api}/findings`, right, 'tess')).status).toBe(201)
    expect(evidence().findings.map((one) => one.photoSha256 !== null)).toEqual([false, true, false])
    const part = { part: 'spring', fate: 'replaced', batch: 'S-2', quantityCount: 6 }
    expect((await web.postJson(`${api}/part-lines`, part, 'tess')).status).toBe(201)
    const shown = (await (await web.get(api, 'mo')).json()) as Record<string, unknown[]>
    expect(shown.findings).toHaveLength(3)
    expect(shown.partLines).toMatchObject([{ batch: 'S-2', quantityCount: 6 }])
  })
})

describe('who may', () => {
  test('technicians record, the staff look, customers and strangers neither', async () => {
    await send(finding(), 'tess', png)
    for (const who of ['ian', 'mo', 'cora']) {
      expect((await send(finding({ formKey: who }), who)).status, who).toBe(403)
      expect((await web.post(`${order}/part-lines`, line(), who)).status, who).toBe(403)
    }
    expect((await web.get(`${order}/strip`, 'ian')).status).toBe(200)
    expect(await pageOf('ian')).not.toContain('Record a finding')
    expect((await web.get(`${order}/strip`, 'cora')).status).toBe(403)
    expect((await web.get(`${order}/findings/1/picture`, 'cora')).status).toBe(404)
    expect((await web.get(`${order}/findings/9/picture`, 'tess')).status).toBe(404)
    expect((await web.get('/work-orders/W-2026-9999/strip', 'tess')).status).toBe(404)
  })

  test('a customer sees the photograph that stands after the release, and none replaced', async () => {
    await send(finding(), 'tess', png)
    const right = { formKey: 'g', replacesId: '1', reason: 'another ring' }
    await send(finding(right), 'tess', png)
    const status = async (id: number, as: string) =>
      (await web.get(`${order}/findings/${id}/picture`, as)).status
    expect(await status(2, 'cora')).toBe(404)
    workAndRelease(shop)
    expect(await status(2, 'cora')).toBe(200)
    expect(await status(1, 'cora')).toBe(404)
    expect(await status(2, 'olga')).toBe(404)
    for (const as of ['tess', 'ian', 'mo']) expect(await status(1, as), as).toBe(200)
  })

  test('nothing is added to an order that was handed over', async () => {
    workAndHandOver(shop)
    expect((await send(finding())).status).toBe(409)
    expect((await web.post(`${order}/part-lines`, line(), 'tess')).status).toBe(409)
  })
})
