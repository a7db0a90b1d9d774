import { fileURLToPath } from 'node:url'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { demoAccounts } from '../../fixtures/demo/accounts.ts'
import { signIn, sizes, watch } from '../support/browser.ts'
import type { DemoServer } from '../support/demo-server.ts'

export type Edge = { cx: number; cy: number; rx: number; ry: number; rotationDeg: number }
type Details = {
  readonly isSignKnown: boolean
  readonly innerDiameterMm: number
  readonly source: Readonly<Record<string, unknown>>
  readonly seen: {
    readonly bandLines: readonly {
      readonly order: number
      readonly points: readonly (readonly [number, number])[]
    }[]
  } | null
}

/** A technician of the invented workshop at a screen of this size, and what went wrong on the page. */
export async function technicianAt(
  { browser, server }: { readonly browser: Browser; readonly server: DemoServer },
  size: keyof typeof sizes,
  more: BrowserContextOptions = {},
): Promise<{ page: Page; faults: string[] }> {
  const context = await browser.newContext({ viewport: sizes[size], ...more })
  const page = await context.newPage()
  const faults = watch(page)
  await signIn(page, server.origin, demoAccounts.find((one) => one.name === 'tamsin')!)
  return { page, faults }
}

/**
 * Opens a photograph of the invented workshop that was read by the program and may be again, with
 * the diameters that it was read with.
 */
export async function openPhoto(
  page: Page,
  server: DemoServer,
): Promise<{ number: string; id: number }> {
  const id = Number(
    server.ask(`SELECT photo_id FROM whole_face WHERE kind = 'photo' AND work_order_id IN (
      SELECT id FROM work_order WHERE stage = 'lapping') ORDER BY flatness_reading_id`),
  )
  const number = server.ask(`SELECT number FROM work_order WHERE id = (
    SELECT work_order_id FROM face_photo WHERE id = ${id})`)
  await page.goto(`${server.origin}/work-orders/${number}/face-photos/${id}`)
  const { innerDiameterMm } = readByProgram(server, id)
  await page.fill('[name=innerDiameterMm]', String(innerDiameterMm))
  return { number, id }
}

const wideFace = fileURLToPath(
  new URL('../../fixtures/files/bands/suite/core-002.jpg', import.meta.url),
)

/**
 * Keeps a photograph of a wide face, has it read by the program and recorded, and opens it again:
 * its bands leave no part of the ring out, so that they can be marked one by one.
 */
export async function openWideFace(
  page: Page,
  server: DemoServer,
): Promise<{ number: string; id: number }> {
  const { number } = await openPhoto(page, server)
  await page.goto(`${server.origin}/work-orders/${number}/face-photos/new`)
  await page.locator('input[name=faceId]').first().check()
  await page.setInputFiles('#file', wideFace)
  await page.getByRole('button', { name: 'Keep and read it' }).click()
  await page.waitForURL(/face-photos\/\d+$/)
  const href = page.url()
  await settled(page)
  // The diameters of the seal are not those of this picture.
  const [outer, inner] = [await edgeOf(page, 'outer'), await edgeOf(page, 'inner')]
  const innerDiameterMm = (60 * Math.sqrt(inner.rx * inner.ry)) / Math.sqrt(outer.rx * outer.ry)
  const diameters = async () => {
    await page.fill('[name=outerDiameterMm]', '60')
    await page.fill('[name=innerDiameterMm]', innerDiameterMm.toFixed(2))
  }
  await diameters()
  await settled(page)
  await page.getByRole('button', { name: 'Record the reading' }).last().click()
  await page.waitForURL(/recorded=flatness/)
  await page.goto(href)
  await diameters()
  return { number, id: Number(/\d+$/.exec(href)?.[0]) }
}

/** Waits until the answer belongs to the form as it stands. */
export async function settled(page: Page): Promise<void> {
  // What was just typed is asked for in the same turn: the answer is busy at once.
  await page.waitForFunction(
    () => document.querySelector('#face-photo-answer')?.getAttribute('aria-busy') !== 'true',
    undefined,
    { timeout: 60_000 },
  )
}

export async function edgeOf(page: Page, name: 'outer' | 'inner'): Promise<Edge> {
  return page.evaluate((edge) => {
    const value = (part: string) =>
      Number(document.querySelector<HTMLInputElement>(`[name="${edge}.${part}"]`)?.value)
    return {
      cx: value('cx'),
      cy: value('cy'),
      rx: value('rx'),
      ry: value('ry'),
      rotationDeg: value('rotationDeg'),
    }
  }, name)
}

/** The newest reading, with what is kept of its face. */
export function flatnessOfLast(server: DemoServer) {
  const column = (name: string) =>
    server.ask(`SELECT ${name} FROM flatness_reading JOIN whole_face ON flatness_reading_id = id
      ORDER BY id DESC LIMIT 1`)
  return {
    bands: Number(column('bands')),
    flatnessUm: Number(column('flatness_um')),
    method: column('method'),
    details: JSON.parse(column('details')) as Details,
  }
}

/**
 * Places on the bands of a photograph as the program saw them, one a line of the field: spread
 * over all bands, along each from edge to edge.
 */
export async function marksOf(server: DemoServer, photoId: number, count: number): Promise<string> {
  const { seen } = readByProgram(server, photoId)
  const all = (seen?.bandLines ?? []).flatMap(({ order, points }) =>
    points.map(([x, y]) => `${Math.round(10 * x) / 10} ${Math.round(10 * y) / 10} ${order}`),
  )
  return Array.from(
    { length: count },
    (_, k) => all[Math.floor((k * (all.length - 1)) / (count - 1))],
  ).join('\n')
}

function readByProgram(server: DemoServer, photoId: number): Details {
  const text = server.ask(`SELECT details FROM whole_face WHERE kind = 'photo'
    AND photo_id = ${photoId} ORDER BY flatness_reading_id LIMIT 1`)
  return JSON.parse(text) as Details
}
