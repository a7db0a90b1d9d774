import { describe, expect, test } from 'vitest'
import { didTheWork } from '../../../src/domain/did-the-work.ts'
import { readEvidence } from '../../../src/store/read-evidence.ts'
import { verifyStore } from '../../../src/store/verify-store.ts'
import { buildShop } from '../../support/build-shop.ts'
import { testApp } from '../../support/test-app.ts'

type Json = Record<string, unknown>

function setUp() {
  const shop = buildShop()
  const web = testApp(shop.store)
  const order = `/work-orders/${shop.workOrder.number}`
  const post = async (path: string, body: unknown, as = 'tess', key?: string) => {
    const headers = key === undefined ? {} : { 'idempotency-key': key }
    const response = await web.postJson(`/api/v1${path}`, body, as, headers)
    return { status: response.status, body: (await response.json()) as Json }
  }
  const begin = (body: unknown = {}, as = 'tess') => post(`${order}/dynamic-runs`, body, as)
  const page = async (id: number, as = 'ian') => {
    const answer = await web.get(`${order}/dynamic-runs/${id}`, as)
    return { status: answer.status, text: (await answer.text()).replaceAll(/\s+/g, ' ') }
  }
  const evidence = () => readEvidence(shop.store, shop.workOrder.id)
  return { shop, web, order, post, begin, page, evidence }
}

const weighed = (count = 13) =>
  Array.from({ length: count }, (_, i) => ({ timeS: 300 * i, massG: 20 + (5.6 * 300 * i) / 3600 }))

