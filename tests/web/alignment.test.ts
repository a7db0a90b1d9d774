import { beforeEach, describe, expect, it } from 'vitest'
import type { Instrument } from '../../src/domain/instrument.ts'
import { addLimitSet } from '../../src/store/add-limit-set.ts'
import { addWearTrack } from '../../src/store/add-wear-track.ts'
import { addDial, addSurvey } from '../support/add-survey.ts'
import { buildLimit } from '../support/build-limit-set.ts'
import { approved, buildShop, newLimitSet, type Shop } from '../support/build-shop.ts'
import { actorOf, operator } from '../support/cast.ts'
import { workAndRelease } from '../support/shop-steps.ts'
import { freshTrack } from '../support/strip-steps.ts'
import { type TestApp, testApp } from '../support/test-app.ts'

let shop: Shop
let app: TestApp
let dial: Instrument
beforeEach(() => {
  shop = buildShop()
  dial = addDial(shop)
  app = testApp(shop.store)
})

const order = '/work-orders/W-2026-0001'
const read = async (as = 'tess', path = `${order}/alignment`) => {
  const answer = await app.get(path, as)
  return { status: answer.status, text: await answer.text() }
}
const register = (changes: Partial<Parameters<typeof addSurvey>[2]> = {}) =>
  addSurvey(shop, dial, {
    characteristic: 'register-concentricity',
    eccentricityUm: 65,
    directionDeg: 30,
    ...changes,
    setUp: { surface: 'inside', turned: 'indicator', sizeMm: 120, ...changes.setUp },
  })

describe('shaft, register and face in one picture', () => {
  it('says what to do where nothing was surveyed', async () => {
    const { status, text } = await read()
    expect(status).toBe(200)
    expect(text).toContain('Nothing to draw yet')
    expect(text).not.toContain('id="alignment-title"')
  })

  it('tells which way to move the register, by how much, and what to expect', async () => {
    register()
    const { text } = await read()
    // Swept in a bore, highest at 30: the bore lies off towards 210 and moves back towards 30.
    expect(text).toContain('Move the chamber or gland by 65 µm towards 30°')
    expect(text).toContain('register, 65 µm off towards 210°')
    expect(text).toContain('move it 65 µm towards 30°')
    expect(text).toContain('id="alignment-title"')
  })

  it('tells where to shim the face and over which diameter', async () => {
    addSurvey(shop, dial, {
      characteristic: 'chamber-face-squareness',
      eccentricityUm: 40,
      directionDeg: 100,
      setUp: { sweptDiameterMm: 140, sealMeanDiameterMm: 55 },
    })
    const { text } = await read()
    expect(text).toContain(
      'The face stands out at 100°. Shim the joint of the chamber at 280° by 80 µm over 140 mm',
    )
    expect(text).toContain('From the side, cut at 100° and 280°')
  })

  it('lets what was swept as left speak before what was found, and warns', async () => {
    register({ condition: 'as-found', eccentricityUm: 90 })
    register({ condition: 'as-left', eccentricityUm: 12 })
    const { text } = await read()
    expect(text).toContain('by 12 µm towards 30°')
    expect(text).not.toContain('by 90 µm')
    expect(text).toContain('Lock out and tag out drive and process, and check that nothing moves')
  })

  it('shows what other sets in force would say of the same result', async () => {
    const limit = (upper: number) => {
      const { id: _id, limitSetId: _set, ...row } = buildLimit({ upper })
      return { ...row, characteristic: 'register-concentricity' as const }
    }
    const strict = newLimitSet({ name: 'Strict', limits: [limit(50)] })
    const loose = newLimitSet({ name: 'Loose', limits: [limit(250)] })
    addLimitSet(shop.store, newLimitSet({ name: 'Draft', limits: [limit(10)] }), operator)
    for (const set of [strict, loose]) {
      approved(shop.store, addLimitSet(shop.store, set, operator), shop.cast.ian)
    }
    register()
    const { text } = await read()
    expect(text).toContain('The largest of these limits is 5.0 times the smallest.')
    expect(text).toContain('One set passes what another refuses')
    expect(text).toContain('Strict')
    expect(text).not.toContain('Draft')
  })

  it('says how the angles of a survey rise', async () => {
    register({ setUp: { isClockwise: false } })
    expect((await read()).text).toContain('counter-clockwise, seen from the seal')
  })

  it('keeps the sets of the house, and so other customers’ agreements, to the staff', async () => {
    const { id: _id, limitSetId: _set, ...row } = buildLimit({ upper: 50 })
    const limits = [{ ...row, characteristic: 'register-concentricity' as const }]
    const other = addLimitSet(shop.store, newLimitSet({ name: 'Agreed, Olga', limits }), operator)
    approved(shop.store, other, shop.cast.ian)
    const survey = register()
    const { certificate } = workAndRelease(shop)
    const staff = (await read('mo')).text
    expect(staff).toContain('Agreed, Olga')
    expect(staff).toContain('What one limit set in force says')
    const result = `${order}/results/measured-value/${survey.measured.id}`
    for (const path of [`${order}/alignment`, result, `/certificates/${certificate.number}`]) {
      const { status, text } = await read('cora', path)
      expect(status, path).toBe(200)
      expect(text, path).toContain('Concentricity of the register')
      expect(text, path).not.toContain('Agreed, Olga')
      expect(text, path).not.toContain('in force')
      expect(text, path).not.toContain('Published limits differ')
      expect(text, path).not.toContain('/limit-sets')
    }
  })

  it('is the staff’s at any time, and a customer’s once the order is released', async () => {
    register()
    for (const who of ['tess', 'ian', 'mo']) expect((await read(who)).status).toBe(200)
    expect((await read('cora')).status).toBe(404)
    const { certificate } = workAndRelease(shop)
    const issued = await read('cora', `/certificates/${certificate.number}`)
    expect(issued.text).toContain(`href="${order}/alignment"`)
    const seen = await read('cora')
    expect(seen.status).toBe(200)
    expect(seen.text).toContain(`href="/seals/${shop.seal.id}"`)
    expect(seen.text).not.toContain('href="/work-orders/W-2026-0001"')
    expect((await read('olga')).status).toBe(404)
    expect((await read('tess', '/work-orders/W-2026-0999/alignment')).status).toBe(404)
  })

  it('is linked from the order and its evidence once something was surveyed', async () => {
    const link = `href="${order}/alignment"`
    expect((await read('tess', order)).text).not.toContain(link)
    register()
    expect((await read('tess', order)).text).toContain(link)
    expect((await read('ian', `${order}/inspection`)).text).toContain(link)
  })

  it('holds a worn track against what was found, and says when it is wider', async () => {
    const seat = shop.seal.components.find((one) => one.kind === 'stationary-seat')!
    const widths = {
      noseWidth: { mm: 3.95, typed: '3.95' },
      trackWidths: [{ mm: 4.2, typed: '4.20' }],
    }
    addWearTrack(
      shop.store,
      freshTrack(shop, { componentId: seat.id, movementUm: 250, ...widths }),
      actorOf(shop.cast.tess),
    )
    expect((await read()).text).toContain('Nothing that widens this track was surveyed')
    addSurvey(shop, dial, { characteristic: 'sleeve-run-out', eccentricityUm: 20 })
    const { text } = await read()
    expect(text).toContain('wider by 250 µm')
    expect(text).toContain('The track is wider than the movement found explains')
  })
})
