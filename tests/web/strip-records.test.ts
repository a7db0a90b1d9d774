import { beforeEach, describe, expect, it } from 'vitest'
import { addAssembly } from '../../src/store/add-assembly.ts'
import { addSpringCheck } from '../../src/store/add-spring-check.ts'
import { readEvidence } from '../../src/store/read-evidence.ts'
import { buildShop, type Shop } from '../support/build-shop.ts'
import { actorOf } from '../support/cast.ts'
import { formOf } from '../support/form-of.ts'
import { addMeasuringInstruments } from '../support/measuring-instruments.ts'
import { anotherOrder, workAndHandOver, workAndRelease } from '../support/shop-steps.ts'
import { freshAssembly, freshSpring, stripAndAssemble } from '../support/strip-steps.ts'
import { type TestApp, testApp, testOrigin } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
let order: string
let face: string
beforeEach(() => {
  shop = buildShop()
  app = testApp(shop.store)
  order = `/work-orders/${shop.workOrder.number}`
  face = String(shop.seal.components.find((one) => one.kind === 'stationary-seat')!.id)
})

/** As the forms send them: every field, empty ones too. */
const track = (changes: Record<string, string> = {}): Record<string, string> => ({
  formKey: 'a-key',
  componentId: face,
  noseWidthMm: '3.95',
  'trackWidths[0].widthMm': '4,20',
  'trackWidths[1].widthMm': '',
  'trackWidths[2].widthMm': '4.10',
  offsetMm: '',
  offsetHour: '',
  instrumentId: '',
  note: '',
  ...changes,
})
const spring = (changes: Record<string, string> = {}): Record<string, string> => ({
  formKey: 'a-key',
  condition: 'as-left',
  springsCount: '6',
  freeLengthMm: '20',
  newLengthMm: '',
  'loads[0].lengthMm': '',
  'loads[0].loadN': '',
  'loads[1].lengthMm': '15',
  'loads[1].loadN': '15',
  rateNPerMm: '',
  workingLengthMm: '14',
  solidLengthMm: '9',
  instrumentId: '',
  note: '',
  ...changes,
})
const assembly = (changes: Record<string, string> = {}): Record<string, string> => ({
  formKey: 'a-key',
  workingLengthMm: '14',
  designWorkingLengthMm: '14',
  workingLengthToleranceMm: '0.5',
  measuredLoadN: '',
  designLoadN: '110',
  loadTolerancePercent: '10',
  designSource: 'drawing 12 B',
  'setScrews[0].name': 'M6, drive collar',
  'setScrews[0].quantityCount': '4',
  'setScrews[0].torqueNm': '8',
  'setScrews[0].designTorqueNm': '10',
  'setScrews[1].name': '',
  'setScrews[1].quantityCount': '',
  torqueTolerancePercent: '10',
  clips: 'fitted',
  clipsCount: '4',
  lubricant: 'silicone grease',
  isTurningFree: 'yes',
  note: '',
  ...changes,
})

const forms = { 'wear-tracks': track, 'spring-checks': spring, assembly } as const
type Place = keyof typeof forms
const places = Object.keys(forms) as Place[]
const send = (place: Place, changes: Record<string, string> = {}, as = 'tess', at = order) =>
  app.post(`${at}/${place}`, forms[place](changes), as)
const preview = async (place: Place, changes: Record<string, string> = {}) =>
  (await app.post(`${order}/${place}/preview`, forms[place](changes), 'tess')).text()
const open = async (place: Place, query = '', at = order) =>
  (await app.get(`${at}/${place}/new${query}`, 'tess')).text()
const traveller = async (as = 'tess') => (await app.get(order, as)).text()
const evidence = () => readEvidence(shop.store, shop.workOrder.id)

