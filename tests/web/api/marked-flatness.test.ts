import { describe, expect, test } from 'vitest'
import { markedRequest } from '../../support/marked-request.ts'
import { testApp } from '../../support/test-app.ts'

const path = '/api/v1/calculate/flatness/marked'
const { postJson, app } = testApp()
const saddle = markedRequest((r, a) => r * r * Math.cos(2 * a), { count: 40, seed: 12 })

async function answer(body: unknown): Promise<Record<string, unknown>> {
  const response = await postJson(path, body, 'tess')
  expect(response.status).toBe(200)
  return (await response.json()) as Record<string, unknown>
}

async function refusal(body: unknown) {
  const response = await postJson(path, body, 'tess')
  expect(response.status).toBe(422)
  expect(response.headers.get('content-type')).toBe('application/problem+json')
  const { errors } = (await response.json()) as { errors: { field: string; message: string }[] }
  return errors
}

describe('flatness from marked bands', () => {
  test('sees the saddle that a line count is nearly blind to', async () => {
    const got = await answer(saddle)
    // 2 bands of 0.29378 um from lowest to highest, to the stated U.
    const off = Math.abs((got.flatnessUm as number) - 0.58756)
    expect(off).toBeLessThan(got.expandedUncertaintyUm as number)
    const [two] = got.lobes as { order: number; amplitudeUm: number; phaseDeg: number }[]
    // Its mean amplitude is (1 + 0.49) / 2 of the edge's 0.29378; U / 2 is its room.
    expect(two?.amplitudeUm).toBeGreaterThan(0.219 - (got.expandedUncertaintyUm as number) / 2)
    expect(Math.cos(((two?.phaseDeg ?? 90) * 2 * Math.PI) / 180)).toBeGreaterThan(0.9)
    expect([got.method, got.sees]).toEqual(['flatness/marked 1', 'whole-surface'])
  })

  test('answers as the photograph does: figures, edges, map, quality and budget', async () => {
    const got = await answer({ ...saddle, opticalFlatToleranceUm: 0.05 })
    for (const name of [
      'flatnessUm',
      'flatnessMinimumZoneUm',
      'rmsUm',
      'taperUm',
      'bandsSeen',
      'quality',
      'standardUncertaintyUm',
      'expandedUncertaintyUm',
      'coverageFactor',
    ]) {
      expect(got[name], name).toEqual(expect.any(Number))
    }
    expect(got.outer).toEqual(saddle.outer)
    const map = got.map as { radii: number[]; anglesDeg: number[]; heightsUm: number[][] }
    expect(map.heightsUm).toHaveLength(map.radii.length)
    expect(map.heightsUm[0]).toHaveLength(map.anglesDeg.length)
    const sources = (got.budget as { source: string }[]).map((line) => line.source)
    expect(sources).toEqual(['marks', 'optical-flat', 'wavelength'])
  })

  test('refuses 19 points and says how many are needed', async () => {
    const [error] = await refusal({ ...saddle, points: saddle.points.slice(0, 19) })
    expect(error?.field).toBe('points')
    expect(error?.message).toContain('20')
  })

  test('names the point whose order is wrong, and what to do', async () => {
    const points = saddle.points.map((one, i) => (i === 5 ? { ...one, order: one.order + 2 } : one))
    const [error] = await refusal({ ...saddle, points })
    expect(error?.field).toBe('points[5].order')
    expect(error?.message).toMatch(/order of its band/)
  })

  test('refuses fields by name and a request without any', async () => {
    const errors = await refusal({ colour: 'red' })
    const fields = errors.map((error) => error.field)
    for (const name of ['colour', 'lamp', 'imageWidth', 'outer', 'points', 'increasingTowards']) {
      expect(fields).toContain(name)
    }
  })

  test('asks who is there', async () => {
    const response = await app.request(path, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(saddle),
    })
    expect(response.status).toBe(401)
  })
})