describe('a run on the rig', () => {
  test('answers the steady leakage of what was weighed', async () => {
    const { shop, begin, evidence } = setUp()
    // E23 of the facts: 5.6 g/h at 1.004 g/cm3 are 5.58 mL/h.
    const made = await begin({ densityKgPerM3: 1004, liquid: 'Water', readings: weighed() })
    expect(made.status, JSON.stringify(made.body)).toBe(201)
    expect(made.body.steadyGPerH).toBeCloseTo(5.6, 9)
    expect(made.body.steadyMlPerH).toBeCloseTo(5.58, 2)
    expect(made.body).toMatchObject({ sampleCount: 13, cautions: [] })
    expect(evidence().workOrder.stage).toBe('testing')
    expect(evidence().dynamicRuns).toMatchObject([{ liquid: 'Water', sampleCount: 13 }])
    expect(verifyStore(shop.store)).toEqual([])
  })

  test('takes batches of a rig, each once by its key, in the order of time', async () => {
    const { post, begin, page, evidence, shop } = setUp()
    const { id } = (await begin({})).body as { id: number }
    const at = `/dynamic-runs/${id}/samples`
    const batch = (from: number) => ({
      samples: weighed(30)
        .slice(from, from + 10)
        .map((one) => ({ ...one, torqueNm: 0.4 })),
    })
    const first = await post(at, batch(0), 'tess', 'rig 1')
    expect(first).toMatchObject({ status: 201, body: { runId: id, keptCount: 10 } })
    expect(await post(at, batch(0), 'tess', 'rig 1')).toEqual(first)
    await post(at, batch(20), 'tess', 'rig 3')
    await post(at, batch(10), 'tess', 'rig 2')
    expect(evidence().dynamicRuns[0]?.sampleCount).toBe(30)
    const { status, text } = await page(id)
    expect(status).toBe(200)
    expect(text).toContain('Collected mass, g')
    expect(text).toContain('5.60 g/h')
    expect(text).toContain('Runs are told, not judged')
    expect(verifyStore(shop.store)).toEqual([])
  })

  test('names what is odd about its times, and loses none of it', async () => {
    const { begin, page } = setUp()
    const twice = [...weighed(6), ...weighed(6).slice(-1), ...weighed(13).slice(6)]
    const { id } = (await begin({ readings: twice })).body as { id: number }
    expect((await page(id)).text).toContain('readings that came twice, counted once: 1')
  })

  test('flags a run that leaks nothing while its torque climbs', async () => {
    const { begin, page } = setUp()
    const dry = Array.from({ length: 40 }, (_, i) => ({
      timeS: 60 * i,
      massG: 20 + 0.01 * (i % 2),
      torqueNm: 0.4 + 0.02 * i,
    }))
    const made = await begin({ readings: dry })
    expect(made.body.cautions).toContain('no-leak-while-heating')
    expect((await page(made.body.id as number)).text).toContain('the film may be missing')
    const calm = dry.map((one) => ({ ...one, torqueNm: 0.4 }))
    expect((await begin({ readings: calm })).body.cautions).not.toContain('no-leak-while-heating')
  })

  test('makes whoever sent readings one who did the work', async () => {
    const { shop, post, begin, evidence } = setUp()
    const { id } = (await begin({})).body as { id: number }
    const { tess, ian } = shop.cast
    expect(didTheWork(evidence(), tess.id, null)).toBe(true)
    expect(didTheWork(evidence(), ian.id, null)).toBe(false)
    for (const who of ['ian', 'mo', 'cora']) {
      expect((await post(`/dynamic-runs/${id}/samples`, { samples: weighed() }, who)).status).toBe(
        403,
      )
      expect((await begin({}, who)).status).toBe(403)
    }
  })

  test('is replaced with a reason, and shown to the staff alone', async () => {
    const { begin, page, web, order, post, shop } = setUp()
    const { id } = (await begin({ readings: weighed() })).body as { id: number }
    expect((await begin({ replacesId: id })).status).toBe(422)
    expect((await begin({ replacesId: id, reason: 'cup leaked' })).status).toBe(201)
    expect((await begin({ replacesId: id, reason: 'again' })).status).toBe(409)
    expect((await post(`/dynamic-runs/${id}/samples`, { samples: weighed() })).status).toBe(409)
    const { raw } = shop.store
    const forged = raw.prepare(`INSERT OR REPLACE INTO dynamic_run
      SELECT 99, work_order_id, started_at, 'forged', density_kg_per_m3, steps, note, replaces_id,
        reason, recorded_by_id, recorded_by_name, recorded_at FROM dynamic_run WHERE id = 2`)
    expect(() => forged.run()).toThrow('append-only')
    expect((await page(id)).text).toContain('This run was replaced')
    expect((await page(id, 'cora')).status).toBe(403)
    expect((await page(99)).status).toBe(404)
    expect(await (await web.get(order, 'tess')).text()).toContain('Runs on the rig')
  })

  test('is refused beside the field', async () => {
    const { begin, post } = setUp()
    const { id } = (await begin({})).body as { id: number }
    const faults = async (path: string, body: unknown) =>
      ((await post(path, body)).body.errors as { field: string }[]).map((one) => one.field)
    const at = `/dynamic-runs/${id}/samples`
    expect(await faults(at, {})).toEqual(['samples'])
    expect(await faults(at, { samples: [] })).toEqual(['samples'])
    expect(await faults(at, { samples: [{ timeS: 1 }] })).toEqual(['samples[0].timeS'])
    expect(await faults(at, { samples: [{ timeS: 1, massG: 'x' }] })).toEqual(['samples[0].massG'])
    expect(await faults(at, { samples: [{ timeS: 1, colour: 2 }] })).toContain('samples[0].colour')
    const full = Array.from({ length: 5000 }, (_, timeS) => ({
      timeS,
      massG: 20.123456,
      torqueNm: 0.123456,
      pressureKPaGauge: 600.1234,
      faceTemperatureC: 45.12345,
    }))
    expect((await post(at, { samples: full })).status).toBe(201)
    const many = Array.from({ length: 5001 }, (_, timeS) => ({ timeS, massG: 1 }))
    expect((await post(at, { samples: many })).status).toBeGreaterThan(399)
    expect((await post('/dynamic-runs/99/samples', { samples: weighed() })).status).toBe(404)
    const path = `/work-orders/W-2026-0001/dynamic-runs`
    expect(await faults(path, { startedAt: '2099-01-01T00:00:00Z' })).toEqual(['startedAt'])
    expect(await faults(path, { startedAt: '2026-11-25T09:00' })).toEqual(['startedAt'])
    expect((await begin({ readings: [] })).status).toBe(201)
    expect(await faults(path, { densityKgPerM3: 0 })).toEqual(['densityKgPerM3'])
    expect(await faults(path, { steps: [{ holdS: 5 }] })).toEqual(['steps[0].name'])
  })

  test('tells a page that readings have come, at once and again', async () => {
    const { web, order, post, begin } = setUp()
    const { id } = (await begin({ readings: weighed() })).body as { id: number }
    const answer = await web.get(`${order}/dynamic-runs/${id}/live`, 'ian')
    expect(answer.headers.get('content-type')).toContain('text/event-stream')
    const reader = answer.body!.getReader()
    const next = async () => new TextDecoder().decode((await reader.read()).value)
    expect(await next()).toContain('event: readings\ndata: 1\nid: 1')
    await post(`/dynamic-runs/${id}/samples`, { samples: [{ timeS: 4000, massG: 26.2 }] })
    expect(await next()).toContain('data: 2')
    await reader.cancel()
    expect((await web.get(`${order}/dynamic-runs/99/live`, 'ian')).status).toBe(404)
    expect((await web.get(`${order}/dynamic-runs/${id}/live`, 'cora')).status).toBe(403)
  })
})