describe('the forms of the strip bench and of assembly', () => {
  it.each(places)(
    '%s: warns before it asks a number, and leaves site rules first',
    async (place) => {
      const page = await open(place)
      const warned = page.indexOf('class="caution"')
      expect(warned).toBeGreaterThan(0)
      expect(warned).toBeLessThan(page.indexOf('inputmode="decimal"'))
      expect(page).toMatch(/[Ss]ite rules/)
    },
  )

  it.each(places)('%s: is the technician’s, and unknown for no order', async (place) => {
    for (const as of ['ian', 'mo', 'cora', 'olga']) {
      expect((await send(place, {}, as)).status, as).toBe(403)
    }
    const nowhere = '/work-orders/W-2026-9999'
    expect((await app.get(`${nowhere}/${place}/new`, 'tess')).status).toBe(404)
    expect((await send(place, {}, 'tess', nowhere)).status).toBe(404)
  })

  it.each(places)('%s: gives way to a caution while the seal is in quarantine', async (place) => {
    const { number } = anotherOrder(shop, { decontamination: 'not-stated' })
    const answer = await app.get(`/work-orders/${number}/${place}/new`, 'tess')
    expect(answer.status).toBe(409)
    const page = await answer.text()
    expect(page).toContain('a seal in quarantine')
    expect(page).toContain(`href="/work-orders/${number}#decontamination"`)
    expect(page).not.toContain('inputmode="decimal"')
    expect((await send(place, {}, 'tess', `/work-orders/${number}`)).status).toBe(409)
  })

  it.each(places)('%s: is refused once the order is handed over', async (place) => {
    workAndHandOver(shop)
    expect((await app.get(`${order}/${place}/new`, 'tess')).status).toBe(409)
    expect((await send(place)).status).toBe(409)
  })

  it.each(places)('%s: is recorded once, however often it is sent', async (place) => {
    const first = await send(place)
    expect(first.status).toBe(303)
    expect((await send(place)).headers.get('location')).toBe(first.headers.get('location'))
    const { wearTracks, springChecks, assemblies } = evidence()
    expect([...wearTracks, ...springChecks, ...assemblies]).toHaveLength(1)
  })

  it.each(places)('%s: asks while it is empty, and records nothing by asking', async (place) => {
    const empty = Object.fromEntries(Object.keys(forms[place]()).map((name) => [name, '']))
    const asked = await preview(place, empty)
    expect(asked).toContain('class="lead"')
    expect(asked).not.toContain('field-error')
    await preview(place)
    const { wearTracks, springChecks, assemblies } = evidence()
    expect([...wearTracks, ...springChecks, ...assemblies]).toEqual([])
  })
})

describe('a worn track', () => {
  it('tells its movement while it is entered, and stands on the order', async () => {
    expect(await preview('wear-tracks')).toContain('>250<')
    await send('wear-tracks', { note: 'seen dry' })
    expect(evidence().wearTracks[0]?.trackWidths.map((one) => one.typed)).toEqual(['4,20', '4.10'])
    const page = await traveller()
    expect(page).toContain('track 4.2 mm, nose 3.95 mm')
    expect(page).toContain('movement 250 µm')
    expect(page).toContain('seen dry')
  })

  it('comes back with what was typed, a sentence beside its field', async () => {
    const answer = await send('wear-tracks', { noseWidthMm: 'three', note: 'seen dry' })
    expect(answer.status).toBe(422)
    const page = await answer.text()
    expect(page).toContain('href="#noseWidthMm"')
    expect(page).toMatch(/name="noseWidthMm"[^>]*value="three"/)
    expect(page).toMatch(/name="trackWidths\[0\]\.widthMm"[^>]*value="4,20"/)
    expect(page).toMatch(/name="trackWidths\[1\]\.widthMm"[^>]*value="4\.10"/)
    expect(page).toContain('seen dry')
  })

  it('is corrected with a reason, and both stay', async () => {
    await send('wear-tracks')
    const { id } = evidence().wearTracks[0]!
    const page = await open('wear-tracks', `?replaces=${id}`)
    expect(page).toMatch(/name="noseWidthMm"[^>]*value="3\.95"/)
    const correction = { formKey: 'b', replacesId: String(id), noseWidthMm: '4.00' }
    expect((await send('wear-tracks', correction)).status).toBe(422)
    await send('wear-tracks', { ...correction, reason: 'nose worn round' })
    expect(evidence().wearTracks).toHaveLength(2)
    const shown = await traveller()
    expect(shown).toContain('movement 200 µm')
    expect(shown).not.toContain('movement 250 µm')
    expect(shown).toContain('nose worn round')
  })

  it('says what it was read with, with its uncertainty', async () => {
    const { micrometer } = addMeasuringInstruments(shop)
    await send('wear-tracks', { instrumentId: String(micrometer.id) })
    const page = await traveller()
    expect(page).toContain('read with M-01')
    expect(page).toContain('movement 250 µm ± 7 µm (k = 2)')
  })
})

