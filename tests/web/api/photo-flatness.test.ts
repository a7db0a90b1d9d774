import { readFileSync } from 'node:fs'
import sharp from 'sharp'
import { describe, expect, test } from 'vitest'
import { photoWords } from '../../../views/words/en/photo.ts'
import { testApp } from '../../support/test-app.ts'

const path = '/api/v1/calculate/flatness/photo'
const folder = new URL('../../../fixtures/files/bands/', import.meta.url)
const photo = (name: string) => new Uint8Array(readFileSync(new URL(`${name}.jpg`, folder)))
const { faces } = JSON.parse(readFileSync(new URL('truth.json', folder), 'utf8')) as {
  faces: Record<string, Truth>
}
type Truth = {
  readonly peakToValleyBands: number
  readonly coningIdMinusOd: number
  readonly opensTowardsDeg: number
  readonly radiusRatio?: number
  readonly outerPoints: readonly (readonly [number, number])[]
  readonly innerPoints: readonly (readonly [number, number])[]
}
type Problem = {
  readonly type: string
  readonly reason?: string
  readonly detail: string
  readonly errors?: readonly { readonly field: string }[]
}

const shop = testApp()
const truth = faces.cone as Truth
const spanX = (points: Truth['outerPoints']) => {
  const xs = points.map(([x]) => x)
  return Math.max(...xs) - Math.min(...xs)
}
const asked = {
  lamp: 'helium',
  outerDiameterMm: 80,
  innerDiameterMm: 80 * (spanX(truth.innerPoints) / spanX(truth.outerPoints)),
  outerPoints: truth.outerPoints,
  innerPoints: truth.innerPoints,
  wedge: { opensTowardsDeg: truth.opensTowardsDeg },
}

async function send(bytes: Uint8Array | null, request: unknown, more: Record<string, string> = {}) {
  const form = new FormData()
  if (bytes !== null) form.set('image', new Blob([bytes as Uint8Array<ArrayBuffer>]), 'face.heic')
  if (request !== null) {
    form.set('request', typeof request === 'string' ? request : JSON.stringify(request))
  }
  for (const [name, value] of Object.entries(more)) form.set(name, value)
  const headers = { cookie: shop.cookieOf('tess') }
  return shop.app.request(path, { method: 'POST', body: form, headers })
}

const problemOf = async (response: Response) => {
  expect(response.headers.get('content-type')).toBe('application/problem+json')
  return (await response.json()) as Problem
}

