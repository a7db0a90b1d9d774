import { describe, expect, test } from 'vitest'
import { buildShop } from '../../support/build-shop.ts'
import { anotherOrder, workAndHandOver } from '../../support/shop-steps.ts'
import { testApp } from '../../support/test-app.ts'

type Json = Record<string, unknown>

function setUp() {
  const shop = buildShop()
  const web = testApp(shop.store)
  const order = `/api/v1/work-orders/${shop.workOrder.number}`
  const componentId = shop.seal.components.find((one) => one.kind === 'rotating-face')!.id
  const bodies = {
    'wear-tracks': { componentId, noseWidthMm: 3.95, trackWidths: [{ widthMm: 4.2 }] },
    'spring-checks': {
      condition: 'as-left',
      springsCount: 6,
      freeLengthMm: 20,
      workingLengthMm: 14,
      rateNPerMm: 3,
    },
    assemblies: { workingLengthMm: 14, clips: 'none-needed', isTurningFree: true },
  } as const
  type Place = keyof typeof bodies
  const post = async (place: Place, more: Json = {}, as = 'tess', key?: string) => {
    const headers = key === undefined ? {} : { 'idempotency-key': key }
    const body = { ...bodies[place], ...more }
    const response = await web.postJson(`${order}/${place}`, body, as, headers)
    return { status: response.status, body: (await response.json()) as Json }
  }
  const shown = async (as = 'mo') => (await (await web.get(order, as)).json()) as Json
  return { shop, web, order, post, shown, places: Object.keys(bodies) as Place[], bodies }
}

const listOf = {
  'wear-tracks': 'wearTracks',
  'spring-checks': 'springChecks',
  assemblies: 'assemblies',
} as const

describe('records of the strip bench of a program', () => {
  test('are recorded with what follows, and stand in the answer of their order', async () => {
    const { post, shown, places } = setUp()
    for (const place of places) {
      const answer = await post(place)
      expect(answer.status, JSON.stringify(answer.body)).toBe(201)
      expect((await shown())[listOf[place]]).toEqual([answer.body])
    }
    const { wearTracks, springChecks, assemblies, stage } = await shown()
    expect((wearTracks as Json[])[0]?.movementUm).toBeCloseTo(250, 9) // doubles alone
    expect((springChecks as Json[])[0]).toMatchObject({ workingLoadN: 108, rateNPerMm: 3 })
    expect((assemblies as Json[])[0]).toMatchObject({ loadN: 108, loadFrom: 'spring-check' })
    expect(stage).toBe('stripped')
  })

  test('are recorded once for one key, and refused for the key with another body', async () => {
    const { post, shown, places } = setUp()
    for (const place of places) {
      const first = await post(place, {}, 'tess', `rig ${place}`)
      expect((await post(place, {}, 'tess', `rig ${place}`)).body).toEqual(first.body)
      expect((await post(place, { note: 'x' }, 'tess', `rig ${place}`)).status).toBe(409)
      expect((await shown())[listOf[place]]).toHaveLength(1)
    }
  })

  test('are corrected once, with a reason', async () => {
    const { post, places } = setUp()
    for (const place of places) {
      const { id } = (await post(place)).body
      expect((await post(place, { replacesId: id })).status).toBe(422)
      const right = { replacesId: id, reason: 'misread' }
      expect((await post(place, right)).status).toBe(201)
      expect((await post(place, right)).status).toBe(409)
    }
  })

  test('are refused by the name of what is wrong', async () => {
    const { post, places } = setUp()
    const named = async (place: (typeof places)[number], more: Json) =>
      ((await post(place, more)).body.errors as { field: string }[]).map((one) => one.field)
    for (const place of places) expect(await named(place, { colour: 'red' })).toEqual(['colour'])
    expect(await named('wear-tracks', { trackWidths: [] })).toEqual(['trackWidths'])
    expect(await named('wear-tracks', { trackWidths: [4.2] })).toEqual(['trackWidths[0]'])
    expect(await named('spring-checks', { workingLengthMm: 21 })).toEqual(['workingLengthMm'])
    expect(await named('assemblies', { isTurningFree: 1 })).toEqual(['isTurningFree'])
    const asked = { designLoadN: 110, designSource: 'drawing 12 B' }
    const { errors } = (await post('assemblies', asked)).body
    expect(errors).toEqual([
      {
        field: 'loadTolerancePercent',
        message: 'Enter the tolerance of what is asked for: without it nothing can be compared.',
      },
    ])
    expect((await post('assemblies', { ...asked, loadTolerancePercent: 10 })).status).toBe(201)
  })

  test('are the technician’s, and closed in quarantine and after the hand-over', async () => {
    const { shop, web, post, places, bodies } = setUp()
    for (const place of places) {
      for (const as of ['ian', 'mo', 'cora']) expect((await post(place, {}, as)).status).toBe(403)
    }
    const { number } = anotherOrder(shop, { decontamination: 'not-stated' })
    for (const place of places) {
      const at = `/api/v1/work-orders/${number}/${place}`
      const refused = await web.postJson(at, bodies[place], 'tess')
      expect(refused.status).toBe(409)
      expect(((await refused.json()) as Json).detail).toContain('in quarantine')
    }
    workAndHandOver(shop)
    for (const place of places) expect((await post(place)).status).toBe(409)
  })

  test('stay within the workshop', async () => {
    const { web, order, shown } = setUp()
    expect(await shown('cora')).not.toHaveProperty('springChecks')
    expect((await web.get(order, 'olga')).status).toBe(404)
  })
})