describe('springs', () => {
  it('tell their load while they are entered, drawn, and stand on the order', async () => {
    const told = await preview('spring-checks')
    expect(told).toContain('>108.0<')
    expect(told).toContain('<svg role="img"')
    await send('spring-checks')
    const page = await traveller()
    expect(page).toContain('presses with 108.0 N')
    expect(page).toContain('5.00 mm of travel left to solid')
    expect(page).toContain('Load of the springs against their length')
  })

  it('say while they are entered what can not be', async () => {
    expect(await preview('spring-checks', { workingLengthMm: '21' })).toContain(
      'At its working length a spring is no longer than free.',
    )
    expect(await preview('spring-checks', { rateNPerMm: '3' })).toContain('not both')
  })
})

describe('an assembly', () => {
  it('takes its load from the springs, and is held against its design', async () => {
    await send('spring-checks')
    const told = await preview('assembly')
    expect(told).toContain('Not as asked for')
    expect(told).toContain('asked for 110 N ± 10 %: within')
    await send('assembly', { formKey: 'b' })
    const page = await traveller()
    expect(page).toContain('Working length 14 mm, asked for 14 ± 0.5 mm: within')
    expect(page).toContain('4 × M6, drive collar: 8 N·m, asked for 10 N·m ± 10 %: beyond')
    expect(page).toContain('Not as asked for')
  })

  it('offers what was asked for at the last assembly of the seal, and nothing that was set', async () => {
    await send('assembly')
    workAndRelease(shop)
    const next = anotherOrder(shop)
    const page = await open('assembly', '', `/work-orders/${next.number}`)
    expect(page).toMatch(/name="designLoadN"[^>]*value="110"/)
    expect(page).toMatch(/name="designSource"[^>]*value="drawing 12 B"/)
    expect(page).toMatch(/name="setScrews\[0\]\.designTorqueNm"[^>]*value="10"/)
    expect(page).toMatch(/name="setScrews\[0\]\.torqueNm"[^>]*value=""/)
    expect(page).toMatch(/name="workingLengthMm"[^>]*value=""/)
    expect(page).not.toMatch(/name="isTurningFree"[^>]*checked/)
    expect(page).toContain('Compare them with the drawing.')
  })

  it('asks for a tolerance beside each value asked for, and is no pass without', async () => {
    const without = {
      workingLengthToleranceMm: '',
      loadTolerancePercent: '',
      torqueTolerancePercent: '',
    }
    const told = await preview('assembly', without)
    expect(told).toContain('a tolerance with each value asked for')
    expect(told).not.toContain('As asked for')
    const answer = await send('assembly', without)
    expect(answer.status).toBe(422)
    const page = await answer.text()
    for (const name of Object.keys(without)) {
      expect(page).toContain(`href="#${name}"`)
      expect(page).toMatch(
        new RegExp(`id="${name}-error"[^>]*>Enter the tolerance of what is asked for`),
      )
    }
    expect(evidence().assemblies).toEqual([])
  })

  it('recorded before tolerances were asked for is not all compared', async () => {
    await send('spring-checks')
    const design = { designSource: 'drawing 12 B', designWorkingLengthMm: 10, designLoadN: 500 }
    const setScrews = [{ name: 'M6', quantityCount: 4, torqueNm: 10, designTorqueNm: 10 }]
    addAssembly(
      shop.store,
      freshAssembly(shop, { ...design, setScrews, torqueTolerancePercent: 10 }),
      actorOf(shop.cast.tess),
    )
    const page = await traveller()
    expect(page).toContain('Working length 14 mm, asked for 10 mm: not compared')
    expect(page).toContain('Not all compared')
    expect(page).not.toContain('As asked for')
  })

  it('says what keeps it from being all compared', async () => {
    await send('assembly', { 'setScrews[0].torqueNm': '' })
    const page = await traveller()
    expect(page).toContain('Not all compared')
    expect(page).toContain(
      'Load not known: no check of springs, none measured, asked for 110 N ± 10 %: not compared',
    )
    expect(page).toContain(
      '4 × M6, drive collar: torque not noted, asked for 10 N·m ± 10 %: not compared',
    )
  })

  it('says what is too short: for the springs, or for any seal', async () => {
    const solid = 'by the newest check of the springs they are solid at 9 mm'
    const tooShort = await (await send('assembly', { workingLengthMm: '0.05' })).text()
    expect(tooShort).toContain('No seal is set to so short a length.')
    expect(tooShort).not.toContain('solid')
    await send('spring-checks')
    const answer = await send('assembly', { formKey: 'b', workingLengthMm: '8.9' })
    expect(answer.status).toBe(422)
    expect(await answer.text()).toContain(solid)
    expect(await preview('assembly', { workingLengthMm: '8.9' })).toContain(solid)
  })

  it('keeps its torques as they were typed, and shows as many decimals', async () => {
    const typed = { 'setScrews[0].torqueNm': '9,50', 'setScrews[0].designTorqueNm': '10.0' }
    await send('assembly', { workingLengthMm: '14,0', measuredLoadN: '108.50', ...typed })
    expect(evidence().assemblies[0]?.setScrews).toMatchObject([
      { torqueNm: 9.5, torqueTyped: '9,50', designTorqueNm: 10, designTorqueTyped: '10.0' },
    ])
    const page = await traveller()
    expect(page).toContain('Working length 14.0 mm, asked for 14 ± 0.5 mm: within')
    expect(page).toContain('Spring load 108.50 N, asked for 110 N ± 10 %: within (measured)')
    expect(page).toContain('9.50 N·m, asked for 10.0 N·m ± 10 %: within')
    const correction = await open('assembly', '?replaces=1')
    expect(correction).toMatch(/name="setScrews\[0\]\.torqueNm"[^>]*value="9,50"/)
    expect(correction).toMatch(/name="setScrews\[0\]\.designTorqueNm"[^>]*value="10\.0"/)
    const next = await open('assembly')
    expect(next).toMatch(/name="setScrews\[0\]\.designTorqueNm"[^>]*value="10\.0"/)
  })

  it('is filled in whole where it is corrected', async () => {
    await send('assembly')
    const page = await open('assembly', '?replaces=1')
    expect(page).toMatch(/name="setScrews\[0\]\.torqueNm"[^>]*value="8"/)
    expect(page).toMatch(/value="fitted"[^>]*checked/)
    expect(page).toMatch(/value="yes"[^>]*checked/)
  })
})

