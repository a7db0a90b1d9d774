import type { Page } from 'playwright-core'
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

/**
 * Opens a photograph of the invented workshop that was read by the program and may be again, with
 * the diameters that it was read with: pictures and seals of that workshop are drawn apart.
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