// A photograph takes a second or two, longer beside other work.
describe('flatness from a photograph', { timeout: 60_000 }, () => {
  test('gives the figures of the whole face, its map and a budget', async () => {
    const response = await send(photo('cone'), { ...asked, opticalFlatToleranceUm: 0.03 })
    expect(response.status).toBe(200)
    // biome-ignore lint/suspicious/noExplicitAny: an answer as a program reads it
    const got = (await response.json()) as any
    const bandUm = 587.5618 / 2000
    expect(got.bandHeightUm).toBeCloseTo(bandUm, 9)
    // The bar that the method is held to: the larger of 0.1 band and 5 %.
    const barUm = Math.max(0.1, 0.05 * truth.peakToValleyBands) * bandUm
    expect(Math.abs(got.flatnessUm - truth.peakToValleyBands * bandUm)).toBeLessThan(barUm)
    expect(got.flatnessMinimumZoneUm).toBeLessThanOrEqual(got.flatnessUm)
    // Coning counts the inner edge high as +, the answer the outer one.
    expect(Math.abs(got.taperUm + truth.coningIdMinusOd * bandUm)).toBeLessThan(barUm)
    expect(got.form).toBe(truth.coningIdMinusOd > 0 ? 'convex' : 'concave')
    expect(got.lobes.map((one: { order: number }) => one.order)).toEqual([2, 3])
    expect(got.map.radii.at(-1)).toBe(40)
    expect(got.map.heightsUm).toHaveLength(got.map.radii.length)
    expect(got.map.heightsUm[0]).toHaveLength(got.map.anglesDeg.length)
    const heights = got.map.heightsUm.flat() as number[]
    expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(got.flatnessUm, 12)
    expect(got.sees).toBe('whole-surface')
    expect(got.method).toBe('flatness/photo 1')
    expect(got.bandsSeen).toBeGreaterThan(3)
    const square = got.budget.reduce(
      (sum: number, line: { contribution: number }) => sum + line.contribution ** 2,
      0,
    )
    expect(got.standardUncertaintyUm).toBeCloseTo(Math.sqrt(square), 12)
    expect(got.expandedUncertaintyUm).toBeCloseTo(2 * got.standardUncertaintyUm, 12)
    const flat = got.budget.find((line: { source: string }) => line.source === 'optical-flat')
    expect(flat.contribution).toBeCloseTo(0.03 / Math.sqrt(3), 12)
  })

  test('leaves the form undetermined where nobody saw which way the gap grows', async () => {
    const { wedge: _, ...bare } = asked
    const got = (await (await send(photo('cone'), bare)).json()) as Record<string, unknown>
    expect(got.taperUm).toBeNull()
    expect(got.form).toBe('undetermined')
  })

  test('finds the edges itself where nobody set them', async () => {
    const own = faces.cylinder as Truth
    const ratio = spanX(own.innerPoints) / spanX(own.outerPoints)
    const { outerPoints: _1, innerPoints: _2, ...bare } = asked
    const response = await send(photo('cylinder'), { ...bare, innerDiameterMm: 80 * ratio })
    expect(response.status).toBe(200)
    const got = (await response.json()) as { flatnessUm: number; outer: { rx: number } }
    const bandUm = 587.5618 / 2000
    // The bar that the method is held to: 0.1 band.
    expect(Math.abs(got.flatnessUm - own.peakToValleyBands * bandUm)).toBeLessThan(0.1 * bandUm)
    // Places set by hand lie on their edge to some tenths of a per cent of its radius.
    expect(Math.abs(got.outer.rx / (spanX(own.outerPoints) / 2) - 1)).toBeLessThan(0.03)
  })

  test('says so where it finds no edges', async () => {
    const { outerPoints: _1, innerPoints: _2, ...bare } = asked
    const grey = { width: 640, height: 480, channels: 3, background: '#667' } as const
    const png = await sharp({ create: grey }).png().toBuffer()
    const response = await send(new Uint8Array(png), bare)
    expect(response.status).toBe(422)
    expect((await problemOf(response)).reason).toBe('edges-not-found')
  })

  test('says why a picture gives no honest figure, and what to do', async () => {
    const fine = { ...asked, outerPoints: undefined, innerPoints: undefined }
    const ring = (r: number) => ({ cx: 600, cy: 450, rx: r, ry: r })
    const small = { ...fine, innerDiameterMm: 64, outer: ring(100), inner: ring(80) }
    const response = await send(photo('cone'), small)
    expect(response.status).toBe(422)
    const problem = await problemOf(response)
    expect(problem.type).toMatch(/\/unreadable-picture$/)
    expect(problem.reason).toBe('face-too-small')
    expect(problem.detail).toBe(photoWords.refusal['face-too-small'])
  })

  test('refuses what is no picture, by a sentence and not by a crash', async () => {
    const text = new TextEncoder().encode('<svg onload="alert(1)"/>')
    const response = await send(text, asked)
    expect(response.status).toBe(422)
    expect((await problemOf(response)).type).toBe('/problems/photo-not-a-photo')
    const cut = await send(photo('cone').slice(0, 20_000), asked)
    expect(cut.status).toBe(422)
    expect((await problemOf(cut)).type).toBe('/problems/photo-damaged')
  })
})

describe('what is sent beside the photograph', () => {
  const one = new Uint8Array([0xff, 0xd8, 0xff])

  test.each([
    ['no lamp', { lamp: undefined }, 'lamp'],
    ['a lamp and a wavelength', { wavelengthNm: 600 }, 'lamp'],
    ['an inner diameter that is not smaller', { innerDiameterMm: 80 }, 'innerDiameterMm'],
    ['five places on an edge', { outerPoints: truth.outerPoints.slice(0, 5) }, 'outerPoints'],
    ['a place that is none', { outerPoints: [...truth.outerPoints, ['x', 1]] }, /outerPoints\[/],
    ['an edge given twice', { outer: { cx: 1, cy: 1, rx: 1, ry: 1 } }, 'outer'],
    ['a wedge of two kinds', { wedge: { opensTowardsDeg: 1, centre: 'closer' } }, /^wedge\./],
    ['an unknown field', { zoom: 2 }, 'zoom'],
  ])('is refused by name: %s', async (_, changes, field) => {
    const response = await send(one, { ...asked, ...changes })
    expect(response.status).toBe(422)
    const { errors = [] } = await problemOf(response)
    const fields = errors.map((error) => error.field)
    expect(
      fields.some((name) => (typeof field === 'string' ? name === field : field.test(name))),
    ).toBe(true)
  })

  test('needs a picture, a request that is JSON, and nothing else', async () => {
    const fieldOf = async (response: Response) => (await problemOf(response)).errors?.[0]?.field
    expect(await fieldOf(await send(null, asked))).toBe('image')
    expect(await fieldOf(await send(new Uint8Array(), asked))).toBe('image')
    expect(await fieldOf(await send(one, null))).toBe('request')
    expect(await fieldOf(await send(one, '{"lamp":'))).toBe('request')
    expect(await fieldOf(await send(one, asked, { colour: 'red' }))).toBe('colour')
  })

  test('is a multipart form of somebody signed in', async () => {
    expect((await shop.postJson(path, asked, 'tess')).status).toBe(415)
    const form = new FormData()
    form.set('request', '{}')
    expect((await shop.app.request(path, { method: 'POST', body: form })).status).toBe(401)
  })

  test('is at most 30 MB', async () => {
    const large = new Uint8Array(31 * 1024 * 1024)
    expect((await send(large, asked)).status).toBe(413)
  })
})