describe('a correction of a record with more rows than a fresh form has', () => {
  const numbers = (count: number) => Array.from({ length: count }, (_, index) => index)
  const lists = {
    'wear-tracks': {
      list: 'trackWidths',
      most: 12,
      row: (index: number) => ({ widthMm: (4.05 + 0.05 * index).toFixed(2) }),
    },
    'spring-checks': {
      list: 'loads',
      most: 20,
      row: (index: number) => ({ lengthMm: String(19 - 0.5 * index), loadN: String(3 + index) }),
    },
    assembly: {
      list: 'setScrews',
      most: 12,
      row: (index: number) => ({ name: `M${index + 1}`, quantityCount: '1', torqueNm: '8' }),
    },
  } as const
  const rowsOf = (place: Place, count: number) =>
    Object.fromEntries(
      numbers(count).flatMap((index) =>
        Object.entries(lists[place].row(index)).map(([name, value]) => [
          `${lists[place].list}[${index}].${name}`,
          value,
        ]),
      ),
    )
  /** Cards, of which the page tells no single value. */
  const onCards = ['componentId', 'condition', 'clips', 'isTurningFree']
  const cardsOf = (place: Place) =>
    Object.fromEntries(Object.entries(forms[place]()).filter(([name]) => onCards.includes(name)))

  it.each(places)('%s: keeps them all, also where only a note is added', async (place) => {
    const { most } = lists[place]
    for (const [round, count] of [5, most].entries()) {
      const at = anotherOrder(shop)
      const path = `/work-orders/${at.number}`
      const kept = () => {
        const { wearTracks, springChecks, assemblies } = readEvidence(shop.store, at.id)
        return [
          ...wearTracks.map((one) => ({ rows: one.trackWidths, of: one.movementUm, one })),
          ...springChecks.map((one) => ({ rows: one.loads, of: one.workingLoadN, one })),
          ...assemblies.map((one) => ({ rows: one.setScrews, of: one.loadN, one })),
        ]
      }
      await send(place, { formKey: `a${round}`, ...rowsOf(place, count) }, 'tess', path)
      const first = kept()[0]!
      expect(first.rows, place).toHaveLength(count)
      const page = await open(place, `?replaces=${first.one.id}`, path)
      const filled = { ...formOf(page), ...cardsOf(place) }
      const correction = { ...filled, note: 'seen dry', reason: 'note added' }
      expect((await app.post(`${path}/${place}`, correction, 'tess')).status).toBe(303)
      const second = kept()[1]!
      expect(second).toMatchObject({ rows: first.rows, of: first.of })
      expect(second.one).toMatchObject({ note: 'seen dry', replacesId: first.one.id })
    }
  })
})

describe('an assembly whose check of springs was corrected since', () => {
  const outdated =
    'Spring load 108.0 N, asked for 108 N ± 5 %: not compared (by a check of the springs that was corrected since)'
  const asked = {
    designLoadN: '108',
    loadTolerancePercent: '5',
    'setScrews[0].torqueNm': '10',
  }
  const correctSprings = async () => {
    await send('spring-checks')
    await send('assembly', { formKey: 'b', ...asked })
    expect(await traveller()).toContain('As asked for')
    const weaker = { 'loads[1].loadN': '5', reason: 'load misread' }
    await send('spring-checks', { formKey: 'c', replacesId: '1', ...weaker })
  }

  it('says so, and tells the technician what to do until it is corrected too', async () => {
    await correctSprings()
    const page = await traveller()
    expect(page).toContain('presses with 36.0 N')
    expect(page).toContain(outdated)
    expect(page).not.toContain('As asked for')
    expect(page).toContain('Correct the assembly')
    expect(await (await app.get(`${order}/strip`, 'tess')).text()).toContain('Correct the assembly')
    expect(await traveller('mo')).not.toContain('Correct the assembly')
    const again = { formKey: 'd', replacesId: '1', reason: 'springs read again', ...asked }
    await send('assembly', again)
    const shown = await traveller()
    expect(shown).toContain('Spring load 36.0 N, asked for 108 N ± 5 %: beyond')
    expect(shown).not.toContain('Correct the assembly:')
  })

  it('is no longer as asked for to the inspector, nor on the certificate', async () => {
    await correctSprings()
    const { certificate } = workAndRelease(shop)
    for (const [path, as] of [
      [`${order}/inspection`, 'ian'],
      [`/certificates/${certificate.number}`, 'cora'],
    ] as const) {
      const page = await (await app.get(path, as)).text()
      expect(page, path).toContain(outdated)
      expect(page, path).toContain('Not all compared')
      expect(page, path).not.toContain('As asked for')
    }
  })
})

describe('an assembly that is sent while its springs are read again', () => {
  /** The change comes after the order was looked up, while the form still arrives. */
  const sendWhile = (change: () => void, changes: Record<string, string> = {}) => {
    const form = new URLSearchParams(assembly({ formKey: 'slow', ...changes })).toString()
    const body = new ReadableStream<Uint8Array>(
      {
        pull: (controller) => {
          change()
          controller.enqueue(new TextEncoder().encode(form))
          controller.close()
        },
      },
      { highWaterMark: 0 },
    )
    const headers = {
      origin: testOrigin,
      'sec-fetch-site': 'same-origin',
      'content-type': 'application/x-www-form-urlencoded',
      'content-length': String(form.length),
      cookie: app.cookieOf('tess'),
    }
    const init = { method: 'POST', body, headers, duplex: 'half' } as RequestInit
    return app.app.request(`${testOrigin}${order}/assembly`, init)
  }
  const correct = (changes: Parameters<typeof freshSpring>[1]) => () => {
    const again = { replacesId: 1, reason: 'read again', ...changes }
    addSpringCheck(shop.store, freshSpring(shop, again), actorOf(shop.cast.tess))
  }

  it('takes its load from the check that stands when it is recorded', async () => {
    await send('spring-checks')
    expect((await sendWhile(correct({ springsCount: 5 }))).status).toBe(303)
    expect(evidence().assemblies).toMatchObject([{ loadN: 90, springCheckId: 2 }])
  })

  it('is refused where they turn out to be solid at its length', async () => {
    await send('spring-checks')
    const answer = await sendWhile(correct({ solidLength: { mm: 14.5, typed: '14.5' } }))
    expect(answer.status).toBe(409)
    expect(await answer.text()).toContain('they are solid at this length')
    expect(evidence().assemblies).toEqual([])
  })
})

describe('who looks at the order', () => {
  it('finds them as inspector before the release, and as customer on the certificate', async () => {
    stripAndAssemble(shop, { workOrderId: shop.workOrder.id })
    const handedOver = await app.get(`${order}/inspection`, 'ian')
    expect(await handedOver.text()).toContain('movement 150 µm')
    const { certificate } = workAndRelease(shop)
    const page = await (await app.get(`/certificates/${certificate.number}`, 'cora')).text()
    expect(page).toContain('Worn tracks, springs and assembly')
    expect(page).toContain('off the middle by 0.3 mm towards 4 o’clock')
    expect(page).toContain('presses with 90.0 N')
    expect(page).toContain('five springs, not six')
  })

  it('finds no act of recording where it is not theirs', async () => {
    stripAndAssemble(shop, { workOrderId: shop.workOrder.id })
    expect(await traveller()).toContain('/wear-tracks/new?replaces=2')
    expect(await traveller('mo')).not.toContain('?replaces=2')
  })
})
